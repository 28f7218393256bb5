using System.Globalization;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>Numbers as a person would write them by hand: two figures, in the unit of the trade.</summary>
internal static class RoundText
{
    public static string Of(TypicalEstimate estimate, UnitSystem system, bool withDoubt)
    {
        TypicalValue entry = estimate.Entry;
        Unit unit = UsualUnit.Of(entry.Kind, system);
        IEnumerable<string> numbers = estimate.Values.Select(value => Round(value / unit.Factor));
        TypicalDoubt? doubt = withDoubt ? entry.Doubt : null;
        if (doubt is { } each && !entry.IsRow)
        {
            numbers = estimate.Values.Zip(numbers, (value, text) => $"{text} ±{Rough(each.At(value) / unit.Factor)}");
        }

        string text = string.Join(' ', numbers);
        text = unit.Text.Length == 0 ? text : $"{text} {unit.Text}";
        return doubt is { } row && entry.IsRow ? string.Create(CultureInfo.InvariantCulture, $"{text} ±{100 * row.Size:0} %") : text;
    }

    /// <summary>Two figures, and half steps of the second where the first is a 1: never more than five percent away.</summary>
    public static string Round(double value) => Rounded(value, figures: 2, IsOne(value) ? 2 : 1);

    /// <summary>A doubt, of which nobody knows a second figure: one figure, or two where the first is a 1.</summary>
    public static string Rough(double value) => Rounded(value, IsOne(value) ? 2 : 1, 1);

    /// <summary>Four figures at the most, never with a power of ten.</summary>
    public static string Plain(double value)
    {
        double rounded = double.Parse(value.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Math.Abs(rounded) < 1e15 ? rounded.ToString("0.##########", CultureInfo.InvariantCulture) : rounded.ToString("R", CultureInfo.InvariantCulture);
    }

    private static bool IsOne(double value) => Math.Abs(value) < 2 * Math.Pow(10, Magnitude(value));

    private static double Magnitude(double value) => Math.Floor(Math.Log10(Math.Abs(value)));

    private static string Rounded(double value, int figures, int parts)
    {
        if (value == 0)
        {
            return "0";
        }

        decimal step = Step(figures - 1 - (int)Magnitude(value)) / parts;
        decimal rounded = Math.Round((decimal)value / step, MidpointRounding.AwayFromZero) * step;
        return rounded.ToString("0.############################", CultureInfo.InvariantCulture);
    }

    private static decimal Step(int decimals)
    {
        decimal step = 1;
        for (int i = 0; i < Math.Abs(decimals); i++)
        {
            step = decimals > 0 ? step / 10 : step * 10;
        }

        return step;
    }
}
