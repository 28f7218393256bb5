using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Web.Tests.Desk;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Desks;

public sealed class SetUpTests(Browser browser, ITestOutputHelper output) : DeskTest(browser, output)
{
    [BrowserFact]
    public async Task Hole_PickedOnTheDrawing_IsTheEnginesLaunch()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        Assert.Equal(Expected("hit_n"), await Figure(page, "hit_n"));
        await Hole(page, 3).ClickAsync();
        await Answered(page);

        Assert.Equal(Expected("hit_n", ("rear.linkage.upper.body.use", "3")), await Figure(page, "hit_n"));
        Assert.Equal("true", await Hole(page, 3).GetAttributeAsync("aria-checked"));
        await Assertions.Expect(page.Locator("header")).ToContainTextAsync("165 %");
    }

    [BrowserFact]
    public async Task Hole_PickedWithKeys_MovesThroughTheBracket()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        await Hole(page, 2).FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Answered(page);
        Assert.Equal("true", await Hole(page, 3).GetAttributeAsync("aria-checked"));
        Assert.Equal("rear.linkage.upper.body.use=3", await page.EvaluateAsync<string>("() => document.activeElement.dataset.hole"));
        await page.Keyboard.PressAsync("ArrowDown");
        await Answered(page);

        Assert.Equal("true", await Hole(page, 1).GetAttributeAsync("aria-checked"));
        Assert.Equal("0.000 s", await page.Locator(".clock").TextContentAsync());
    }

    [BrowserFact]
    public async Task Handle_Moved_SolvesAndCanBeUndone()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        ILocator undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo" }), redo = page.GetByRole(AriaRole.Button, new() { Name = "Redo" });
        await Assertions.Expect(undo).ToBeDisabledAsync();
        await Move(page, Clicks, 12);
        string moved = Expected("lowest_rear_load_after_hit_n", ("rear.damper.extension.set", "12"));
        Assert.Equal(moved, await Figure(page, "lowest_rear_load_after_hit_n"));
        await undo.ClickAsync();
        await Answered(page);
        Assert.Equal(Expected("lowest_rear_load_after_hit_n"), await Figure(page, "lowest_rear_load_after_hit_n"));
        await redo.ClickAsync();
        await Answered(page);
        Assert.Equal(moved, await Figure(page, "lowest_rear_load_after_hit_n"));
        await page.Keyboard.PressAsync("Control+z");
        await Answered(page);
        Assert.Equal(Expected("lowest_rear_load_after_hit_n"), await Figure(page, "lowest_rear_load_after_hit_n"));
        await Move(page, Clicks, 3);
        await page.GetByRole(AriaRole.Button, new() { Name = "back to 6" }).ClickAsync();
        await Answered(page);
        Assert.Equal(Expected("lowest_rear_load_after_hit_n"), await Figure(page, "lowest_rear_load_after_hit_n"));
    }

    [BrowserFact]
    public async Task Pin_ThenMove_ShowsBothAndSaysWhy()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        await page.GetByRole(AriaRole.Button, new() { Name = "Pin this set-up" }).ClickAsync();
        await Assertions.Expect(page.Locator("header .letter")).ToHaveCountAsync(2);
        await Hole(page, 3).ClickAsync();
        await Answered(page);

        await Assertions.Expect(page.Locator(".compared")).ToContainTextAsync("this set-up is worse than the pinned set-up");
        await Assertions.Expect(page.Locator(".scene .other")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Unpin" }).ClickAsync();
        await Assertions.Expect(page.Locator(".scene .other")).ToHaveCountAsync(0);
    }

    [BrowserFact]
    public async Task SetUp_ThatCannotStand_IsRefusedAndTheLastOneKept()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        string before = await Figure(page, "hit_n");
        double least = await page.Locator("#set-car-ride_height-front").EvaluateAsync<double>("(handle) => Number(handle.max)");
        await Move(page, "#set-car-ride_height-front", least);
        await page.WaitForTimeoutAsync(300);

        if (await page.Locator(".trouble .findings").CountAsync() > 0)
        {
            Assert.Equal(before, await Figure(page, "hit_n"));
            await Assertions.Expect(page.Locator(".trouble")).ToContainTextAsync("impossible");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Answered(page);
        await Assertions.Expect(page.Locator(".trouble")).ToBeEmptyAsync();
    }

    [BrowserFact]
    public async Task Change_FromTheHandToTheDrawing_IsTimed()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        const string Time = """
            async (steps) => {
              const handle = document.querySelector('#set-rear-damper-extension-set'), times = [];
              const painted = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
              for (let i = 0; i < steps; i++) {
                handle.value = String(i % 13);
                const before = performance.now();
                handle.dispatchEvent(new Event('input'));
                const { asked } = document.documentElement.dataset;
                while (document.documentElement.dataset.shown !== asked) await new Promise((done) => setTimeout(done, 1));
                await painted();
                times.push(performance.now() - before);
              }
              return times;
            }
            """;
        double[] one = await page.EvaluateAsync<double[]>(Time, 60);
        await page.GetByRole(AriaRole.Button, new() { Name = "Pin this set-up" }).ClickAsync();
        await Assertions.Expect(page.Locator("header .letter")).ToHaveCountAsync(2);
        double[] pinned = await page.EvaluateAsync<double[]>(Time, 60);
        Tell("a change from the hand to the drawing, one set-up", one);
        Tell("a change from the hand to the drawing, beside a pinned one", pinned);
        Assert.Equal(120, one.Length + pinned.Length);
    }

    [BrowserFact]
    public async Task Changes_FiftyASecondForTwentySeconds_KeepOrderAndMemory()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        long before = GC.GetTotalMemory(true);
        double[] seen = await page.EvaluateAsync<double[]>("""
            async () => {
              const handle = document.querySelector('#set-rear-damper-extension-set');
              const heap = () => performance.memory?.usedJSHeapSize ?? 0;
              let turned = 0, shown = 0, last = 0;
              const watch = setInterval(() => {
                const now = Number(document.documentElement.dataset.shown);
                turned += now < last ? 1 : 0;
                shown += now !== last ? 1 : 0;
                last = now;
              }, 5);
              const start = performance.now(), first = heap();
              let asked = 0;
              while (performance.now() - start < 20_000) {
                handle.value = String(asked++ % 13);
                handle.dispatchEvent(new Event('input'));
                await new Promise((done) => setTimeout(done, Math.max(0, (asked * 20) - (performance.now() - start))));
              }
              clearInterval(watch);
              return [asked, shown, turned, first, heap()];
            }
            """);
        await Answered(page);
        long after = GC.GetTotalMemory(true);
        Output.WriteLine($"{seen[0]} changes in 20 s, {seen[1]} drawn, heap {seen[3] / 1e6:0.0} to {seen[4] / 1e6:0.0} MB in the browser, {before / 1e6:0.0} to {after / 1e6:0.0} MB in the desk");

        Assert.Equal(0, seen[2]);
        Assert.True(seen[1] > 20, $"{seen[1]} drawn");
        Assert.True(after - before < 60_000_000, $"the desk grew by {(after - before) / 1e6:0.0} MB");
        Assert.True(seen[4] - seen[3] < 250_000_000, $"the page grew by {(seen[4] - seen[3]) / 1e6:0.0} MB before its collector ran");
    }
}
