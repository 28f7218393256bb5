using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Comparing;

/// <summary>Values and bands of aims as a person reads them: lags in milliseconds, loads as a share of the standing car's.</summary>
/// <param name="readout">The units.</param>
public sealed class AimReadout(Readout readout)
{
    private const string Stops = "rear_stops";

    /// <summary>An aim's value.</summary>
    /// <param name="aim">The aim.</param>
    /// <param name="value">Its value in SI; not a number when there is none.</param>
    public string Value(Aim aim, double value)
    {
        ArgumentNullException.ThrowIfNull(aim);
        return double.IsNaN(value) ? "none"
            : aim.Subject.Name != Stops ? Scale(aim).Text(value)
            : value <= 0 ? "not reached"
            : $"reached, {Scale(aim).Text(value - 1)}";
    }

    /// <summary>What is wanted, as in <c>0.25 to 3.00 in</c>.</summary>
    /// <param name="aim">The aim.</param>
    public string Wanted(Aim aim)
    {
        ArgumentNullException.ThrowIfNull(aim);
        Scale scale = Scale(aim);
        return aim.Subject.Name == Stops && aim.To < 1 ? "not reached"
            : aim.From == aim.To ? scale.Text(aim.From)
            : double.IsInfinity(aim.From) ? aim.To == 0 ? scale.Text(0) : $"{scale.Text(aim.To)} at most"
            : double.IsInfinity(aim.To) ? $"{scale.Text(aim.From)} at least"
            : $"{scale.Number(aim.From)} to {scale.Text(aim.To)}";
    }

    private Scale Scale(Aim aim) => aim.Subject.Unit switch
    {
        FigureUnit.Time => Readout.Lag,
        FigureUnit.Length => readout.Travel,
        _ => new("%", 0.01, 1),
    };
}
