using System.Buffers.Binary;
using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Lesson;
using LaunchSim.Web.Pages;
using LaunchSim.Web.Tests;
using LaunchSim.Web.Tests.Desk;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Desks;

/// <summary>
/// The pictures of README and guide that a browser draws. They are written with LAUNCHSIM_WRITE_GENERATED=1, and otherwise held
/// to be there in the size that is drawn now: another browser's letters are another's, so that pixels cannot be compared.
/// </summary>
public sealed class GuidePictureTests(Browser browser, ITestOutputHelper output) : DeskTest(browser, output)
{
    private static readonly Screen Shown = new(1360, 850);
    private static readonly bool Writes = Environment.GetEnvironmentVariable("LAUNCHSIM_WRITE_GENERATED") == "1";

    [BrowserFact]
    public async Task Picture_OfThePage_IsThatOfTheGuide()
    {
        LaunchOutcome run = Shipped.Run("door-car");
        HtmlPage made = LaunchPage.Of([new DocumentedLaunch(run, run.Scenario.Name)], new Readout(run.Scenario.UnitSystem), "LaunchSim");
        IPage page = (await Open(made, Shown)).Page;
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.ready === 'true'");
        await At(page, 0.2);
        await Hold(page, "page");
    }

    [BrowserFact]
    public async Task Picture_OfTheDesk_IsThatOfTheGuide()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host, Shown);
        await page.GetByRole(AriaRole.Button, new() { Name = "Pin this set-up" }).ClickAsync();
        await Assertions.Expect(page.Locator("header .letter")).ToHaveCountAsync(2);
        await Hole(page, 3).ClickAsync();
        await Answered(page);
        await At(page, 0.3);
        await Hold(page, "desk");
    }

    [BrowserFact]
    public async Task Picture_OfTheLesson_IsThatOfTheGuide()
    {
        IPage page = (await Open(LessonPage.Of(new Readout(UnitSystem.Shop), "LaunchSim", CancellationToken.None), Shown)).Page;
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.ready === 'true'");
        await page.Locator("#drawing").EvaluateAsync("(chapter) => chapter.scrollIntoView()");
        await page.WaitForTimeoutAsync(500);
        await Hold(page, "lesson");
    }

    private static async Task At(IPage page, double time)
    {
        await page.Locator(".scrub").EvaluateAsync("(scrub, time) => { scrub.value = String(time); scrub.dispatchEvent(new Event('input')); document.activeElement.blur(); }", time);
        await page.WaitForTimeoutAsync(500);
    }

    private static async Task Hold(IPage page, string name)
    {
        byte[] drawn = await page.ScreenshotAsync();
        string path = Path.Combine(Path.GetDirectoryName(Shipped.Folder)!, "docs", "guide", "pictures", "browser", name + ".png");
        if (Writes)
        {
            await File.WriteAllBytesAsync(path, drawn);
        }

        byte[] kept = await File.ReadAllBytesAsync(path);
        Assert.Equal(Size(drawn), Size(kept));
    }

    // The header of a PNG has width and height behind its first 16 bytes.
    private static (int Width, int Height) Size(byte[] png) => (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
}
