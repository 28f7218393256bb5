using System.Globalization;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Cli.Output;

/// <summary>A number with its doubt: the doubt to two figures, the number to as many decimals.</summary>
internal static class DoubtedText
{
    /// <summary>For a person to read.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="halfWidth">In SI.</param>
    /// <param name="scale">The unit.</param>
    public static string Of(double value, double halfWidth, Scale scale) => Text(value / scale.Factor, halfWidth / scale.Factor, scale.Unit);

    /// <summary>For a file.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="halfWidth">In SI.</param>
    /// <param name="unit">The unit that the file has there.</param>
    public static string Of(double value, double halfWidth, Unit unit) => Text(value / unit.Factor, halfWidth / unit.Factor, unit.Text);

    private static string Text(double value, double halfWidth, string unit)
    {
        int decimals = halfWidth > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(halfWidth)), 0, 12) : 6;

        // 0.096 becomes 0.10, not 0.096 with a third figure.
        decimals = Math.Max(0, decimals - (Math.Round(halfWidth, decimals) >= 10 * Math.Pow(10, 1 - decimals) ? 1 : 0));
        return string.Create(CultureInfo.InvariantCulture, $"{Fixed(value, decimals)} ±{Fixed(halfWidth, decimals)} {unit}");
    }

    private static string Fixed(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
