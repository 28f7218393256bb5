using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Checks;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Lesson;
using LaunchSim.Web.Pages;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Lessons;

/// <summary>The lesson in the browser: it opens clean, is for all, follows the reader's hand, and moves.</summary>
public sealed class LessonTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    private static readonly Lazy<HtmlPage> Made = new(() => LessonPage.Of(new Readout(UnitSystem.Shop), "LaunchSim", CancellationToken.None));

    [BrowserFact]
    public async Task Slider_OfTheCentreOfGravity_ChangesThePercent()
    {
        IPage page = await OpenReady(Screen.Laptop);
        string before = await page.Locator("#lesson").TextContentAsync() ?? "";
        ILocator slider = page.Locator("input[type=range]:not(.scrub)").First;
        await slider.FocusAsync();
        await page.Keyboard.PressAsync("End");
        await page.WaitForTimeoutAsync(100);

        Assert.NotEqual(before, await page.Locator("#lesson").TextContentAsync());
    }

    [BrowserFact]
    public async Task Play_OfTheThreeCars_MovesAllOfThem()
    {
        IPage page = await OpenReady(Screen.Laptop);
        ILocator play = page.Locator(".play").First;
        await play.ScrollIntoViewIfNeededAsync();
        string before = string.Join('|', await page.Locator(".scene .body-shape").EvaluateAllAsync<string[]>("shapes => shapes.map((shape) => shape.getAttribute('d'))"));
        await play.ClickAsync();
        await page.WaitForFunctionAsync("() => [...document.querySelectorAll('.clock')].some((clock) => parseFloat(clock.textContent) > 0.1)");

        Assert.NotEqual(before, string.Join('|', await page.Locator(".scene .body-shape").EvaluateAllAsync<string[]>("shapes => shapes.map((shape) => shape.getAttribute('d'))")));
    }

    [BrowserFact]
    public async Task Answers_OfTheQuestions_AreFoldedUntilAsked()
    {
        IPage page = await OpenReady(Screen.Laptop);
        ILocator answers = page.Locator("details");

        Assert.True(await answers.CountAsync() >= 6);
        Assert.Equal(0, await page.Locator("#lesson details[open]").CountAsync());
    }

    [BrowserFact]
    public Task Lesson_OnAPhone_FitsAndIsAccessible() => Look("phone", Screen.Phone);

    [BrowserFact]
    public Task Lesson_OnALaptop_FitsAndIsAccessible() => Look("laptop", Screen.Laptop);

    [BrowserFact]
    public Task Lesson_OnAWideDarkScreen_FitsAndIsAccessible() => Look("wide-dark", Screen.Wide with { IsDark = true });

    [BrowserFact]
    public Task Lesson_OnPaper_FitsAndIsAccessible() => Look("paper", Screen.Paper);

    private async Task<IPage> OpenReady(Screen screen)
    {
        IPage page = (await Open(Made.Value, screen, "lesson")).Page;
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.ready === 'true'");
        return page;
    }

    private async Task Look(string name, Screen screen)
    {
        BrowserPage opened = await Open(Made.Value, screen, "lesson-" + name);
        await opened.Page.WaitForFunctionAsync("() => document.documentElement.dataset.ready === 'true'");
        await opened.TakePicture($"lesson-{name}");
        await opened.AssertFits();
        if (!screen.IsPrinted)
        {
            await opened.AssertTargets();
        }

        await opened.AssertAccessible(Output);
    }
}
