using System.Globalization;
using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Checks;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Lesson;
using LaunchSim.Web.Pages;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Lessons;

/// <summary>The lesson as its reader has it: on every screen, with any numbers, by keys.</summary>
public sealed class LessonTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    private const string Rest = "at rest under the thrust: nothing moves any more";

    private static readonly Lazy<HtmlPage> Shop = new(() => LessonPage.Of(new Readout(UnitSystem.Shop), "LaunchSim", CancellationToken.None));
    private static readonly Lazy<HtmlPage> Si = new(() => LessonPage.Of(new Readout(UnitSystem.Si), "LaunchSim", CancellationToken.None));

    [BrowserFact]
    public Task Lesson_OnAPhone_FitsAndIsAccessible() => Look("phone", Screen.Phone, Shop.Value);

    [BrowserFact]
    public Task Lesson_OnAPhoneInTheDark_FitsAndIsAccessible() => Look("phone-dark", Screen.Phone with { IsDark = true }, Si.Value);

    [BrowserFact]
    public Task Lesson_OnALaptop_FitsAndIsAccessible() => Look("laptop", Screen.Laptop, Si.Value);

    [BrowserFact]
    public Task Lesson_OnAWideDarkScreen_FitsAndIsAccessible() => Look("wide-dark", Screen.Wide with { IsDark = true }, Shop.Value);

    [BrowserFact]
    public Task Lesson_OnPaper_FitsAndIsAccessible() => Look("paper", Screen.Paper, Shop.Value);

    [BrowserFact]
    public Task Lesson_WithForcedColours_FitsAndIsAccessible() => Look("forced", Screen.Laptop with { HasForcedColours = true }, Shop.Value);

    /// <summary>
    /// By hand: 30 in ahead and 6 in up over 20 in on 100 in is a slope of 0.2: 100 %. 4000 lb of thrust move 800 lb, and the bars press
    /// as much. Raised to 9 in: 0.3, 150 %, 1200 lb pressed, 400 over; at rest the springs of 280 lb/in have opened by 1.43 in.
    /// </summary>
    [BrowserFact]
    public async Task Statics_WithTheReadersNumbers_AreThoseByHand()
    {
        IPage page = await OpenReady();
        await Enter(page, "Instant centre ahead of the axle, inches", 30);
        await Enter(page, "Instant centre above the ground, inches", 6);
        await Enter(page, "Thrust of both rear tyres, pounds", 4000);
        Assert.Contains("100 %: on the neutral line", await page.Locator(".verdict").First.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal("percent = 100 × (6.0 ÷ 30.0) ÷ (20.0 ÷ 100.0) = 100 %", await page.Locator(".formula").InnerTextAsync());
        await Enter(page, "Instant centre above the ground, inches", 9);
        string table = await page.Locator(".balance table").InnerTextAsync();
        foreach (string row in new[] { "÷ wheelbase\t800 lb", "thrust × slope\t1200 lb", "missing\t+400 lb", "springs bring\t0 lb\t-400 lb", "rear tyres are pressed with\t2600 lb\t2200 lb", "gap between body and axle\t0.00 in\t+1.43 in", "front tyres are pressed with\t1600 lb\t800 lb" })
        {
            Assert.Contains(row, table, StringComparison.Ordinal);
        }

        Assert.Equal("150", await page.GetByLabel("Percent (moves the instant centre up or down), percent").InputValueAsync());
    }

    /// <summary>Wherever the reader goes, no number breaks: neither in words nor in what is drawn.</summary>
    [BrowserFact]
    public async Task Statics_AtTheirExtremes_BreakNoNumber()
    {
        IPage page = await OpenReady();
        await page.GetByLabel(Rest).First.CheckAsync();
        foreach (string start in new[] { "parallel bars", "instant centre behind", "the 100 % car", "the 70 % car", "the 160 % car" })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = start, Exact = true }).ClickAsync();
            await AssertWhole(page, start);
        }

        foreach ((double ahead, double up) in new[] { (-60.0, 60.0), (-60, -20), (0, 0), (0, 30), (0.1, 60), (260, 60), (260, -20), (1, 7.5), (2, 17), (30, 0) })
        {
            await Enter(page, "Instant centre ahead of the axle, inches", ahead);
            await Enter(page, "Instant centre above the ground, inches", up);
            foreach (double thrust in new[] { 0.0, 6000 })
            {
                await Enter(page, "Thrust of both rear tyres, pounds", thrust);
                await AssertWhole(page, $"{ahead}, {up}, {thrust}");
            }
        }

        await page.GetByLabel("Bars parallel").CheckAsync();
        foreach (double climb in new[] { -20.0, 0, 31 })
        {
            await Enter(page, "Both bars climb to the front by, degrees", climb);
            await AssertWhole(page, $"parallel, {climb}");
        }
    }

    [BrowserFact]
    public async Task Centre_DraggedByThePointer_GoesThere()
    {
        IPage page = await OpenReady();
        ILocator ring = page.Locator(".floor .instant-centre");
        await ring.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await ring.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width / 2) + 60, box.Y + (box.Height / 2), new() { Steps = 5 });
        await page.Mouse.UpAsync();

        double ahead = double.Parse(await page.GetByLabel("Instant centre ahead of the axle, inches").InputValueAsync(), CultureInfo.InvariantCulture);
        Assert.InRange(ahead, 28, 60);
        Assert.Equal("7.5", await page.GetByLabel("Instant centre above the ground, inches").InputValueAsync());
    }

    [BrowserFact]
    public async Task Play_FromThePlayer_MovesAllCarsAndCharts()
    {
        IPage page = await OpenReady();
        await page.Locator("#motion .cases").ScrollIntoViewIfNeededAsync();
        string before = await page.Locator("#motion .scene").First.InnerHTMLAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await page.WaitForFunctionAsync("() => parseFloat(document.querySelector('.clock').textContent) > 0.03");
        await page.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();

        Assert.NotEqual(before, await page.Locator("#motion .scene").First.InnerHTMLAsync());
        Assert.Equal(3, await page.Locator("#motion .case").CountAsync());
        await page.Locator("#motion .chart").First.ScrollIntoViewIfNeededAsync();
        Assert.DoesNotContain("0.000 s", await page.Locator("#motion .chart-readout").First.InnerTextAsync(), StringComparison.Ordinal);
    }

    /// <summary>The page is read with space, arrows and End: they are the player's only where the player has the focus.</summary>
    [BrowserFact]
    public async Task Keys_OfAReader_AreNotThePlayers()
    {
        IPage page = await OpenReady();
        await page.Keyboard.PressAsync("End");
        await page.Keyboard.PressAsync(" ");
        Assert.Equal("0.000 s", await page.Locator(".clock").InnerTextAsync());
        Assert.Equal("Play", await page.Locator(".play").InnerTextAsync());
        await page.Locator(".scrub").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("0.001 s", await page.Locator(".clock").InnerTextAsync());
    }

    [BrowserFact]
    public async Task Prediction_OnceMade_IsToldWithTheAnswer()
    {
        IPage page = await OpenReady();
        ILocator question = page.Locator("#motion .question");
        await question.GetByText("all three the same").ClickAsync();
        await question.GetByText("Answer", new() { Exact = true }).ClickAsync();
        Assert.Contains("You said: all three the same", await question.InnerTextAsync(), StringComparison.Ordinal);
        await question.GetByLabel("the 160 % car").CheckAsync();
        Assert.Contains("So it is.", await question.InnerTextAsync(), StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Contents_OfTheLesson_LeadToEveryChapter()
    {
        IPage page = await OpenReady();
        foreach (string id in await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.contents a')].map((link) => link.getAttribute('href'))"))
        {
            await page.Locator($".contents a[href='{id}']").ClickAsync();
            Assert.Equal(1, await page.Locator($"section{id} h2").CountAsync());
            Assert.True(await page.Locator($"{id} h2").IsVisibleAsync());
        }
    }

    private async Task<IPage> OpenReady(Screen? screen = null)
    {
        BrowserPage opened = await Open(Shop.Value, screen, "lesson");
        await opened.Page.WaitForFunctionAsync("() => document.documentElement.dataset.ready === 'true'");
        return opened.Page;
    }

    private static async Task Enter(IPage page, string label, double value) =>
        await page.GetByLabel(label, new() { Exact = true }).FillAsync(value.ToString(CultureInfo.InvariantCulture));

    private static async Task AssertWhole(IPage page, string where)
    {
        string[] broken = await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('.statics, .statics *')].flatMap((element) => [
              ...[...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).map((node) => node.data),
              ...[...element.attributes].map((attribute) => `${attribute.name} ${attribute.value}`),
            ]).filter((text) => /NaN|Infinity|undefined|\d{9,}/.test(text))
            """);
        Assert.True(broken.Length == 0, $"{where}: {string.Join("; ", broken.Take(5))}");
    }

    private async Task Look(string name, Screen screen, HtmlPage lesson)
    {
        BrowserPage page = await Open(lesson, screen, $"lesson-{name}");
        await page.Page.WaitForFunctionAsync("() => document.documentElement.dataset.ready === 'true'");
        await page.Page.EvaluateAsync("() => document.querySelectorAll('.question details, .sources').forEach((details) => { details.open = true; })");
        await page.TakePicture($"lesson-{name}");
        await page.AssertFits();
        if (!screen.IsPrinted)
        {
            await page.AssertTargets();
        }

        await page.AssertAccessible(Output);
    }
}
