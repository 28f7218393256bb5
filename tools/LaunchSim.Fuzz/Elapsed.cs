using System.Diagnostics;

namespace LaunchSim.Fuzz;

/// <summary>
/// Since when a case runs, by the clock and by the processor. A machine that has other things to do makes a case no slower
/// than it is: it is too long when clock and the whole process's processor time both say so, or when the clock says it by far.
/// </summary>
internal readonly struct Elapsed
{
    // What waits for something takes no processor time.
    private const double TimesByTheClock = 12;

    private readonly long _clock;
    private readonly TimeSpan _processor;

    private Elapsed(long clock, TimeSpan processor) => (_clock, _processor) = (clock, processor);

    /// <summary>Begins to count.</summary>
    public static Elapsed Now() => new(Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);

    /// <summary>Whether it is more than a case may take.</summary>
    /// <param name="longest">How long a case may take.</param>
    public bool IsOver(TimeSpan longest)
    {
        TimeSpan clock = Stopwatch.GetElapsedTime(_clock);
        return clock > TimesByTheClock * longest || (clock > longest && Environment.CpuUsage.TotalTime - _processor > longest);
    }
}
