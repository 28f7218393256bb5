using LaunchSim.BrowserTests.Browsers;

namespace LaunchSim.BrowserTests.Harness;

public class InstalledBrowserTests
{
    private static Func<string, string?> Variables(params (string Name, string Value)[] set) =>
        name => set.Where(variable => variable.Name == name).Select(variable => variable.Value).FirstOrDefault();

    [Fact]
    public void Find_WithNothingAnywhere_FindsNone() => Assert.Null(InstalledBrowser.Find(Variables(), _ => false));

    [Fact]
    public void Find_ANamedProgram_ComesBeforeAllOthers() =>
        Assert.Equal("/opt/mine", InstalledBrowser.Find(Variables((InstalledBrowser.PathVariable, "/opt/mine")), _ => true));

    [Fact]
    public void Find_ANamedProgramThatIsNotThere_IsNotReplacedByAnother() =>
        Assert.Equal("/opt/mine", InstalledBrowser.Find(Variables((InstalledBrowser.PathVariable, "/opt/mine")), path => path != "/opt/mine"));

    [Fact]
    public void Find_AnEmptyName_LooksInTheUsualPlaces() =>
        Assert.NotEqual("", InstalledBrowser.Find(Variables((InstalledBrowser.PathVariable, ""), ("ProgramFiles", @"C:\Program Files"), ("HOME", "/home/me")), _ => true));

    [Fact]
    public void Find_OnLinux_PrefersChromiumAndLooksAlongThePath()
    {
        if (OperatingSystem.IsWindows() || OperatingSystem.IsMacOS())
        {
            return;
        }

        Assert.Equal("/usr/bin/chromium", InstalledBrowser.Find(Variables(), path => path is "/usr/bin/chromium" or "/usr/bin/google-chrome"));
        Assert.Equal("/nix/bin/google-chrome", InstalledBrowser.Find(Variables(("PATH", "/bin:/nix/bin")), path => path is "/nix/bin/google-chrome"));
    }

    [Fact]
    public void SkipReason_WithoutABrowser_SaysHowToInstallOne()
    {
        string? reason = InstalledBrowser.Reason(null, Variables());
        Assert.Contains("apt-get install chromium", reason, StringComparison.Ordinal);
        Assert.Contains(InstalledBrowser.PathVariable, reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1", false)]
    [InlineData("true", false)]
    [InlineData("0", true)]
    [InlineData("", true)]
    public void SkipReason_WithoutABrowser_IsThereUnlessOneIsRequired(string required, bool skips) =>
        Assert.Equal(skips, InstalledBrowser.Reason(null, Variables((InstalledBrowser.RequiredVariable, required))) is not null);

    [Fact]
    public void SkipReason_WithABrowser_IsNone() => Assert.Null(InstalledBrowser.Reason("/usr/bin/chromium", Variables()));
}
