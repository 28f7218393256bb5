using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;
using LaunchSim.Web.Tests;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Launches;

public sealed class ChartTests(Browser browser, ITestOutputHelper output) : LaunchPageTest(browser, output)
{
    [BrowserFact]
    public async Task Drag_AcrossAChart_ZoomsAllAndADoubleClickResets()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        ILocator picture = page.Locator(".beside .chart-picture").First;
        LocatorBoundingBoxResult box = (await picture.BoundingBoxAsync())!;
        string whole = await AxisOf(page, 1);
        await page.Mouse.MoveAsync(box.X + (0.3f * box.Width), box.Y + (0.5f * box.Height));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (0.5f * box.Width), box.Y + (0.5f * box.Height), new() { Steps = 6 });
        await page.Mouse.UpAsync();

        Assert.NotEqual(whole, await AxisOf(page, 0));
        await Assertions.Expect(page.Locator(".beside .chart-whole").First).ToBeVisibleAsync();
        await picture.DblClickAsync();
        await Assertions.Expect(page.Locator(".beside .chart-whole").First).ToBeHiddenAsync();
        Assert.Equal(whole, await AxisOf(page, 1));
    }

    [BrowserFact]
    public async Task Keys_OfAFocusedChart_MoveTheCursorAndZoom()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        ILocator area = page.Locator(".beside .chart-area").First;
        await area.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal(0.001, await Time(page), 9);
        await page.Keyboard.PressAsync("+");
        await Assertions.Expect(page.Locator(".beside .chart-whole").First).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("0");
        await Assertions.Expect(page.Locator(".beside .chart-whole").First).ToBeHiddenAsync();
        await page.Keyboard.PressAsync("End");
        Assert.Equal(1.8, await Time(page), 9);
    }

    [BrowserFact]
    public async Task Table_OfAChart_IsThereForThoseWhoReadIt()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        ILocator chart = page.Locator(".beside .chart").First;
        await chart.GetByText("Values as a table").ClickAsync();

        await Assertions.Expect(chart.Locator("caption").First).Not.ToBeEmptyAsync();
        Assert.True(await chart.Locator("table tr").CountAsync() > 20, $"{await chart.Locator("table tr").CountAsync()} rows");
    }

    [BrowserFact]
    public async Task SetUps_ThreeOnOnePage_HaveTheirLettersAndOutlines()
    {
        IPage page = (await OpenShipped(Screen.Wide, "door-car", "door-car-hole-lower", "ladder-bar")).Page;

        Assert.Equal(["A", "B", "C"], await page.Locator(".view > header .letter").AllInnerTextsAsync());
        Assert.Equal(2, await page.Locator(".scene .other").CountAsync());
        await Assertions.Expect(page.Locator(".beside .chart").First).ToContainTextAsync("C front");
        Assert.Equal(["figure", "A", "B", "C", "unit"], await page.Locator(".figures thead th").AllTextContentsAsync());
    }

    [BrowserFact]
    public async Task Bands_OfPlausibleCars_AreDrawnAndTheirSharesTold()
    {
        var run = Shipped.Run("door-car", ("run.duration", "0.5 s"));
        var plan = new DoubtPlan(run.Scenario, AimSet.Of(run.Scenario.Aims, null, out _)!, new DoubtSettings { Cars = 60 });
        DoubtResult doubt = DoubtStudy.Run(plan, wantsBands: true, CancellationToken.None);
        HtmlPage made = LaunchPage.Of([new DocumentedLaunch(run, "Doubted", doubt)], new Readout(run.Scenario.UnitSystem), "LaunchSim");
        IPage page = (await OpenReady(made)).Page;

        Assert.True(await page.Locator(".beside .chart-band").CountAsync() >= 2);
        Assert.Equal(doubt.Sentences.Count, await page.Locator(".doubts tbody tr").CountAsync());
        Assert.Contains(DoubtWords.Conclusion(doubt), await page.Locator(".doubts").TextContentAsync() ?? "", StringComparison.Ordinal);
        Assert.True(await page.Locator("[data-figure=hit_n] td").CountAsync() == 3);
    }

    private static async Task<string> AxisOf(IPage page, int chart) => string.Join(' ', await page.Locator(".beside .chart-picture").Nth(chart).Locator(".chart-number").AllTextContentsAsync());
}
