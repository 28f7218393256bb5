using System.Globalization;
using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Tests;
using LaunchSim.Web.Tests.Desk;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Desks;

/// <summary>What tests of the live desk have in common.</summary>
public abstract class DeskTest(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    /// <summary>The handle of the rear dampers' extension clicks in the door car.</summary>
    protected const string Clicks = "#set-rear-damper-extension-set";

    private readonly List<DeskHost> _hosts = [];

    /// <summary>A desk over copies of shipped scenarios; it stays until its pages are closed.</summary>
    private protected async Task<DeskHost> Host(params string[] scenarios)
    {
        DeskHost host = await DeskHost.OpenAsync(scenarios);
        _hosts.Add(host);
        return host;
    }

    /// <inheritdoc/>
    public override async Task DisposeAsync()
    {
        try
        {
            await base.DisposeAsync();
        }
        finally
        {
            foreach (DeskHost host in _hosts)
            {
                await host.DisposeAsync();
            }
        }
    }

    /// <summary>Opens the desk of the door car.</summary>
    private protected async Task<IPage> OpenDesk(DeskHost host, Screen? screen = null, string file = "door-car.yaml")
    {
        BrowserPage opened = await Open(new Uri($"{host.Origin}/desk?file={file}&token={host.Token}"), screen);
        await opened.Page.WaitForFunctionAsync("() => document.querySelectorAll('.handle').length > 0");
        await Answered(opened.Page);
        return opened.Page;
    }

    /// <summary>Waits until what was asked last is drawn.</summary>
    protected static Task Answered(IPage page) =>
        page.WaitForFunctionAsync("() => document.documentElement.dataset.shown !== undefined && document.documentElement.dataset.shown === document.documentElement.dataset.asked");

    /// <summary>Moves a handle to its n-th step.</summary>
    protected static async Task Move(IPage page, string handle, double to)
    {
        await page.Locator(handle).EvaluateAsync("(handle, to) => { handle.value = String(to); handle.dispatchEvent(new Event('input')); handle.dispatchEvent(new Event('change')); }", to);
        await Answered(page);
    }

    /// <summary>A figure as the desk shows it.</summary>
    protected static async Task<string> Figure(IPage page, string key)
    {
        // What is read follows when the hand rests.
        await page.WaitForTimeoutAsync(500);
        return await page.Locator($"[data-figure={key}] td").First.TextContentAsync() ?? "";
    }

    /// <summary>The same figure of the engine.</summary>
    protected static string Expected(string key, params (string Path, string Value)[] changes)
    {
        LaunchOutcome run = Shipped.Run("door-car", changes);
        return FigureFormat.Of(run.Figures.Catalog.Definitions.First(one => one.Key == key), run.Figures[key]!.Value, new Readout(run.Scenario.UnitSystem)).Number;
    }

    /// <summary>A hole on the drawing.</summary>
    protected static ILocator Hole(IPage page, int name) => page.Locator(string.Create(CultureInfo.InvariantCulture, $"[data-hole=\"rear.linkage.upper.body.use={name}\"]"));
}
