namespace LaunchSim.Dynamics;

/// <summary>The instants 0, Δ, 2Δ … of a trace.</summary>
public static class SampleGrid
{
    // Widening of a comparison between two instants that differ by rounding only.
    private const double Rounding = 1e-9;

    /// <summary>The instant of a row: exact decimals where 1/Δ is a whole number.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="sample">Δ, s.</param>
    public static double Time(int row, double sample)
    {
        double perSecond = Math.Round(1 / sample);
        return Math.Abs((perSecond * sample) - 1) < 1e-12 ? row / perSecond : row * sample;
    }

    /// <summary>Number of rows from 0 up to and including a duration.</summary>
    /// <param name="duration">Duration, s.</param>
    /// <param name="sample">Δ, s.</param>
    public static int Rows(double duration, double sample) => (int)Math.Floor((duration / sample) + Rounding) + 1;

    /// <summary>The first instant of the grid at or after t.</summary>
    /// <param name="t">Time, s.</param>
    /// <param name="sample">Δ, s.</param>
    public static double AtOrAfter(double t, double sample) => Time((int)Math.Ceiling((t / sample) - Rounding), sample);
}
