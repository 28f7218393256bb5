using System.Globalization;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Fuzz.Cases;

/// <summary>Numbers with a unit in the notation of the scenario file, spelt in one of the ways that people spell them.</summary>
internal static class Spelling
{
    // A rate per pressure is a length by its dimension.
    private static readonly Dictionary<Dimension, (string Text, double Factor)[]> Units = QuantityKind.All
        .GroupBy(kind => kind.Dimension)
        .ToDictionary(same => same.Key, same => same.SelectMany(kind => kind.Units.Select(text => (text, Factor(text, kind)))).ToArray());

    private static readonly (string Plain, string Other)[] Words =
    [
        ("·", "*"), ("·", "⋅"), ("²", "^2"), ("³", "^3"), ("in", "inch"), ("in", "\""), ("in", "″"), ("lb", "lbs"), ("s", "sec"), ("°", "deg"), ("/", " / "), ("-", "·"),
    ];

    /// <summary>The text of some numbers.</summary>
    /// <param name="numbers">The numbers, in the unit.</param>
    /// <param name="unit">Their unit.</param>
    /// <param name="inBraces">Whether it stands in braces, where a comma would part it.</param>
    /// <param name="dice">Decides the spelling.</param>
    public static string Of(IReadOnlyList<double> numbers, Unit unit, bool inBraces, Dice dice)
    {
        string text = unit.Text;
        double factor = 1;
        if (Units.TryGetValue(unit.Dimension, out (string Text, double Factor)[]? others) && others.Length > 0 && dice.Chance(0.25))
        {
            (string other, double si) = dice.Pick(others);
            (text, factor) = (other, unit.Factor / si);
        }

        string between = dice.Chance(0.93) ? " " : inBraces ? "   " : ", ";
        IEnumerable<string> written = numbers.Select(number => Number(number * factor, dice));
        string doubt = numbers.Count == 1 && dice.Chance(0.04) ? $" ±{Number(Math.Abs(numbers[0] * factor) * 0.03, dice)}" : "";
        string row = numbers.Count > 2 && dice.Chance(0.04) ? " ±5 %" : "";
        return string.Join(between, written) + doubt + Respelt(text, dice) + row;
    }

    /// <summary>A number, as a decimal, with a power of ten, or as a fraction.</summary>
    /// <param name="number">The number.</param>
    /// <param name="dice">Decides the spelling.</param>
    public static string Number(double number, Dice dice)
    {
        if (dice.Chance(0.90))
        {
            return Math.Abs(number) is > 1e-4 and < 1e6 ? Math.Round(number, 6).ToString(CultureInfo.InvariantCulture) : number.ToString("R", CultureInfo.InvariantCulture);
        }

        switch (dice.Below(4))
        {
            case 0:
                return number.ToString("0.######e+0", CultureInfo.InvariantCulture);
            case 1:
                return (number < 0 ? "" : "+") + number.ToString("R", CultureInfo.InvariantCulture);
            case 2 when Math.Abs(number) is > 1 and < 1000:
                double whole = Math.Floor(Math.Abs(number));
                int sixteenths = (int)((Math.Abs(number) - whole) * 16);
                return FormattableString.Invariant($"{(number < 0 ? "-" : "")}{whole}-{sixteenths}/16");
            default:
                return number.ToString("R", CultureInfo.InvariantCulture);
        }
    }

    private static string Respelt(string unit, Dice dice)
    {
        if (unit.Length == 0)
        {
            return "";
        }

        if (dice.Chance(0.1))
        {
            // Only a whole symbol: a letter within another is none.
            (string plain, string other) = dice.Pick(Words);
            unit = char.IsLetter(plain[0]) ? string.Join('/', unit.Split('/').Select(part => part == plain ? other : part)) : unit.Replace(plain, other, StringComparison.Ordinal);
        }

        return (dice.Chance(0.9) ? " " : "") + unit;
    }

    private static double Factor(string unit, QuantityKind kind) =>
        Quantity.TryParse("1 " + unit, kind, out Quantity? one, out string problem) ? one!.Si() : throw new InvalidOperationException($"{unit}: {problem}");
}
