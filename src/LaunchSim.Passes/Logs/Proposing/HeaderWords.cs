using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>A column's name taken apart: its words, and the unit in it.</summary>
/// <param name="Words">In small letters.</param>
/// <param name="Unit">The unit as it stands there; empty without one.</param>
internal sealed record HeaderWords(IReadOnlyList<string> Words, string Unit)
{
    /// <summary>Takes a name apart.</summary>
    /// <param name="name">The name, such as <c>Rear RH [mm]</c>.</param>
    /// <param name="unitLine">The unit in the line below the names; empty without one.</param>
    public static HeaderWords Of(string name, string unitLine)
    {
        string unit = unitLine.Trim().Trim('[', ']', '(', ')', '{', '}').Trim(), rest = name;
        int open = name.LastIndexOfAny(['[', '(', '{']), close = name.LastIndexOfAny([']', ')', '}']);
        if (open >= 0 && close > open)
        {
            string within = name[(open + 1)..close].Trim();
            if (unit.Length == 0 && within.Length is > 0 and < 12)
            {
                unit = within;
            }

            rest = name[..open] + " " + name[(close + 1)..];
        }

        List<string> words = Parted(rest);

        // A unit may stand at the end of a name, after a sign that parts words.
        if (unit.Length == 0 && words.Count > 1 && words[^1] is "mm" or "in" or "inch" or "rpm" or "mph" or "kph" or "kmh" or "ms" or "s" or "sec" or "g" or "deg" or "dps")
        {
            unit = words[^1];
            if (words[^1] is not "rpm")
            {
                words.RemoveAt(words.Count - 1);
            }
        }

        return new HeaderWords(words, unit.Length == 0 && words is ["rpm"] ? "rpm" : Spelled(unit));
    }

    /// <summary>Whether it has all of some words.</summary>
    public bool Has(params string[] all) => all.All(Words.Contains);

    /// <summary>Whether it has any of some words.</summary>
    public bool HasAny(params string[] any) => any.Any(Words.Contains);

    /// <summary>Whether the unit is one of a kind.</summary>
    public bool IsOf(QuantityKind kind) => Unit.Length > 0 && Quantity.TryParse($"1 {Unit}", kind, out _, out _);

    // As loggers write units, and as the scenario file does.
    private static string Spelled(string unit) => unit.ToLowerInvariant() switch
    {
        "kph" or "kmh" or "km/h" or "kmph" => "km/h",
        "1/min" or "u/min" or "r/min" or "min-1" or "rpm" or "revs" => "rpm",
        "g" or "gee" or "g's" => "g",
        "m/s2" or "m/s/s" or "m/s²" or "m/s^2" => "m/s²",
        "ft/s2" or "ft/s/s" => "ft/s²",
        "dps" or "deg/s" or "deg/sec" or "°/s" => "deg/s",
        "rad/s" or "rad/sec" => "rad/s",
        "inch" or "inches" or "\"" or "in" or "in." => "in",
        "millimeter" or "millimetre" or "mm" => "mm",
        "sec" or "secs" or "second" or "seconds" or "s" => "s",
        "msec" or "millis" or "milliseconds" or "ms" => "ms",
        "usec" or "us" or "µs" or "μs" or "microseconds" => "us",
        "degree" or "degrees" or "deg" or "°" => "deg",
        "mph" => "mph",
        "volt" or "volts" or "v" => "V",
        _ => unit,
    };

    private static List<string> Parted(string name)
    {
        var words = new List<string>();
        int start = 0;
        for (int i = 1; i <= name.Length; i++)
        {
            bool ends = i == name.Length || !char.IsLetterOrDigit(name[i]) || !char.IsLetterOrDigit(name[i - 1])
                || (char.IsUpper(name[i]) && char.IsLower(name[i - 1]))
                || (char.IsDigit(name[i]) != char.IsDigit(name[i - 1]));
            if (ends)
            {
                string word = name[start..i].Trim().ToLowerInvariant();
                if (word.Any(char.IsLetterOrDigit))
                {
                    words.Add(word);
                }

                start = i;
            }
        }

        return words;
    }
}
