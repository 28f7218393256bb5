using System.Diagnostics;

namespace LaunchSim.Fuzz;

/// <summary>
/// Since when a case runs, by the clock and by the processor. A machine that has other things to do makes a case no slower
/// than it is: it is too long when clock and the whole process's processor time both say so, or when the clock says it by far.
/// </summary>
internal readonly struct Elapsed
{
    /// <summary>How long a case may take.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    // What waits for something takes no processor time.
    private static readonly TimeSpan LongestByTheClock = TimeSpan.FromSeconds(60);

    private readonly long _clock;
    private readonly TimeSpan _processor;

    private Elapsed(long clock, TimeSpan processor) => (_clock, _processor) = (clock, processor);

    /// <summary>Whether it is more than a case may take.</summary>
    public bool IsTooLong
    {
        get
        {
            TimeSpan clock = Stopwatch.GetElapsedTime(_clock);
            return clock > LongestByTheClock || (clock > Longest && Environment.CpuUsage.TotalTime - _processor > Longest);
        }
    }

    /// <summary>Begins to count.</summary>
    public static Elapsed Now() => new(Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
}
