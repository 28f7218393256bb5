using Microsoft.Playwright;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace LaunchSim.BrowserTests.Browsers;

/// <summary>The one browser of all tests, started by the first that wants a page.</summary>
public sealed class Browser : IAsyncLifetime
{
    /// <summary>The collection of the tests that share it, which run one after another.</summary>
    public const string Collection = "one browser";

    // No sandbox, since containers and root have none; the rest keeps the browser from talking to anybody by itself.
    private static readonly string[] Flags =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private readonly Lazy<Task<IBrowser>> _chromium;
    private readonly IMessageSink _terminal;
    private IPlaywright? _driver;

    public Browser(IMessageSink terminal)
    {
        _chromium = new Lazy<Task<IBrowser>>(Start);
        _terminal = terminal;
        if (InstalledBrowser.SkipReason is { } reason)
        {
            Tell($"Tests in a browser are skipped: {reason}.");
        }
    }

    /// <summary>Writes a line on the terminal of who runs the tests.</summary>
    public void Tell(string line) => _terminal.OnMessage(new DiagnosticMessage(line));

    /// <summary>Opens a page in a context of its own: nothing that another test left is there.</summary>
    /// <param name="address">Where the page is: a file, or a server of this machine.</param>
    /// <param name="screen">On what it is looked at.</param>
    public async Task<BrowserPage> Open(Uri address, Screen screen)
    {
        IBrowser chromium = await _chromium.Value;
        IBrowserContext context = await chromium.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = screen.Width, Height = screen.Height },
            DeviceScaleFactor = screen.Density,
            HasTouch = screen.IsPhone,
            IsMobile = screen.IsPhone,
            ColorScheme = screen.IsDark ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = screen.HasLessMotion ? ReducedMotion.Reduce : ReducedMotion.NoPreference,
            ForcedColors = screen.HasForcedColours ? ForcedColors.Active : ForcedColors.None,
            Locale = "en-GB",
            TimezoneId = "UTC",
            Offline = address.IsFile,
        });
        return await BrowserPage.Open(context, address, screen);
    }

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (_chromium is { IsValueCreated: true, Value.IsCompletedSuccessfully: true })
        {
            await (await _chromium.Value).CloseAsync();
        }

        _driver?.Dispose();
    }

    private async Task<IBrowser> Start()
    {
        string program = InstalledBrowser.Program ?? throw new InvalidOperationException(InstalledBrowser.Missing);
        if (!File.Exists(program))
        {
            throw new InvalidOperationException($"{InstalledBrowser.PathVariable} is `{program}`, and there is no such file");
        }

        _driver = await Playwright.CreateAsync();
        return await _driver.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = program, Headless = true, Args = Flags });
    }
}

/// <summary>Says that the tests of the collection share the browser.</summary>
[CollectionDefinition(Browser.Collection)]
public sealed class OneBrowser : ICollectionFixture<Browser>;
