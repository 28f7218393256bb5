using System.Text;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LaunchSim.BrowserTests.Browsers;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Checks;

/// <summary>What a machine can check of WCAG 2.2 AA, by the rules of axe-core.</summary>
public static class Accessibility
{
    private static readonly string[] Rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

    /// <summary>Fails if a rule is broken, with the rule, the element and what is wrong with it. What the rules could not decide is only told.</summary>
    public static async Task AssertAccessible(this BrowserPage page, ITestOutputHelper output)
    {
        AxeResult result = await page.Page.RunAxe(new AxeRunOptions { RunOnly = new RunOnlyOptions { Type = "tag", Values = [.. Rules] } });
        Assert.NotEmpty(result.Passes);
        if (result.Incomplete.Length > 0)
        {
            output.WriteLine($"For a person to look at:\n{Text(result.Incomplete)}");
        }

        Assert.True(result.Violations.Length == 0, $"{page.Page.Url}, {page.Screen}:\n{Text(result.Violations)}");
    }

    private static string Text(IEnumerable<AxeResultItem> items)
    {
        var text = new StringBuilder();
        foreach (AxeResultItem item in items)
        {
            text.Append(item.Id).Append(" (").Append(item.Impact).Append("): ").Append(item.Help).Append('\n');
            foreach (AxeResultNode node in item.Nodes)
            {
                text.Append("  ").Append(node.Html).Append('\n');
                foreach (AxeResultCheck check in (AxeResultCheck[])[.. node.Any, .. node.All, .. node.None])
                {
                    text.Append("    ").Append(check.Message).Append('\n');
                }
            }
        }

        return text.ToString();
    }
}
