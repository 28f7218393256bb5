using System.Globalization;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Studies.Aims;

/// <summary>Aims and their values as a person reads them.</summary>
public static class AimWords
{
    /// <summary>What is wanted and how much a miss counts: <c>0 ms; each 20 ms off is a point, weight 2</c>.</summary>
    /// <param name="aim">The aim.</param>
    /// <param name="readout">The units.</param>
    public static string Wanted(Aim aim, Readout readout)
    {
        string band = aim.Subject.Name == "rear_stops" && aim.To == 0 ? "not reached"
            : aim.From == aim.To ? $"{Value(aim, aim.From, readout)}{(aim.IsLimit ? $" ±{Value(aim, aim.Point, readout)}" : "")}"
            : double.IsInfinity(aim.From) ? aim.To == 0 ? "as little as can be had" : $"at most {Value(aim, aim.To, readout)}"
            : double.IsInfinity(aim.To) ? $"at least {Value(aim, aim.From, readout)}"
            : $"{Value(aim, aim.From, readout)} to {Value(aim, aim.To, readout)}";
        return aim.IsLimit ? $"{band}: a limit" : $"{band}; each {Value(aim, aim.Point, readout)} beyond is a point, weight {aim.Weight.ToString("0.##", CultureInfo.InvariantCulture)}";
    }

    /// <summary>A value of the aim's subject.</summary>
    /// <param name="aim">The aim.</param>
    /// <param name="value">The value; not a number when a launch has none.</param>
    /// <param name="readout">The units.</param>
    public static string Value(Aim aim, double value, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(aim);
        ArgumentNullException.ThrowIfNull(readout);
        return double.IsNaN(value) ? "none" : aim.Subject.Unit switch
        {
            FigureUnit.Time => Readout.Lag.Text(value),
            FigureUnit.Length => readout.Travel.Text(value),
            _ when aim.Subject.Name == "rear_stops" => value == 0 ? "not reached" : $"hit with {100 * (value - 1):0} % of standing load",
            _ => (100 * value).ToString("0", CultureInfo.InvariantCulture) + " % of standing load",
        };
    }

    /// <summary>A value in few letters, for a column of a table whose heading says what it is.</summary>
    /// <param name="aim">The aim.</param>
    /// <param name="value">The value; not a number when a launch has none.</param>
    /// <param name="readout">The units.</param>
    public static string Cell(Aim aim, double value, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(aim);
        ArgumentNullException.ThrowIfNull(readout);
        return double.IsNaN(value) ? "none" : aim.Subject.Unit switch
        {
            FigureUnit.Time => Readout.Lag.Text(value),
            FigureUnit.Length => readout.Travel.Text(value),
            _ when aim.Subject.Name == "rear_stops" => value == 0 ? "free" : "hit",
            _ => (100 * value).ToString("0", CultureInfo.InvariantCulture) + " %",
        };
    }

    /// <summary>A heading for such a column.</summary>
    /// <param name="aim">The aim.</param>
    public static string Heading(Aim aim)
    {
        ArgumentNullException.ThrowIfNull(aim);
        return aim.Subject.Name.Replace('_', ' ');
    }

    /// <summary>A score in points, with the limits that are broken.</summary>
    /// <param name="score">The score.</param>
    public static string Score(AimScore score) => !score.Exists ? "none"
        : score.KeepsLimits ? Points(score.Points) : $"{Points(score.Points)} (+{Points(score.Beyond)} beyond limits)";

    /// <summary>Points with the digits that they are worth.</summary>
    /// <param name="points">The points.</param>
    public static string Points(double points) => points.ToString("0.00", CultureInfo.InvariantCulture);
}
