using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Studies.Aims;

/// <summary>Values of aims as a person reads them.</summary>
public static class AimNumbers
{
    /// <summary>The unit and the digits of a subject's value.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="readout">The units.</param>
    public static Scale ScaleOf(AimSubject subject, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(subject);
        ArgumentNullException.ThrowIfNull(readout);
        return subject.Unit switch
        {
            FigureUnit.Time => Readout.Lag,
            FigureUnit.Length => readout.Travel,
            FigureUnit.Ratio when subject.IsShareOfStandingLoad => new Scale("% of the standing load", 0.01, 0),
            _ => new Scale("", 1, 2),
        };
    }

    /// <summary>A score.</summary>
    public static Scale Score { get; } = new("points", 1, 1);
}
