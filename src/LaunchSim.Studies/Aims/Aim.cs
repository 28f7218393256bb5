using LaunchSim.Figures;

namespace LaunchSim.Studies.Aims;

/// <summary>
/// One thing that is wanted of a launch: a value, the band in which it is wanted, and how much a miss counts. Inside the
/// band there is nothing to win; outside, every <see cref="Point"/> beyond its nearer end is one point.
/// </summary>
public sealed record Aim
{
    /// <summary>What is aimed at.</summary>
    public required AimSubject Subject { get; init; }

    /// <summary>Lower end of what is wanted, in the subject's unit; −∞ for none.</summary>
    public double From { get; init; } = double.NegativeInfinity;

    /// <summary>Upper end of what is wanted; +∞ for none. The same as <see cref="From"/> where one value is wanted.</summary>
    public double To { get; init; } = double.PositiveInfinity;

    /// <summary>How much beyond counts one point, in the subject's unit; above 0.</summary>
    public required double Point { get; init; }

    /// <summary>How much a point counts; 0 or more. A limit has none.</summary>
    public double Weight { get; init; } = 1;

    /// <summary>Whether it is a limit: a set-up beyond it comes after all that are not, whatever else it does.</summary>
    public bool IsLimit { get; init; }

    /// <summary>How much beyond the wanted band a limit lets a value be: for one wanted value its <see cref="Point"/>, else nothing.</summary>
    public double Slack => IsLimit && From == To ? Point : 0;

    /// <summary>How far beyond what is wanted a value is, in points.</summary>
    /// <param name="value">The value; not a number when the launch has none.</param>
    public double PointsOf(double value)
    {
        if (double.IsNaN(value))
        {
            return PointsWithoutValue;
        }

        double beyond = Math.Max(From - Slack - value, value - To - Slack);
        return beyond > 0 ? beyond / Point : 0;
    }

    /// <summary>
    /// What a launch counts that does not have the value at all, such as a lag when one end does not come up: as much as
    /// being ten points off.
    /// </summary>
    public const double PointsWithoutValue = 10;
}

/// <summary>Something that can be aimed at: how its value comes from a launch's figures.</summary>
/// <param name="Name">Its name in files, such as <c>rise_lag</c>.</param>
/// <param name="Words">What it is called in a sentence, such as <c>the rise lag</c>.</param>
/// <param name="Unit">What its value measures.</param>
/// <param name="Keys">The figures that it needs.</param>
/// <param name="Value">Its value from those figures, in their order; not a number when the launch has none.</param>
public sealed record AimSubject(string Name, string Words, FigureUnit Unit, IReadOnlyList<string> Keys, AimValue Value)
{
    /// <summary>Whether the value is a load as a share of the rear tyres' standing load.</summary>
    public bool IsShareOfStandingLoad { get; init; }
}

/// <summary>A value out of figures.</summary>
/// <param name="figures">The figures in the order of the subject's keys; not a number where a launch has none.</param>
public delegate double AimValue(ReadOnlySpan<double> figures);
