using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs;

/// <summary>Whether a log's times can be those of a launch; if not, which unit would make them so.</summary>
internal static class TimeCheck
{
    private const double LeastShare = 0.25, MostSpacing = 0.125;
    private const int LeastRows = 4;

    private static readonly (string Name, double Seconds)[] Units = [("s", 1), ("ms", 1e-3), ("us", 1e-6), ("min", 60)];

    /// <summary>What is wrong with a log's times; null when nothing is.</summary>
    /// <param name="rows">The rows, read to their end.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="logFile">The log.</param>
    /// <param name="duration">How long the predicted launch is, s.</param>
    public static Diagnostic? Of(LogRows rows, LogClock clock, string logFile, double duration)
    {
        var at = new WrittenPlace(logFile, 0, 0);
        long count = rows.Count - rows.Doubled;
        if (count == 0)
        {
            return at.Error("", rows.Timeless > 0 ? string.Create(CultureInfo.InvariantCulture, $"no row with a time ({rows.Timeless} rows without one)") : "no row at all", "a row for each instant", "look whether the logger's export came to its end, and whether the time column has numbers");
        }

        if (count < LeastRows)
        {
            string rowsWord = count == 1 ? "one row" : string.Create(CultureInfo.InvariantCulture, $"{count} rows");
            return at.Error("", rows.Doubled > 0 ? $"{rowsWord} with a time of its own ({rows.Count} rows in all)" : rowsWord, string.Create(CultureInfo.InvariantCulture, $"at least {LeastRows} rows, each with a later time"), "look whether the logger's export came to its end; what was seen in single frames is written as marks, see docs/logs.md");
        }

        double length = rows.Last - rows.First, spacing = length / (count - 1);
        (string Path, string Unit, double Seconds, WrittenPlace At) = clock switch
        {
            TimeColumn { IsClock: false } column => ("time.unit", Units.OrderBy(unit => Math.Abs(unit.Seconds - column.Seconds)).First().Name, column.Seconds, column.At),
            FrameColumn column => ("time.frames_per_second", "frames", 1 / column.FramesPerSecond, column.At),
            _ => ("time", "", 0, at),
        };
        bool isShort = length < LeastShare * duration, isSparse = spacing > MostSpacing * duration;
        if (!isShort && !isSparse)
        {
            return null;
        }

        string found = isShort
            ? string.Create(CultureInfo.InvariantCulture, $"a log of {length:0.######} s in all")
            : string.Create(CultureInfo.InvariantCulture, $"rows that come every {spacing:0.###} s");
        (string Name, double Spacing, double Length)[] meant = [.. Units.Where(unit => Unit.Length > 0 && unit.Name != Unit && Seconds > 0)
            .Select(unit => (unit.Name, spacing / Seconds * unit.Seconds, length / Seconds * unit.Seconds))
            .Where(unit => unit.Item3 >= LeastShare * duration && unit.Item2 is <= 0.2 and >= 1e-5 && unit.Item2 <= MostSpacing * duration)];
        string which = meant.Length == 0 ? "" : string.Join("", meant.Select(unit => string.Create(CultureInfo.InvariantCulture, $"; its times in {unit.Name} would be a row every {1e3 * unit.Spacing:0.###} ms over {unit.Length:0.##} s")));
        return At.Error(Path, $"{found}, while the predicted launch takes {duration.ToString("0.##", CultureInfo.InvariantCulture)} s{which}", "times in the unit in which the logger wrote them",
            meant.Length > 0 ? $"write unit: {meant[0].Name}, if that is it" : "look at the unit of the time, and whether the log holds the whole launch");
    }
}
