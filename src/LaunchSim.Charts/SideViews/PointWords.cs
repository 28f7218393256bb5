using System.Globalization;
using LaunchSim.Scenarios;

namespace LaunchSim.Charts.SideViews;

/// <summary>What a point of the file is called in plain words.</summary>
internal static class PointWords
{
    /// <summary>The words, such as <c>upper bar, body end</c>.</summary>
    /// <param name="path">The point's path, such as <c>rear.linkage.upper.body</c>.</param>
    public static string Of(string path) => path switch
    {
        "rear.linkage.lower.axle" => "lower bar, axle end",
        "rear.linkage.lower.body" => "lower bar, body end",
        "rear.linkage.upper.axle" => "upper bar, axle end",
        "rear.linkage.upper.body" => "upper bar, body end",
        "rear.linkage.pivot" => "pivot",
        "rear.spring.axle" => "spring, axle end",
        "rear.spring.body" => "spring, body end",
        "rear.damper.axle" => "damper, axle end",
        "rear.damper.body" => "damper, body end",
        "rear.wheelie_bar.wheel" => "wheelie bar's wheel",
        _ when Ballast(path) is { } number => $"ballast {number}",
        _ => path,
    };

    /// <summary>The words for a point with its hole.</summary>
    /// <param name="point">The point.</param>
    public static string Of(EnteredPoint point) => point.Hole.Length == 0 ? Of(point.Path)
        : $"{Of(point.Path)}, hole {point.Hole}{(point.IsInUse ? ", in use" : "")}";

    /// <summary>The name of a bracket, short: <c>upper body</c>.</summary>
    /// <param name="path">The bracket's path.</param>
    public static string Bracket(string path) => path switch
    {
        "rear.linkage.pivot" => "pivot",
        _ when path.StartsWith("rear.linkage.", StringComparison.Ordinal) => path["rear.linkage.".Length..].Replace('.', ' '),
        _ => path["rear.".Length..].Replace('.', ' '),
    };

    /// <summary>The first of a list, and how many more there are.</summary>
    /// <param name="all">The list.</param>
    /// <param name="between">What stands between two of them.</param>
    public static string Few(IReadOnlyList<string> all, string between)
    {
        const int Most = 2;
        return all.Count <= Most + 1 ? string.Join(between, all)
            : string.Create(CultureInfo.InvariantCulture, $"{string.Join(between, all.Take(Most))}{between}and {all.Count - Most} more");
    }

    private static string? Ballast(string path)
    {
        const string Start = "car.ballast[";
        int end = path.IndexOf(']', StringComparison.Ordinal);
        return path.StartsWith(Start, StringComparison.Ordinal) && end > 0
            && int.TryParse(path.AsSpan(Start.Length, end - Start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int index)
                ? (index + 1).ToString(CultureInfo.InvariantCulture) : null;
    }
}
