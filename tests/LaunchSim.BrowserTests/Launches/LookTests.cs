using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Checks;
using LaunchSim.Web.Tests;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Launches;

/// <summary>The page on every screen: it fits, can be used by all, and a picture of it is kept for people to look at.</summary>
public sealed class LookTests(Browser browser, ITestOutputHelper output) : LaunchPageTest(browser, output)
{
    [BrowserFact]
    public Task Page_OnAPhone_FitsAndIsAccessible() => Look("phone", Screen.Phone, "door-car");

    [BrowserFact]
    public Task Page_OnAPhoneInTheDark_FitsAndIsAccessible() => Look("phone-dark", Screen.Phone with { IsDark = true }, "sixty-percent", "ladder-bar");

    [BrowserFact]
    public Task Page_OnALaptop_FitsAndIsAccessible() => Look("laptop", Screen.Laptop, "door-car", "door-car-hole-lower");

    [BrowserFact]
    public Task Page_OnAWideDarkScreen_FitsAndIsAccessible() => Look("wide-dark", Screen.Wide with { IsDark = true }, "wheelstand");

    [BrowserFact]
    public Task Page_OnPaper_FitsAndIsAccessible() => Look("paper", Screen.Paper, "clutch-car");

    [BrowserFact]
    public Task Page_WithForcedColours_FitsAndIsAccessible() => Look("forced", Screen.Laptop with { HasForcedColours = true }, "converter-car");

    [BrowserFact]
    public async Task Page_OfEveryShippedScenario_OpensClean()
    {
        foreach (string name in Shipped.Names)
        {
            BrowserPage page = await OpenShipped(Screen.Laptop, name);
            await page.Page.Keyboard.PressAsync("End");
            await page.AssertClean();
            await page.Page.CloseAsync();
        }
    }

    private async Task Look(string name, Screen screen, params string[] scenarios)
    {
        BrowserPage page = await OpenShipped(screen, scenarios);
        await GoTo(page.Page, 0.2);
        if (!screen.IsPrinted)
        {
            await page.Page.GetByText("Numbers at this instant").ClickAsync();
        }

        await page.TakePicture($"page-{name}");
        await page.AssertFits();
        if (!screen.IsPrinted)
        {
            await page.AssertTargets();
        }

        await page.AssertAccessible(Output);
        await page.Page.GetByRole(AriaRole.Button, new() { Name = "Rear end", IncludeHidden = true }).DispatchEventAsync("click");
        await page.TakePicture($"page-{name}-rear");
    }
}
