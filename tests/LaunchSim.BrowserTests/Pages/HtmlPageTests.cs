using System.Text.Encodings.Web;
using System.Text.Json;
using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Harness;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Pages;

public sealed class HtmlPageTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    // A serializer that would not guard the page by itself.
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    [BrowserFact]
    public async Task Page_OpenedFromItsFile_RunsScriptAndStyleUnderItsPolicy()
    {
        BrowserPage page = await Open(Samples.Sound);
        Assert.Equal("4.5°", await page.Page.Locator("#told").TextContentAsync());
        Assert.Equal("rgb(34, 34, 34)", await page.Page.EvaluateAsync<string>("getComputedStyle(document.body).color"));
        Assert.Equal("CSS1Compat", await page.Page.EvaluateAsync<string>("document.compatMode"));
    }

    [BrowserFact]
    public async Task TitleAndData_WithAnythingInThem_ArriveAsTheyWere()
    {
        const string Odd = "</title></script><script>document.title = 'taken over'</script> <!--<script> \\ \" ' \u2028 <b> & é 車 \u0007";
        BrowserPage page = await Open(Samples.Sound with
        {
            Title = "Bars <1.5 in> & \"hole 2\"</title>",
            Data = [("data", JsonSerializer.Serialize(new { text = Odd }, Plain))],
            Script = "const { text } = JSON.parse(document.getElementById('data').textContent);\ndocument.getElementById('told').textContent = JSON.stringify([...text].map((c) => c.codePointAt(0)));",
        });
        Assert.Equal("Bars <1.5 in> & \"hole 2\"</title>", await page.Page.TitleAsync());
        int[] points = [.. Odd.EnumerateRunes().Select(rune => rune.Value)];
        Assert.Equal(JsonSerializer.Serialize(points), await page.Page.Locator("#told").TextContentAsync());
    }

    [BrowserFact]
    public async Task ScriptAndStyle_WithOtherLineEnds_StillMatchTheirHash()
    {
        BrowserPage page = await Open(Samples.Sound with
        {
            Style = Samples.Sound.Style.Replace("} ", "}\r\n", StringComparison.Ordinal),
            Script = Samples.Sound.Script.Replace("\n", "\r", StringComparison.Ordinal),
        });
        Assert.Equal("4.5°", await page.Page.Locator("#told").TextContentAsync());
        Assert.Equal("rgb(34, 34, 34)", await page.Page.EvaluateAsync<string>("getComputedStyle(document.body).color"));
    }
}
