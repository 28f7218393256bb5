using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Web.Tests;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Launches;

public sealed class PlayerTests(Browser browser, ITestOutputHelper output) : LaunchPageTest(browser, output)
{
    [BrowserFact]
    public async Task Page_WhenOpened_IsThereAtItsFirstInstant()
    {
        BrowserPage page = await OpenShipped(null, "door-car");
        Tell("page ready after the navigation began", await page.Page.EvaluateAsync<double>("() => performance.getEntriesByType('navigation')[0].domContentLoadedEventEnd"));

        Assert.Equal("Door car, as measured", await page.Page.Locator("h1").InnerTextAsync());
        Assert.Equal(0, await Time(page.Page));
    }

    [BrowserFact]
    public async Task Play_ThenPause_MovesTheTimeAndHoldsIt()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await page.WaitForFunctionAsync("() => parseFloat(document.querySelector('.clock').textContent) > 0.01");
        await page.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        double held = await Time(page);
        await page.WaitForTimeoutAsync(150);

        Assert.InRange(held, 0.01, 1.8);
        Assert.Equal(held, await Time(page));
    }

    [BrowserFact]
    public async Task Play_AtRealTime_ComesToTheEndAndStops()
    {
        IPage page = (await OpenReady(PageOf(Shipped.Run("door-car", ("run.duration", "0.3 s"))))).Page;
        await page.GetByLabel("speed", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Label = "real time" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('.clock').textContent === '0.300 s' && document.querySelector('.play').textContent === 'Play'");
        await page.Locator(".play").ClickAsync();

        // From the end it begins anew.
        await page.WaitForFunctionAsync("() => parseFloat(document.querySelector('.clock').textContent) < 0.3");
    }

    [BrowserFact]
    public async Task Keys_OfTheWholePage_PlayStepAndGoToTheEnds()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        await page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal(0.001, await Time(page));
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        Assert.Equal(0.011, await Time(page));
        await page.Keyboard.PressAsync("ArrowLeft");
        Assert.Equal(0.010, await Time(page));
        await page.Keyboard.PressAsync("End");
        Assert.Equal(1.8, await Time(page));
        await page.Keyboard.PressAsync("Home");
        Assert.Equal(0, await Time(page));
        await page.Keyboard.PressAsync(" ");
        await page.WaitForFunctionAsync("() => parseFloat(document.querySelector('.clock').textContent) > 0");
        await page.Keyboard.PressAsync(" ");
        Assert.Equal("Play", await page.Locator(".play").InnerTextAsync());
    }

    [BrowserFact]
    public async Task Keys_WithAFocusedControl_AreTheControls()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        await page.GetByLabel("speed", new() { Exact = true }).FocusAsync();
        await page.Keyboard.PressAsync("End");
        Assert.Equal(0, await Time(page));
        await page.GetByRole(AriaRole.Button, new() { Name = "Rear end" }).FocusAsync();
        await page.Keyboard.PressAsync(" ");
        Assert.Equal("true", await page.GetByRole(AriaRole.Button, new() { Name = "Rear end" }).GetAttributeAsync("aria-pressed"));
        Assert.Equal("Play", await page.Locator(".play").InnerTextAsync());
    }

    [BrowserFact]
    public async Task Scrub_WithThePointer_MovesTheTime()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        LocatorBoundingBoxResult box = (await page.Locator(".scrub").BoundingBoxAsync())!;
        float middle = box.Y + (box.Height / 2);
        await page.Mouse.MoveAsync(box.X + 10, middle);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), middle, new() { Steps = 8 });
        await page.Mouse.UpAsync();

        Assert.InRange(await Time(page), 0.8, 1.0);
    }

    [BrowserFact]
    public async Task Tab_FromTheTop_ReachesEveryControl()
    {
        IPage page = (await OpenShipped(null, "door-car")).Page;
        var met = new List<string>();
        for (int i = 0; i < 12; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            met.Add(await page.EvaluateAsync<string>("() => document.activeElement.getAttribute('aria-label') ?? document.activeElement.textContent"));
        }

        Assert.Subset(met.ToHashSet(), new HashSet<string> { "Play", "one millisecond back", "one millisecond on", "time since release", "speed", "Whole car", "Rear end", "Numbers at this instant" });
        Assert.Contains(met, label => label.StartsWith("Rise of the body", StringComparison.Ordinal));
    }

    [BrowserFact]
    public async Task Play_WithLessMotionWanted_ShowsStills()
    {
        IPage page = (await OpenShipped(Screen.Laptop with { HasLessMotion = true }, "door-car")).Page;
        await page.Locator(".play").ClickAsync();
        var times = new HashSet<double>();
        for (int i = 0; i < 20; i++)
        {
            times.Add(await Time(page));
            await page.WaitForTimeoutAsync(60);
        }

        // Some 1.2 s on the clock: two or three stills, where motion would have shown another time at each look.
        Assert.InRange(times.Count, 2, 5);
        Assert.All(times, time => Assert.Equal(0, Math.Round(time % 0.05, 3) % 0.05, 6));
    }

    [BrowserFact]
    public async Task Frames_WhilePlaying_AreTold()
    {
        IPage page = (await OpenShipped(Screen.Wide, "door-car", "door-car-hole-lower")).Page;
        await page.Locator(".play").ClickAsync();
        double[] frames = await page.EvaluateAsync<double[]>("""
            () => new Promise((done) => {
              const times = [];
              let before = performance.now();
              const frame = (now) => {
                times.push(now - before);
                before = now;
                if (times.length > 120) done(times.slice(1)); else requestAnimationFrame(frame);
              };
              requestAnimationFrame(frame);
            })
            """);
        double[] costs = await page.EvaluateAsync<double[]>("""
            () => {
              const scrub = document.querySelector('.scrub'), costs = [];
              for (let i = 0; i < 200; i++) {
                scrub.value = String(i * 0.008);
                const before = performance.now();
                scrub.dispatchEvent(new Event('input'));
                costs.push(performance.now() - before);
              }
              return costs;
            }
            """);
        Tell("a frame while playing two set-ups", frames);
        Tell("script of one frame of two set-ups", costs);
        Assert.Equal(120, frames.Length);
    }
}
