using System.Globalization;
using LaunchSim.Geometry;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>A bar's new length and its change, as it is set on the bench: <c>11.94 in, 3/16 in longer</c>.</summary>
public static class BarLengthWords
{
    private const double Sixteenth = 0.0254 / 16;

    /// <summary>The length and the change.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="readout">The units.</param>
    public static string Of(BarChange bar, Readout readout)
    {
        string length = readout.Travel.Text(bar.Length);
        string amount = readout.IsShop ? Inches(Math.Abs(bar.Change)) : readout.Travel.IsZero(bar.Change) ? "" : readout.Travel.Text(Math.Abs(bar.Change));
        return amount.Length == 0 ? $"{length}, as now" : $"{length}, {amount} {(bar.Change > 0 ? "longer" : "shorter")}";
    }

    private static string Inches(double change)
    {
        int sixteenths = (int)Math.Round(change / Sixteenth, MidpointRounding.AwayFromZero);
        if (sixteenths == 0)
        {
            return "";
        }

        int whole = sixteenths / 16, part = sixteenths % 16, below = 16;
        while (part > 0 && part % 2 == 0)
        {
            part /= 2;
            below /= 2;
        }

        return string.Create(CultureInfo.InvariantCulture, $"{(part == 0 ? $"{whole}" : whole == 0 ? $"{part}/{below}" : $"{whole}-{part}/{below}")} in");
    }
}
