using LaunchSim.BrowserTests.Browsers;

namespace LaunchSim.BrowserTests.Checks;

/// <summary>Whether a page fits its screen and the fingers on it.</summary>
public static class Layout
{
    // The elements that stick out, unless they lie in one that scrolls by itself, the innermost ones only; then words too long for their line.
    private const string StickingOut = """
        (width) => {
          const root = document.scrollingElement ?? document.documentElement;
          if (root.scrollWidth <= width) return [];
          const scrolls = (element) => element !== null && element !== root && element !== document.body
            && (['auto', 'scroll'].includes(getComputedStyle(element).overflowX) || scrolls(element.parentElement));
          const out = [...document.body.querySelectorAll('*')].filter((element) =>
            element.getBoundingClientRect().right + scrollX > width + 0.5 && !scrolls(element.parentElement));
          const innermost = out.filter((element) => !out.some((other) => other !== element && element.contains(other)));
          const texts = [];
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const range = document.createRange();
            range.selectNodeContents(walker.currentNode);
            const end = Math.max(...[...range.getClientRects()].map((line) => line.right)) + scrollX;
            if (end > width + 0.5 && !scrolls(walker.currentNode.parentElement)) texts.push(`"${walker.currentNode.data.trim()}" ends at ${Math.round(end)} px`);
          }
          return [`${root.scrollWidth} px in a window of ${width} px`,
            ...innermost.slice(0, 10).map((element) => `${element.cloneNode(false).outerHTML} ends at ${Math.round(element.getBoundingClientRect().right + scrollX)} px`),
            ...texts.slice(0, 10)];
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

    // The spacing of WCAG 2.2, success criterion 1.4.12 (from memory). It also stands for a device whose letters are wider than this one's.
    private const string Spaced = """
        (isSpaced) => {
          if (!isSpaced) { document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== globalThis.spacing); return; }
          globalThis.spacing = new CSSStyleSheet();
          globalThis.spacing.replaceSync('* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }');
          document.adoptedStyleSheets = [...document.adoptedStyleSheets, globalThis.spacing];
        }
        """;

    /// <summary>Fails if the page can be scrolled sideways, as it is or with its text spaced as readers may space it, and names what sticks out.</summary>
    public static async Task AssertFits(this BrowserPage page)
    {
        await page.AssertFits("");
        await page.Page.EvaluateAsync(Spaced, true);
        await page.AssertFits(" with its text spaced,");
        await page.Page.EvaluateAsync(Spaced, false);
    }

    private static async Task AssertFits(this BrowserPage page, string how)
    {
        string[] wrong = await page.Page.EvaluateAsync<string[]>(StickingOut, page.Screen.Width);
        Assert.True(wrong.Length == 0, $"{page.Page.Url}, {page.Screen},{how} can be scrolled sideways:\n  {string.Join("\n  ", wrong)}");
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
