using LaunchSim.BrowserTests.Browsers;
using LaunchSim.Scenarios;
using LaunchSim.Web.Tests.Desk;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Desks;

/// <summary>The desk and the files on the disk: saved, changed, sent.</summary>
public sealed class FileTests(Browser browser, ITestOutputHelper output) : DeskTest(browser, output)
{
    [BrowserFact]
    public async Task Save_OfWhatWasMoved_IsAVariantThatOpens()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        string own = await File.ReadAllTextAsync(host.PathOf("door-car.yaml"));
        await Hole(page, 3).ClickAsync();
        await Answered(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save as…" }).ClickAsync();
        await page.GetByLabel("file", new() { Exact = true }).FillAsync("hole-3.yaml");
        await page.GetByLabel("name of the set-up").FillAsync("Third hole");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("dialog")).ToContainTextAsync("Saved: hole-3.yaml");

        Scenario? saved = StandingCheck.Reader(ReadPurpose.Run).Read(host.PathOf("hole-3.yaml")).Scenario;
        Assert.Equal("Third hole", saved?.Name);
        Assert.Equal("3", saved?.FindText("rear.linkage.upper.body.use"));
        Assert.Equal(own, await File.ReadAllTextAsync(host.PathOf("door-car.yaml")));
        await page.GetByRole(AriaRole.Link, new() { Name = "Open it" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Third hole");
        Assert.Equal(Expected("hit_n", ("rear.linkage.upper.body.use", "3")), await Figure(page, "hit_n"));
    }

    [BrowserFact]
    public async Task File_ChangedOnTheDisk_IsPickedUpAndItsErrorsShown()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        string text = await File.ReadAllTextAsync(host.PathOf("door-car.yaml"));
        string good = await Figure(page, "hit_n");
        host.Write("door-car.yaml", text.Replace("cg_height: 21 in", "cg_height: 21 inn", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator(".trouble .place")).ToContainTextAsync("door-car.yaml:10:");
        await Assertions.Expect(page.Locator(".trouble .source")).ToContainTextAsync("cg_height: 21 inn");
        Assert.Equal(good, await Figure(page, "hit_n"));
        host.Write("door-car.yaml", text.Replace("cg_height: 21 in", "cg_height: 23 in", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator(".trouble")).ToBeEmptyAsync();
        await Answered(page);

        await Assertions.Expect(page.Locator(".status")).ToContainTextAsync("changed on the disk");
        Assert.Equal(Expected("hit_n", ("car.cg_height", "23 in")), await Figure(page, "hit_n"));
    }

    [BrowserFact]
    public async Task Page_ToSend_IsTheSetUpOnTheDesk()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        await Move(page, Clicks, 12);
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Page to send…" }).ClickAsync());
        string path = OutputFiles.Path("pages", "sent.html");
        await download.SaveAsAsync(path);
        BrowserPage sent = await Open(new Uri(path));

        Assert.Equal(Expected("lowest_rear_load_after_hit_n", ("rear.damper.extension.set", "12")), await Figure(sent.Page, "lowest_rear_load_after_hit_n"));
        await Assertions.Expect(page.Locator(".status")).ToContainTextAsync("downloads");
    }

    [BrowserFact]
    public async Task List_OfAFolder_LinksToEachDesk()
    {
        DeskHost host = await Host("door-car", "ladder-bar");
        host.Write("broken.yaml", (await File.ReadAllTextAsync(host.PathOf("door-car.yaml"))).Replace("105.5 in", "105.5 apples", StringComparison.Ordinal));
        BrowserPage list = await Open(new Uri($"{host.Origin}/?token={host.Token}"));
        await Assertions.Expect(list.Page.Locator(".scenarios li")).ToHaveCountAsync(3);
        await Assertions.Expect(list.Page.Locator(".scenarios")).ToContainTextAsync("apples");
        await list.Page.GetByRole(AriaRole.Link, new() { Name = "Ladder-bar car" }).ClickAsync();
        await Assertions.Expect(list.Page.Locator("h1")).ToContainTextAsync("Ladder-bar car");
    }
}
