using System.Globalization;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Comparing;

namespace LaunchSim.Passes.Seasons;

/// <summary>Passes and their numbers in words.</summary>
public static class SeasonWords
{
    /// <summary>What a measure is called, a beam by its place.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="readout">The units.</param>
    public static string Name(SeasonMeasure measure, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(readout);
        return measure.Mark is { } place ? $"{Place(place, readout)} time" : measure.Words;
    }

    /// <summary>Where a beam is, as people say it.</summary>
    /// <param name="place">Its place, m.</param>
    /// <param name="readout">The units.</param>
    public static string Place(double place, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(readout);
        Scale scale = readout.Distance;
        string text = scale.Number(place);
        return $"{(text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text)} {scale.Unit}";
    }

    /// <summary>A value of a measure.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="value">The value, s.</param>
    public static string Value(SeasonMeasure measure, double value)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return double.IsNaN(value) ? Never(measure) : measure.IsLag ? Readout.Lag.Text(value) : Readout.Time.Text(value);
    }

    /// <summary>The same without its unit.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="value">The value, s.</param>
    public static string Number(SeasonMeasure measure, double value)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return double.IsNaN(value) ? Never(measure) : measure.IsLag ? Readout.Lag.Number(value) : Readout.Time.Number(value);
    }

    // A lag of two of which one never comes is none.
    private static string Never(SeasonMeasure measure) => measure.IsLag ? "none" : "never";

    /// <summary>A setting that is otherwise than before.</summary>
    /// <param name="change">The setting in both.</param>
    public static string Change(WrittenDifference change)
    {
        ArgumentNullException.ThrowIfNull(change);
        string was = change.Texts[0] ?? "left out", now = change.Texts[1] ?? "left out";

        // A unit that both have is said once.
        int cut = was.LastIndexOf(' ');
        string unit = cut < 0 ? "" : was[cut..];
        return cut > 0 && unit.Length > 1 && !char.IsAsciiDigit(unit[1]) && now.EndsWith(unit, StringComparison.Ordinal) ? $"{change.Path} {was[..cut]} → {now}" : $"{change.Path} {was} → {now}";
    }

    /// <summary>All of a pass's changes against the one before; what differs from the car's file for the first one.</summary>
    /// <param name="entry">The pass.</param>
    public static string Changes(SeasonEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Changes is { } changes
            ? changes.Count == 0 ? "nothing" : string.Join(", ", changes.Select(Change))
            : entry.Pass.Changed.Count == 0 ? "as in the car's file" : string.Join(", ", entry.Pass.Changed.Select(one => $"{one.Path} {one.Value}"));
    }

    /// <summary>What moved first, as seen: in a word, and in times where there are any.</summary>
    /// <param name="seen">What was seen.</param>
    public static string FirstMoves(SeenFacts seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        string word = seen.FirstUp switch { FirstUp.Front => "front", FirstUp.Rear => "rear", FirstUp.Together => "together", _ => "" };
        string[] times = [.. new[] { ("rear", seen.RearMoves), ("front", seen.FrontMoves) }.Where(one => one.Item2 is not null).Select(one => $"{one.Item1} {Moment(one.Item2!)}")];
        return string.Join(": ", new[] { word, string.Join(", ", times) }.Where(part => part.Length > 0));
    }

    /// <summary>A moment in seconds, a bound with its word.</summary>
    /// <param name="moment">The moment.</param>
    public static string Moment(SeenMoment moment)
    {
        ArgumentNullException.ThrowIfNull(moment);
        return moment.Bound switch
        {
            SeenBound.Never => "never",
            SeenBound.Before => "before " + Readout.Time.Text(moment.Time),
            SeenBound.After => "after " + Readout.Time.Text(moment.Time),
            _ => Readout.Time.Text(moment.Time),
        };
    }

    /// <summary>Shake in a word; empty when nothing was noted.</summary>
    /// <param name="shake">What was noted.</param>
    public static string Of(Shake? shake) => shake?.ToString().ToLowerInvariant() ?? "";

    /// <summary>The day and time of a pass; empty when it does not say.</summary>
    /// <param name="pass">The pass.</param>
    public static string When(PassFile pass)
    {
        ArgumentNullException.ThrowIfNull(pass);
        return pass.Time is { } time ? time.ToString(time.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) : "";
    }

    /// <summary>Names one after another: <c>a, b and c</c>.</summary>
    /// <param name="names">The names.</param>
    public static string List(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
    }
}
