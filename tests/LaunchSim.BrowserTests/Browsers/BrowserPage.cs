using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace LaunchSim.BrowserTests.Browsers;

/// <summary>
/// A page in the browser, and everything that it complained of since it was opened: errors and warnings of the console,
/// exceptions that nobody caught, requests that failed or went elsewhere, breaches of the content security policy.
/// </summary>
public sealed class BrowserPage : IAsyncDisposable
{
    // The event also tells of breaches that a report-only policy or a busy console would hide, and which directive it was.
    private const string TellBreaches = """
        document.addEventListener('securitypolicyviolation', (breach) => tellBreach(
          `${breach.effectiveDirective} forbids ${breach.blockedURI}${breach.sample ? `: ${breach.sample}` : ''} (${breach.sourceFile}:${breach.lineNumber})`));
        """;

    // Two frames and a task: what the page had begun has had its turn, and its events have come.
    private const string Settle = "() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 0))))";

    private readonly ConcurrentQueue<string> _complaints = new();
    private readonly IBrowserContext _context;
    private readonly Uri _address;

    private BrowserPage(IBrowserContext context, IPage page, Uri address, Screen screen)
    {
        _context = context;
        _address = address;
        Page = page;
        Screen = screen;
    }

    /// <summary>The page, to click and to type in.</summary>
    public IPage Page { get; }

    /// <summary>On what it is looked at.</summary>
    public Screen Screen { get; }

    internal static async Task<BrowserPage> Open(IBrowserContext context, Uri address, Screen screen)
    {
        var opened = new BrowserPage(context, await context.NewPageAsync(), address, screen);
        await opened.Listen();
        if (screen.IsPrinted)
        {
            await opened.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        }

        await opened.Page.GotoAsync(address.AbsoluteUri, new PageGotoOptions { WaitUntil = WaitUntilState.Load });
        return opened;
    }

    /// <summary>What it complained of so far, one a line, in order.</summary>
    public async Task<IReadOnlyList<string>> Complaints()
    {
        if (!Page.IsClosed)
        {
            await Page.EvaluateAsync(Settle);
        }

        return [.. _complaints];
    }

    /// <summary>Fails if the page complained of anything.</summary>
    public async Task AssertClean()
    {
        IReadOnlyList<string> complaints = await Complaints();
        Assert.True(complaints.Count == 0, $"{_address}, {Screen}, complained:\n  {string.Join("\n  ", complaints)}");
    }

    /// <summary>Takes a picture of the whole page for people to look at, into the folder <c>pictures</c> of the tests' output.</summary>
    /// <param name="name">The file's name without its ending.</param>
    public async Task TakePicture(string name) =>
        await Page.ScreenshotAsync(new PageScreenshotOptions { Path = OutputFiles.Path("pictures", $"{name}.png"), FullPage = true });

    public async ValueTask DisposeAsync() => await _context.CloseAsync();

    private async Task Listen()
    {
        await _context.ExposeFunctionAsync("tellBreach", (string breach) => Complain("policy", breach));
        await _context.AddInitScriptAsync(TellBreaches);
        _context.WebError += (_, error) => Complain("uncaught", error.Error);
        _context.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" or "assert")
            {
                Complain($"console {message.Type}", $"{message.Text} ({message.Location})");
            }
        };
        _context.Request += (_, request) =>
        {
            if (!IsOwn(request.Url))
            {
                Complain("request to elsewhere", request.Url);
            }
        };
        _context.RequestFailed += (_, request) =>
        {
            // Given up by the page itself, as one that asks anew before the answer came.
            if (request.Failure != "net::ERR_ABORTED")
            {
                Complain("request failed", $"{request.Url} {request.Failure}");
            }
        };
        _context.Response += (_, response) =>
        {
            if (response.Status >= 400)
            {
                Complain("request refused", $"{response.Status} {response.Url}");
            }
        };
        Page.Crash += (_, _) => Complain("crash", _address.AbsoluteUri);
    }

    private bool IsOwn(string url)
    {
        var to = new Uri(url);
        return to.Scheme is "data" or "blob" or "about"
            || (_address.IsFile ? to.GetLeftPart(UriPartial.Path) == _address.GetLeftPart(UriPartial.Path) : to.GetLeftPart(UriPartial.Authority) == _address.GetLeftPart(UriPartial.Authority));
    }

    private void Complain(string kind, string text) => _complaints.Enqueue($"{kind}: {text.ReplaceLineEndings(" ")}");
}
