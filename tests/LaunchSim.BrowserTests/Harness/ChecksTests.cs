using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Checks;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace LaunchSim.BrowserTests.Harness;

/// <summary>The checks of what a page shows: each lets a sound page pass and refuses a bad one by name.</summary>
public sealed class ChecksTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    [BrowserFact]
    public async Task Checks_OfASoundPage_Pass()
    {
        BrowserPage page = await Open(Samples.Sound, Screen.Phone with { IsDark = true });
        await page.AssertAccessible(Output);
        await page.AssertFits();
        await page.AssertTargets();
    }

    [BrowserFact]
    public async Task Accessibility_OfBrokenRules_NamesRuleElementAndFault()
    {
        BrowserPage page = await Open(Samples.With("""
            <h4>Far below</h4>
            <p id="pale">pale</p>
            <img src="data:,">
            <button type="button"></button>
            """) with
        { Style = Samples.Sound.Style + "#pale { color: #aaa }" });
        TrueException wrong = await Assert.ThrowsAsync<TrueException>(() => page.AssertAccessible(Output));
        foreach (string told in (string[])["heading-order", "<h4>Far below</h4>", "color-contrast", "2.32", "image-alt", "<img src=\"data:,\">", "button-name", "<button type=\"button\"></button>"])
        {
            Assert.Contains(told, wrong.Message, StringComparison.Ordinal);
        }
    }

    [BrowserFact]
    public async Task Fit_OfSomethingWiderThanThePhone_IsRefusedByNameUnlessItScrollsByItself()
    {
        const string Style = "body { margin: 0 } #frame { overflow-x: auto } .wide { width: 500px }";
        BrowserPage page = await Open(Samples.With("<div id=\"frame\" tabindex=\"0\"><div class=\"wide\">in a frame</div></div>") with { Style = Style }, Screen.Phone);
        await page.AssertFits();
        await page.Page.EvaluateAsync("() => { const free = document.createElement('p'); free.className = 'wide'; free.textContent = 'free'; document.body.append(free); }");
        TrueException wrong = await Assert.ThrowsAsync<TrueException>(() => page.AssertFits());
        Assert.Contains("<p class=\"wide\"></p> ends at 500 px", wrong.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("<div", wrong.Message, StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Fit_OfAWordTooLongForItsLine_IsRefusedByName()
    {
        BrowserPage page = await Open(Samples.With($"<p>{new string('w', 40)}</p>"), Screen.Phone);
        TrueException wrong = await Assert.ThrowsAsync<TrueException>(() => page.AssertFits());
        Assert.Contains($"\"{new string('w', 40)}\" ends at", wrong.Message, StringComparison.Ordinal);
    }

    /// <summary>A device's letters may be wider than those here, and a reader may space them.</summary>
    [BrowserFact]
    public async Task Fit_OfAWordThatFitsOnlyAsItIs_IsRefusedWithItsTextSpaced()
    {
        BrowserPage page = await Open(Samples.With("<p id=\"long\"></p>"), Screen.Phone);
        await page.Page.EvaluateAsync("() => { const long = document.getElementById('long'); while (document.documentElement.scrollWidth <= 360) long.textContent += 'n'; long.textContent = long.textContent.slice(1); }");
        TrueException wrong = await Assert.ThrowsAsync<TrueException>(() => page.AssertFits());
        Assert.Contains("with its text spaced", wrong.Message, StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Targets_TooSmallForAFinger_AreRefusedByName()
    {
        const string Style = """
            .small { display: inline-block; width: 20px; height: 20px; min-width: 0; min-height: 0; padding: 0 }
            .large { display: block; min-height: 24px; padding: 4px }
            [hidden] { display: none }
            """;
        BrowserPage page = await Open(Samples.With("""
            <button type="button" class="small" id="no1">x</button>
            <span role="slider" tabindex="0" class="small" id="no2">x</span>
            <p><a href="#told" id="no3">alone</a></p>
            <label><input type="checkbox" id="no4"> bands</label>
            <p>Read <a href="#told" id="yes1">on</a> here.</p>
            <label class="large"><input type="checkbox" id="yes2"> bands</label>
            <button type="button" class="small" id="yes3" hidden>x</button>
            <button type="button" class="small" id="yes4" disabled>x</button>
            """) with
        { Style = Samples.Sound.Style + Style });
        TrueException wrong = await Assert.ThrowsAsync<TrueException>(() => page.AssertTargets());
        string[] named = [.. wrong.Message.Split('"').Where(part => part.StartsWith("no", StringComparison.Ordinal) || part.StartsWith("yes", StringComparison.Ordinal))];
        Assert.Equal(["no1", "no2", "no3", "no4"], named);
    }
}
