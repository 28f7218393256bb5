using System.Globalization;
using LaunchSim.Figures;

namespace LaunchSim.Reports.Numbers;

/// <summary>A figure's value as a person reads it.</summary>
public static class FigureFormat
{
    /// <summary>Value and unit.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="value">Its value in SI.</param>
    /// <param name="readout">The units.</param>
    public static (string Number, string Unit) Of(FigureDefinition figure, double value, Readout readout)
    {
        switch (figure.Unit)
        {
            // How small the ledger's residual is counts; anything else that small is nothing.
            case FigureUnit.Ratio when figure.Key.StartsWith("energy_", StringComparison.Ordinal) && Math.Abs(value) < 1e-4 && value != 0:
                return (value.ToString("0.0e-0", CultureInfo.InvariantCulture), "");
            default:
                Scale scale = ScaleOf(figure, readout);
                return (scale.Number(value), scale.Unit);
        }
    }

    /// <summary>The unit of a figure, for many of its values one beside the other.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="readout">The units.</param>
    public static Scale ScaleOf(FigureDefinition figure, Readout readout) => figure.Unit switch
    {
        FigureUnit.Ratio => new Scale("", 1, 3),
        FigureUnit.Count => new Scale("", 1, 0),
        FigureUnit.Time => Readout.Time,
        FigureUnit.Length when figure.Key.Contains("distance", StringComparison.Ordinal) => readout.Distance,
        FigureUnit.Length when figure.Key.StartsWith("standing_", StringComparison.Ordinal) => readout.Place,
        FigureUnit.Length => readout.Travel,
        FigureUnit.Speed when figure.Key.Contains("damper", StringComparison.Ordinal) => readout.ShaftSpeed,
        FigureUnit.Speed => readout.Speed,
        FigureUnit.Acceleration => Readout.Acceleration,
        FigureUnit.Angle => Readout.Angle,
        FigureUnit.Force => readout.Force,
        FigureUnit.Torque => readout.Torque,
        FigureUnit.Energy => Readout.Energy,
        _ => Readout.Percent,
    };
}
