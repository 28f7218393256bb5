using System.Globalization;
using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;
using LaunchSim.Web.Tests;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Launches;

/// <summary>What tests of the page of launches have in common.</summary>
public abstract class LaunchPageTest(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    private const string IsReady = "() => document.documentElement.dataset.ready === 'true'";

    /// <summary>The page of some launches.</summary>
    protected static HtmlPage PageOf(params LaunchOutcome[] runs) =>
        LaunchPage.Of([.. runs.Select(run => new DocumentedLaunch(run, run.Scenario.Name))], new Readout(runs[0].Scenario.UnitSystem), "LaunchSim");

    /// <summary>Opens a page and waits until it can be used.</summary>
    protected async Task<BrowserPage> OpenReady(HtmlPage page, Screen? screen = null, string name = "page")
    {
        BrowserPage opened = await Open(page, screen, name);
        await opened.Page.WaitForFunctionAsync(IsReady);
        return opened;
    }

    /// <summary>Opens the page of shipped scenarios.</summary>
    protected Task<BrowserPage> OpenShipped(Screen? screen, params string[] names) =>
        OpenReady(PageOf([.. names.Select(name => Shipped.Run(name))]), screen, string.Join('-', names));

    /// <summary>The time that the page is at, s.</summary>
    protected static async Task<double> Time(IPage page) =>
        double.Parse((await page.Locator(".clock").InnerTextAsync()).Split(' ')[0], CultureInfo.InvariantCulture);

    /// <summary>Draws the slider to a time.</summary>
    protected static Task GoTo(IPage page, double time) => page.EvaluateAsync("""
        (time) => {
          const scrub = document.querySelector('.scrub');
          scrub.value = String(time);
          scrub.dispatchEvent(new Event('input'));
        }
        """, time);
}
