using System.Text.RegularExpressions;

namespace LaunchSim.Fuzz.Mutations;

/// <summary>Numbers that nobody measures: nothing, less than nothing, beyond all sense, or hardly numbers.</summary>
internal static partial class NumberMutations
{
    /// <summary>What to put in the place of a number.</summary>
    public static IReadOnlyList<string> Odd { get; } =
    [
        "0", "-0", "0.0", "+0", "1", "-1", "2", "1e300", "-1e300", "1e-300", "1e308", "1.8e308", "1e400", "-1e400", "1e-400", "4.9e-324", "1e99999999999", "NaN", "nan", ".nan", "inf", "-inf", ".inf", "-.inf", "∞", "Infinity",
        "1/0", "0/0", "5/8", "13-5/8", "13-8/5", "-2-1/2", "1-1/0", "1/3/5", "13 5/8", "1e-9", "1e9", "1e15", "123456789012345678901234567890", "0.000000000000000000000001", "1,5", "1,500", "1.500,0", "1 000", "1_000", "0x10", "0b1", "1.2.3", "--1", "+-1", "±1", "1 ±", "1 ±±1", "1 ± -1", "1 ±1e300", "1 +- 1", "1 +/- 1", "1 ±0", "1 ±1 %", "1e", "e1", ".", "-", "+", "1.", ".5", "-.5",
        "٣", "１２", "²", "½", "1-", "-1-1", "1–2", "−3", "1..2", "1e+", "1E5", "1d5", "$5", "5%", "five", "", "()", "1+1", "2*3", "1 2", "1 2 3", "0 0", "5 4 3 2 1 0",
    ];

    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("an odd number", 34, (text, dice) => Changed(text, dice, _ => dice.Pick(Odd))),
        new("a sign", 6, (text, dice) => Changed(text, dice, number => "-" + number)),
        new("a power of ten", 8, (text, dice) => Changed(text, dice, number => $"{number}e{dice.From(-320, 320)}")),
        new("another number", 8, (text, dice) => Changed(text, dice, _ => dice.Spread(1e-12, 1e12).ToString("R", System.Globalization.CultureInfo.InvariantCulture))),
        new("a number more", 5, (text, dice) => Changed(text, dice, number => $"{number} {dice.Pick(Odd)}")),
        new("a number less", 5, (text, dice) => Changed(text, dice, _ => "")),
        new("many digits", 2, (text, dice) => Changed(text, dice, number => number + new string(dice.Pick(['0', '9']), dice.From(20, 5_000)))),
        new("a long row", 2, (text, dice) => Changed(text, dice, number => string.Join(' ', Enumerable.Range(0, dice.From(50, 3_000))))),
        new("all numbers alike", 1, (text, dice) =>
        {
            string one = dice.Pick(Odd);
            return Number().Replace(text, _ => one);
        }),
    ];

    private static string Changed(string text, Dice dice, Func<string, string> change)
    {
        MatchCollection numbers = Number().Matches(text);
        if (numbers.Count == 0)
        {
            return text;
        }

        Match at = numbers[dice.Below(numbers.Count)];
        return text[..at.Index] + change(at.Value) + text[(at.Index + at.Length)..];
    }

    [GeneratedRegex(@"(?<![A-Za-z0-9_.])[-+]?[0-9]+(?:\.[0-9]+)?(?:-[0-9]+/[0-9]+)?")]
    private static partial Regex Number();
}
