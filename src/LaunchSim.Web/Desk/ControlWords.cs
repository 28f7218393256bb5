using System.Globalization;
using LaunchSim.Scenarios;

namespace LaunchSim.Web.Desk;

/// <summary>What the things that can be moved are called.</summary>
internal static class ControlWords
{
    /// <summary>The label of a path, such as <c>Rear damper, extension clicks, counted from soft</c>.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="path">The path.</param>
    public static string Of(Scenario scenario, string path)
    {
        string[] parts = path.Split('.');
        return parts switch
        {
            [var end, "spring", "rate"] => $"{Capital(end)} spring rate, a side",
            [var end, "tire", "pressure", "set"] => $"{Capital(end)} tyre pressure",
            ["car", "ride_height", var end] => $"{Capital(end)} ride height, against as measured",
            [var end, "damper", var way, "set"] => $"{Capital(end)} damper, {way} clicks{CountedFrom(scenario, path)}",
            ["rear", "linkage", "pivot", "use"] => "Ladder bar, hole of the pivot",
            ["rear", "linkage", var bar, var side, "use"] => $"{Capital(bar)} bar, hole on the {side}",
            [var end, var part, var side, "use"] => $"{Capital(end)} {part}, hole on the {side}",
            ["car", var item, "mass"] when item.StartsWith("ballast[", StringComparison.Ordinal) => Ballast(scenario, path[..^5]),
            _ => Described(path),
        };
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private static string CountedFrom(Scenario scenario, string path) =>
        scenario.Clicks.TryGetValue(path[..^4], out ClickInfo? clicks) && clicks.CountFrom is { } from ? $", counted from {from}" : "";

    private static string Ballast(Scenario scenario, string item) =>
        scenario.Find(item + ".at") is { Count: 2 } at
            ? string.Create(CultureInfo.InvariantCulture, $"Ballast {Math.Abs(at.Numbers[0]):0.##} {at.Unit.Text} {(at.Numbers[0] < 0 ? "behind" : "ahead of")} the rear axle, {at.Numbers[1]:0.##} {at.Unit.Text} up")
            : "Ballast";

    // A path that is seldom moved is called what the reference calls it.
    private static string Described(string path)
    {
        string first = System.Text.RegularExpressions.Regex.Replace(path, @"\[\d+\]", "[0]");
        return ScenarioSchema.Paths.FirstOrDefault(one => one.Path == first)?.What ?? path;
    }
}
