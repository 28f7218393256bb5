using LaunchSim.BrowserTests.Browsers;

namespace LaunchSim.BrowserTests.Checks;

/// <summary>Whether a page fits its screen and the fingers on it.</summary>
public static class Layout
{
    // The elements that stick out, unless they lie in one that scrolls by itself, the innermost ones only.
    private const string StickingOut = """
        (width) => {
          const root = document.scrollingElement ?? document.documentElement;
          if (root.scrollWidth <= width) return [];
          const scrolls = (element) => element !== null && element !== root && element !== document.body
            && (['auto', 'scroll'].includes(getComputedStyle(element).overflowX) || scrolls(element.parentElement));
          const out = [...document.body.querySelectorAll('*')].filter((element) =>
            element.getBoundingClientRect().right + scrollX > width + 0.5 && !scrolls(element.parentElement));
          const innermost = out.filter((element) => !out.some((other) => other !== element && element.contains(other)));
          return [`${root.scrollWidth} px in a window of ${width} px`,
            ...innermost.slice(0, 10).map((element) => `${element.cloneNode(false).outerHTML} ends at ${Math.round(element.getBoundingClientRect().right + scrollX)} px`)];
        }
        """;

    // A control's label is part of its target; a link within a sentence may be as high as its line (WCAG 2.5.8).
    private const string SmallTargets = """
        (least) => {
          const isInSentence = (element) => element.matches('a[href]') && getComputedStyle(element).display === 'inline'
            && [...element.parentElement.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.data.trim() !== '');
          const box = (element) => {
            const boxes = [element, ...(element.labels ?? [])].map((part) => part.getBoundingClientRect()).filter((part) => part.width > 0);
            if (boxes.length === 0) return null;
            const [left, top] = [Math.min(...boxes.map((part) => part.left)), Math.min(...boxes.map((part) => part.top))];
            return { width: Math.max(...boxes.map((part) => part.right)) - left, height: Math.max(...boxes.map((part) => part.bottom)) - top };
          };
          const targets = 'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex]:not([tabindex="-1"]), '
            + '[role=button], [role=link], [role=slider], [role=tab], [role=checkbox], [role=radio], [role=switch], [role=menuitem], [role=option]';
          return [...document.querySelectorAll(targets)]
            .filter((element) => element.checkVisibility({ visibilityProperty: true }) && !element.matches(':disabled') && !isInSentence(element))
            .map((element) => ({ element, size: box(element) }))
            .filter(({ size }) => size !== null && (size.width < least || size.height < least))
            .map(({ element, size }) => `${element.cloneNode(false).outerHTML} is ${size.width.toFixed(1)} × ${size.height.toFixed(1)} px`);
        }
        """;

    /// <summary>Fails if the page can be scrolled sideways, and names what sticks out.</summary>
    public static async Task AssertFits(this BrowserPage page)
    {
        string[] wrong = await page.Page.EvaluateAsync<string[]>(StickingOut, page.Screen.Width);
        Assert.True(wrong.Length == 0, $"{page.Page.Url}, {page.Screen}, can be scrolled sideways:\n  {string.Join("\n  ", wrong)}");
    }

    /// <summary>Fails if something to click or tap is smaller than it may be.</summary>
    /// <param name="page">The page.</param>
    /// <param name="least">The least width and height in CSS pixels.</param>
    public static async Task AssertTargets(this BrowserPage page, int least = 24)
    {
        string[] wrong = await page.Page.EvaluateAsync<string[]>(SmallTargets, least);
        Assert.True(wrong.Length == 0, $"{page.Page.Url}, {page.Screen}, has targets under {least} px:\n  {string.Join("\n  ", wrong)}");
    }
}
