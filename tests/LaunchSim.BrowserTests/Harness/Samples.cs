using LaunchSim.Web.Pages;

namespace LaunchSim.BrowserTests.Harness;

/// <summary>Small pages for trying the checks on.</summary>
internal static class Samples
{
    /// <summary>A page with nothing wrong.</summary>
    public static HtmlPage Sound { get; } = new()
    {
        Title = "A launch",
        Description = "A page to try the checks on.",
        Style = "body { margin: 0; font: 16px sans-serif; color: #222; background: #fff } button { min-width: 44px; min-height: 44px } @media (prefers-color-scheme: dark) { body { color: #eee; background: #111 } }",
        Script = "const { angle } = JSON.parse(document.getElementById('data').textContent);\ndocument.getElementById('told').textContent = `${angle}°`;\n",
        Body = "<main><h1>A launch</h1><p>The lower bar climbs <output id=\"told\"></output>.</p><button type=\"button\">Play</button></main>",
        Data = [("data", "{\"angle\": 4.5}")],
    };

    /// <summary>The same with something put at the end of its body.</summary>
    public static HtmlPage With(string html) => Sound with { Body = Sound.Body.Replace("</main>", $"{html}</main>", StringComparison.Ordinal) };
}
