using LaunchSim.Figures;

namespace LaunchSim.Studies.Doubting;

/// <summary>The columns of the traces that bands are made of: the register, one line a column.</summary>
public static class TraceSignals
{
    /// <summary>All columns: name as in the trace, what is read.</summary>
    public static IReadOnlyList<(string Name, Signal Signal)> All { get; } =
    [
        ("front_rise_m", Signal.FrontRise),
        ("rear_rise_m", Signal.RearRise),
        ("front_gap_m", Signal.FrontGap),
        ("separation_m", Signal.Separation),
        ("rear_tire_load_n", Signal.RearLoad),
        ("front_tire_load_n", Signal.FrontLoad),
    ];

    // Finer is not seen; more rows than this are neither.
    private const int UsualStep = 5, MostRows = 400;

    /// <summary>Milliseconds between rows for a launch of some length.</summary>
    /// <param name="duration">The launch's length, s.</param>
    public static int Step(double duration) => Math.Max(UsualStep, (int)Math.Ceiling(duration / LaunchReading.Grid / MostRows));

    /// <summary>How many rows there are with this step.</summary>
    /// <param name="duration">The launch's length, s.</param>
    /// <param name="step">Milliseconds between rows.</param>
    public static int Rows(double duration, int step) => (int)Math.Floor((duration / LaunchReading.Grid / step) + 1e-6) + 1;
}
