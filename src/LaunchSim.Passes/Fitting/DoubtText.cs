using System.Globalization;

namespace LaunchSim.Passes.Fitting;

/// <summary>Numbers with the digits that their doubt leaves.</summary>
internal static class DoubtText
{
    private const int MostDecimals = 9;

    /// <summary>A doubt in two figures.</summary>
    public static string Doubt(double half) => half.ToString("F" + Decimals(half), CultureInfo.InvariantCulture);

    /// <summary>A number to the last figure of its doubt.</summary>
    public static string Number(double value, double half) => value.ToString("F" + Decimals(half), CultureInfo.InvariantCulture);

    /// <summary>The same with its sign.</summary>
    public static string Signed(double value, double half) => (value > 0 ? "+" : "") + Number(value, half);

    /// <summary>A number of a row in five figures: finer than any sheet, and short.</summary>
    public static string Plain(double value) =>
        value == 0 ? "0" : value.ToString("F" + Math.Clamp(4 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, MostDecimals), CultureInfo.InvariantCulture) is var text && text.Contains('.', StringComparison.Ordinal)
            ? text.TrimEnd('0').TrimEnd('.') : text;

    private static int Decimals(double half) =>
        half > 0 && double.IsFinite(half) ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(half)), 0, MostDecimals) : MostDecimals;
}
