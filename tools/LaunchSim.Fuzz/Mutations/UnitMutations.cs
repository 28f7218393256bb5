using System.Text.RegularExpressions;

namespace LaunchSim.Fuzz.Mutations;

/// <summary>Units of the wrong kind, none at all, shop words and SI mixed, and odd spellings.</summary>
internal static partial class UnitMutations
{
    /// <summary>What to put in the place of a unit.</summary>
    public static IReadOnlyList<string> Odd { get; } =
    [
        "", "in", "ft", "mm", "m", "km", "lb", "lbf", "lbm", "kg", "N", "kgf", "oz", "slug", "t", "g", "s", "ms", "min", "h", "Hz", "rad", "deg", "°", "rev", "rpm", "mph", "kph", "psi", "bar", "Pa", "hp", "kW", "J", "%",
        "lb/in", "N/mm", "lb·s/in", "lb-ft", "ft-lb", "lb⋅ft", "N*m", "kN·m/rad", "in/s", "m/s", "kg·m²", "lb·in^2", "rpm/√(lb-ft)", "rad/s/sqrt(N·m)", "/psi", "1/psi", "lb/in/psi", "in²/in", "in³/in²", "√(in²)", "√in", "sqrt(in)",
        "inn", "IN", "Lb", "pounds", "metres", "furlong", "in in", "in ft", "in 3", "in/", "/in", "in//s", "in^", "in^99", "in^-", "in⁻", "in^0", "in⁹", "((in))", "(in", "in)", "√√in", "√(√(√(in)))", "lb·lb·lb·lb·lb·lb·lb", "km·km·km·km·km·km·km·km·km^9", "lb^9/oz^9", "µm", "μs", "″", "′", "\"", "'", "lb s/in", "lb.s/in", "N.m", "Nm", "kNm", "ftlb", "lb ft", "№", "🏎", "in\u200b", "\u00a0in", "ın", "ℓb",
        "lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft-lb-ft", "in ±1", "in ±1 %", "in ±-1 %", "in ±1e300 %", "±5 %", "lb ± %",
    ];

    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("an odd unit", 26, (text, dice) => Changed(text, dice, _ => dice.Pick(Odd))),
        new("no unit", 6, (text, dice) => Changed(text, dice, _ => "")),
        new("a unit twice", 4, (text, dice) => Changed(text, dice, unit => dice.Pick([$"{unit} {unit}", $"{unit}·{unit}", $"{unit}/{unit}", $"({unit})^2"]))),
        new("a unit misspelt", 6, (text, dice) => Changed(text, dice, unit => unit.Insert(dice.Below(unit.Length + 1), dice.Pick(["s", ".", "·", "x", " ", "/"])))),
        new("a unit in capitals", 3, (text, dice) => Changed(text, dice, unit => unit.ToUpperInvariant())),
    ];

    private static string Changed(string text, Dice dice, Func<string, string> change)
    {
        MatchCollection units = Unit().Matches(text);
        if (units.Count == 0)
        {
            return text;
        }

        Group at = units[dice.Below(units.Count)].Groups[1];
        return text[..at.Index] + change(at.Value) + text[(at.Index + at.Length)..];
    }

    [GeneratedRegex(@"[0-9] (/?(?:lb|in|ft|mm|m|kg|kgf|N|kN|s|ms|rad|rpm|psi|bar|°)(?:[·/\-√()²³A-Za-z]*))(?=[ ,}\n\r])")]
    private static partial Regex Unit();
}
