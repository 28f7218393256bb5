using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Harness;
using LaunchSim.Web.Pages;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Pages;

public sealed class FrontBundleTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    private static readonly Dictionary<string, string> Modules = new()
    {
        ["entry.js"] = "import { one, two as zwei } from './parts/numbers.js';\nimport { name } from './name.js';\ndocument.getElementById('told').textContent = `${one + zwei} ${name}`;\n",
        ["name.js"] = "import { one } from './parts/numbers.js';\nconst secret = 'in';\nexport const name = `${secret} ${one}`;\n",
        ["parts/numbers.js"] = "const secret = 2;\nexport const one = 1;\nexport const two = secret;\n",
    };

    [BrowserFact]
    public async Task Script_OfModules_RunsThemInTheirOrder()
    {
        BrowserPage page = await Open(Samples.Sound with { Script = FrontBundle.Script("entry.js", name => Modules[name]) });
        Assert.Equal("3 in 1", await page.Page.Locator("#told").TextContentAsync());
    }
}
