using System.Diagnostics;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace LaunchSim.Cli.Terminal;

/// <summary>How quick a long job is, and how long it still takes. Safe to be told from any thread.</summary>
/// <param name="what">What is being done, in the plural.</param>
/// <param name="count">How many pieces there are.</param>
/// <param name="before">How many were done before this began.</param>
internal sealed class Pace(string what, long count, long before)
{
    private readonly long _start = Stopwatch.GetTimestamp();
    private long _added;

    /// <summary>Takes note of pieces that are done.</summary>
    /// <param name="more">How many.</param>
    public void Add(int more) => Interlocked.Add(ref _added, more);

    /// <summary>Rate and time left, as in <c>512 launches/s, 3 min left</c>; empty while there is nothing to tell from.</summary>
    public string Text() => Text(Stopwatch.GetElapsedTime(_start).TotalSeconds);

    /// <summary>The same after a time.</summary>
    /// <param name="seconds">Since it began.</param>
    public string Text(double seconds)
    {
        long added = Interlocked.Read(ref _added);
        if (added == 0 || seconds <= 0)
        {
            return "";
        }

        double rate = added / seconds;
        return $"{Rate(rate)} {what}/s, {Duration((count - before - added) / rate)} left";
    }

    /// <summary>A rate with the digits that it deserves.</summary>
    /// <param name="rate">Pieces a second.</param>
    public static string Rate(double rate) => rate.ToString(rate < 10 ? "0.0" : "#,0", CultureInfo.InvariantCulture);

    /// <summary>A time in one unit, as it is said: <c>40 s</c>, <c>12 min</c>, <c>3.5 h</c>, <c>21 days</c>, <c>31 years</c>.</summary>
    /// <param name="seconds">The time.</param>
    public static string Duration(double seconds)
    {
        const double minute = 60, hour = 3600, day = 86400, year = 365.25 * day;
        (double amount, string unit, string format) = seconds switch
        {
            < 90 => (Math.Ceiling(seconds), "s", "0"),
            < 90 * minute => (seconds / minute, "min", "0"),
            < 48 * hour => (seconds / hour, "h", "0.#"),
            < 2 * year => (seconds / day, "days", "0"),
            _ => (seconds / year, "years", "#,0"),
        };
        return $"{amount.ToString(format, CultureInfo.InvariantCulture)} {unit}";
    }
}

/// <summary>A pace beside a bar of progress.</summary>
/// <param name="pace">The pace.</param>
internal sealed class PaceColumn(Pace pace) : ProgressColumn
{
    /// <inheritdoc/>
    public override IRenderable Render(RenderOptions options, ProgressTask task, TimeSpan deltaTime) => new Text(pace.Text());
}
