using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Checks;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Pages;
using LaunchSim.Web.Seasons;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Seasons;

/// <summary>The page of a season as its reader has it, on every screen and on paper.</summary>
public sealed class SeasonPageTests(Browser browser, ITestOutputHelper output) : BrowserTest(browser, output)
{
    private static string Root { get; } = FindRoot(new DirectoryInfo(AppContext.BaseDirectory));

    private static readonly Lazy<HtmlPage> Shipped = new(() => Page(Path.Combine(Root, "scenarios", "season")));

    [BrowserFact]
    public Task Season_OnAPhone_FitsAndIsAccessible() => Look("season-phone", Screen.Phone);

    [BrowserFact]
    public Task Season_OnAPhoneInTheDark_FitsAndIsAccessible() => Look("season-phone-dark", Screen.Phone with { IsDark = true });

    [BrowserFact]
    public Task Season_OnALaptop_FitsAndIsAccessible() => Look("season-laptop", Screen.Laptop);

    [BrowserFact]
    public Task Season_OnPaper_FitsAndIsAccessible() => Look("season-paper", Screen.Paper);

    /// <summary>What stands in a file is text, whatever it looks like.</summary>
    [BrowserFact]
    public async Task Season_WithMarkupInItsNotes_ShowsItAsText()
    {
        string folder = Directory.CreateTempSubdirectory("season").FullName;
        try
        {
            File.Copy(Path.Combine(Root, "scenarios", "door-car.yaml"), Path.Combine(folder, "car.yaml"));
            Directory.CreateDirectory(Path.Combine(folder, "season"));
            File.WriteAllText(Path.Combine(folder, "season", "pass-1.yaml"), "car: ../car.yaml\nname: '<img src=x onerror=alert(1)>'\nnotes: '<script>alert(1)</script>'\nseen: {rear_moves: 0.06 s}\n");
            BrowserPage opened = await Open(Page(Path.Combine(folder, "season")), Screen.Laptop);

            Assert.Equal("<script>alert(1)</script>", await opened.Page.Locator(".note").InnerTextAsync());
            Assert.Equal(1, await opened.Page.Locator("img").CountAsync());
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private async Task Look(string name, Screen screen)
    {
        BrowserPage page = await Open(Shipped.Value, screen, name);
        Assert.True(await page.Page.Locator("img").EvaluateAsync<bool>("image => image.complete && image.naturalWidth > 0"));
        await page.TakePicture(name);
        await page.AssertFits();
        await page.AssertAccessible(Output);
    }

    private static string FindRoot(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")) ? folder.FullName : FindRoot(folder.Parent ?? throw new DirectoryNotFoundException("The repository's root."));

    private static HtmlPage Page(string folder)
    {
        SeasonResult read = new SeasonReader(StandingCheck.Reader(ReadPurpose.Run)).Read(folder);
        Assert.Empty(read.Errors);
        return SeasonPage.Of(SeasonCourse.Of(read.Season!, readsLogs: true), new Readout(UnitSystem.Shop), "LaunchSim");
    }
}
