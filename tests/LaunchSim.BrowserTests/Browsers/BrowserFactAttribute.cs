namespace LaunchSim.BrowserTests.Browsers;

/// <summary>A test in a browser; skipped, with what to install, where there is none and none is required.</summary>
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = InstalledBrowser.SkipReason;
}

/// <summary>The same with data.</summary>
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = InstalledBrowser.SkipReason;
}
