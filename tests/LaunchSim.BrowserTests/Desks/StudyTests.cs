using LaunchSim.BrowserTests.Browsers;
using LaunchSim.BrowserTests.Checks;
using LaunchSim.Web.Tests.Desk;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Desks;

public sealed class StudyTests(Browser browser, ITestOutputHelper output) : DeskTest(browser, output)
{
    [BrowserFact]
    public async Task Next_Asked_ListsChangesAndTriesOne()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        await page.GetByRole(AriaRole.Button, new() { Name = "What next?" }).ClickAsync();
        await page.Locator(".next-list tbody tr").Nth(1).WaitForAsync(new() { Timeout = 60_000 });
        await page.Locator(".next-list tbody button").First.ClickAsync();
        await Answered(page);

        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        await Assertions.Expect(page.Locator(".next-list.old")).ToHaveCountAsync(1);
    }

    [BrowserFact]
    public async Task Doubt_Asked_DrawsBandsAndCanBeCancelled()
    {
        DeskHost host = await Host();
        IPage page = await OpenDesk(host);
        await page.GetByRole(AriaRole.Button, new() { Name = "How sure?" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();
        await Assertions.Expect(page.Locator(".running")).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "How sure?" }).ClickAsync();
        await page.Locator(".beside .chart-band").First.WaitForAsync(new() { Timeout = 60_000, State = WaitForSelectorState.Attached });
        await Assertions.Expect(page.Locator(".doubts")).ToContainTextAsync("plausible cars", new() { Timeout = 10_000 });
    }

    [BrowserFact]
    public Task Desk_OnAPhone_FitsAndIsAccessible() => Look("phone", Screen.Phone);

    [BrowserFact]
    public Task Desk_OnAWideDarkScreen_FitsAndIsAccessible() => Look("wide-dark", Screen.Wide with { IsDark = true });

    private async Task Look(string name, Screen screen)
    {
        DeskHost host = await Host();
        BrowserPage opened = await Open(new Uri($"{host.Origin}/desk?file=door-car.yaml&token={host.Token}"), screen);
        await opened.Page.WaitForFunctionAsync("() => document.querySelectorAll('.handle').length > 0");
        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this set-up" }).ClickAsync();
        await Assertions.Expect(opened.Page.Locator("header .letter")).ToHaveCountAsync(2);
        await Move(opened.Page, Clicks, 12);
        await opened.Page.WaitForTimeoutAsync(300);
        await opened.TakePicture($"desk-{name}");
        await opened.AssertFits();
        await opened.AssertTargets();
        await opened.AssertAccessible(Output);
        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Save as…" }).ClickAsync();
        await opened.AssertAccessible(Output);
    }
}
