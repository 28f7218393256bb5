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
            numbers = estimate.Values.Zip(numbers, (value, text) => $"{text} ±{OneFigure(each.At(value) / unit.Factor)}");
        }

        string text = string.Join(' ', numbers);
        text = unit.Text.Length == 0 ? text : $"{text} {unit.Text}";
        return doubt is { } row && entry.IsRow ? string.Create(CultureInfo.InvariantCulture, $"{text} ±{100 * row.Size:0} %") : text;
    }

    /// <summary>Two figures, and half steps of the second where the first is a 1: never more than five percent away.</summary>
    public static string Round(double value) => Rounded(value, 1, 2);

    /// <summary>One figure, and half steps of it where it is a 1 or a 2: as round as a doubt deserves.</summary>
    public static string OneFigure(double value) => Rounded(value, 0, 3);

    private static string Rounded(double value, int further, int halvesBelow)
    {
        if (value == 0)
        {
            return "0";
        }

        int magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        bool halves = Math.Abs(value) < halvesBelow * Math.Pow(10, magnitude);
        decimal step = Step(further - magnitude) / (halves ? 2 : 1);
        decimal rounded = Math.Round((decimal)value / step, MidpointRounding.AwayFromZero) * step;
        return rounded.ToString("0.############################", CultureInfo.InvariantCulture);
    }

    /// <summary>Four figures at the most, never with a power of ten.</summary>
    public static string Plain(double value)
    {
        double rounded = double.Parse(value.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Math.Abs(rounded) < 1e15 ? rounded.ToString("0.##########", CultureInfo.InvariantCulture) : rounded.ToString("R", CultureInfo.InvariantCulture);
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
