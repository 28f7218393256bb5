using System.Globalization;
using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Tests;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Launches;

/// <summary>Numbers on the page are the engine's, to the last digit that is shown.</summary>
public sealed class NumberTests(Browser browser, ITestOutputHelper output) : LaunchPageTest(browser, output)
{
    [BrowserFact]
    public async Task Figures_OnThePage_AreTheEngines()
    {
        foreach (string name in (string[])["door-car", "converter-car"])
        {
            LaunchOutcome run = Shipped.Run(name);
            var readout = new Readout(run.Scenario.UnitSystem);
            IPage page = (await OpenReady(PageOf(run), null, name)).Page;
            string[][] rows = await page.EvaluateAsync<string[][]>("() => [...document.querySelectorAll('[data-figure]')].map((row) => [row.dataset.figure, ...[...row.querySelectorAll('td')].map((cell) => cell.textContent)])");
            string[][] expected = [.. run.Figures.Catalog.Definitions.Where(one => run.Figures.Get(one.Key).Value is not null).Select(one =>
            {
                (string number, string unit) = FigureFormat.Of(one, run.Figures.Get(one.Key).Value!.Value, readout);
                return (string[])[one.Key, number, unit];
            })];

            Assert.Equal(expected, rows);
        }
    }

    [BrowserFact]
    public async Task Instant_OnThePage_IsTheEngines()
    {
        LaunchOutcome run = Shipped.Run("door-car");
        var readout = new Readout(run.Scenario.UnitSystem);
        IPage page = (await OpenReady(PageOf(run))).Page;
        await page.GetByText("Numbers at this instant").ClickAsync();
        foreach (double time in (double[])[0.05, 0.112, 0.2, 0.4, 1.5])
        {
            run.Solution.At(time, out Observation seen);
            await GoTo(page, time);
            await AssertRow(page, "rear body up", readout.Travel, seen.RearRise);
            await AssertRow(page, "front gap opened", readout.Travel, -seen.FrontTravel);
            await AssertRow(page, "rear tyres' load", readout.Force, seen.RearLoad);
            await AssertRow(page, "upper bar, pull", readout.Force, seen.UpperLinkForce);
            await AssertRow(page, "rear damper, opening", readout.ShaftSpeed, seen.RearDamperSpeed);
            await AssertRow(page, "percent anti-squat", Readout.Percent, seen.AntiSquatPercent);
            await AssertRow(page, "speed", readout.Speed, seen.Speed);
        }
    }

    [BrowserFact]
    public async Task Readout_BelowThePointer_IsTheEngines()
    {
        LaunchOutcome run = Shipped.Run("door-car");
        Scale travel = new Readout(run.Scenario.UnitSystem).Travel;
        IPage page = (await OpenReady(PageOf(run))).Page;
        ILocator chart = page.Locator(".beside .chart").First;
        LocatorBoundingBoxResult box = (await chart.Locator(".chart-picture").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + (0.45f * box.Width), box.Y + (0.6f * box.Height));
        string when = await chart.Locator(".chart-when").InnerTextAsync();
        double time = double.Parse(when.Split(' ')[1], CultureInfo.InvariantCulture);
        string[] values = [.. await chart.Locator(".chart-value").AllInnerTextsAsync()];
        run.Solution.At(time, out Observation seen);

        Assert.StartsWith("pointer ", when, StringComparison.Ordinal);
        Assert.InRange(time, 0.3, 1.2);

        // The pointer stands between two milliseconds: the time that is shown is rounded, and so is each value.
        double step = Math.Pow(10, -travel.Decimals);
        Assert.Equal(seen.RearRise / travel.Factor, double.Parse(values[0], CultureInfo.InvariantCulture), 1.6 * step);
        Assert.Equal(seen.FrontRise / travel.Factor, double.Parse(values[1], CultureInfo.InvariantCulture), 1.6 * step);
        Assert.Equal(0, await Time(page));
        await page.Mouse.ClickAsync(box.X + (0.45f * box.Width), box.Y + (0.6f * box.Height));
        Assert.Equal(time, await Time(page), 0.0011);
    }

    private static async Task AssertRow(IPage page, string name, Scale unit, double value)
    {
        string text = await page.Locator(".instant tr").Filter(new() { Has = page.GetByRole(AriaRole.Rowheader, new() { Name = name, Exact = true }) }).Locator("td").First.InnerTextAsync();

        // Single precision may turn a last digit that stands on the edge.
        Assert.Equal(value / unit.Factor, double.Parse(text, CultureInfo.InvariantCulture), 0.5001 * Math.Pow(10, -unit.Decimals));
    }
}
