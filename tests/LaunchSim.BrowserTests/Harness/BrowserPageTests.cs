using LaunchSim.BrowserTests.Browsers;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace LaunchSim.BrowserTests.Harness;

/// <summary>That a page's complaints are heard: a check that hears none has to be able to fail.</summary>
public sealed class BrowserPageTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    [BrowserFact]
    public async Task Complaints_OfWhatThePolicyForbids_AreHeard()
    {
        await using BrowserPage page = await Browser.Open(FileOf(Samples.With("""
            <script>document.title = 'taken over';</script>
            <p style="color: red">no</p>
            <img alt="" src="https://launchsim.invalid/a.png">
            <button type="button" onclick="document.title = 'clicked'">no</button>
            """)), Screen.Laptop);
        await AssertComplains(
            page,
            "policy: script-src-elem forbids inline",
            "policy: style-src-attr forbids inline",
            "policy: img-src forbids https://launchsim.invalid/a.png",
            "policy: script-src-attr forbids inline");
        Assert.Equal("A launch", await page.Page.TitleAsync());
    }

    [BrowserFact]
    public async Task Complaints_OfWhatTheScriptDoesWrong_AreHeard()
    {
        const string Script = """
            console.error('gone wrong');
            console.warn('odd');
            Promise.reject(new Error('promised'));
            setTimeout(() => { throw new Error('later'); }, 0);
            throw new Error('at once');
            """;
        await using BrowserPage page = await Browser.Open(FileOf(Samples.Sound with { Script = Script }), Screen.Laptop);
        await AssertComplains(page, "console error: gone wrong", "console warning: odd", "uncaught: Error: promised", "uncaught: Error: later", "uncaught: Error: at once");
    }

    [BrowserFact]
    public async Task Complaints_OfWhatThePageAsksFor_AreHeard()
    {
        const string Html = "<!DOCTYPE html><title>No policy</title><img alt=\"\" src=\"https://launchsim.invalid/a.png\"><img alt=\"\" src=\"beside.png\">";
        await using BrowserPage page = await Browser.Open(FileOf(Html), Screen.Laptop);
        await AssertComplains(page, "request to elsewhere: https://launchsim.invalid/a.png", "request failed: https://launchsim.invalid/a.png", "request to elsewhere: file:");
    }

    [BrowserFact]
    public async Task Complaints_AfterTheFirstQuestion_AreHeardToo()
    {
        await using BrowserPage page = await Browser.Open(FileOf(Samples.Sound), Screen.Laptop);
        Assert.Empty(await page.Complaints());
        await page.Page.EvaluateAsync("() => { const late = document.createElement('script'); late.textContent = '1'; document.body.append(late); }");
        await AssertComplains(page, "policy: script-src-elem forbids inline");
    }

    [BrowserFact]
    public async Task Screen_WhatItSays_IsWhatThePageSees()
    {
        Screen[] screens = [Screen.Phone, Screen.Wide with { IsDark = true, HasLessMotion = true }, Screen.Paper, Screen.Laptop with { HasForcedColours = true }];
        foreach (Screen screen in screens)
        {
            BrowserPage page = await Open(Samples.Sound, screen);
            Task<bool> Sees(string query) => page.Page.EvaluateAsync<bool>("query => matchMedia(query).matches", query);
            Assert.Equal(screen.Width, await page.Page.EvaluateAsync<int>("innerWidth"));
            Assert.Equal(screen.IsDark, await Sees("(prefers-color-scheme: dark)"));
            Assert.Equal(screen.HasLessMotion, await Sees("(prefers-reduced-motion: reduce)"));
            Assert.Equal(screen.HasForcedColours, await Sees("(forced-colors: active)"));
            Assert.Equal(screen.IsPrinted, await Sees("print"));
            Assert.Equal(screen.IsPhone, await Sees("(pointer: coarse)"));
        }
    }

    [BrowserFact]
    public async Task Picture_OfAPage_IsAFile()
    {
        BrowserPage page = await Open(Samples.Sound);
        File.Delete(OutputFiles.Path("pictures", "harness.png"));
        await page.TakePicture("harness");
        Assert.True(new FileInfo(OutputFiles.Path("pictures", "harness.png")).Length > 1000);
    }

    private static async Task AssertComplains(BrowserPage page, params string[] expected)
    {
        IReadOnlyList<string> complaints = await page.Complaints();
        foreach (string complaint in expected)
        {
            Assert.Contains(complaints, told => told.StartsWith(complaint, StringComparison.Ordinal));
        }

        TrueException wrong = await Assert.ThrowsAsync<TrueException>(page.AssertClean);
        Assert.Contains(expected[0], wrong.Message, StringComparison.Ordinal);
    }
}
