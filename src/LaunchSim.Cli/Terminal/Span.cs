using LaunchSim.Scenarios.Units;

namespace LaunchSim.Cli.Terminal;

/// <summary>From one value to another, both included.</summary>
/// <param name="Low">The lower one, SI.</param>
/// <param name="High">The upper one, SI.</param>
internal sealed record Span(double Low, double High)
{
    /// <summary>Whether a value is in it.</summary>
    /// <param name="value">The value, SI.</param>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>A span of percent, as in <c>150 to 175</c>; none when nothing was given.</summary>
    /// <param name="text">What was written.</param>
    public static Span? Percent(string? text) => Read(text, "--percent", QuantityKind.Number, "150 to 175", (quantity, i) => quantity.Numbers[i]);

    /// <summary>A span of lengths, as in <c>30 to 50 in</c>; none when nothing was given.</summary>
    /// <param name="text">What was written.</param>
    public static Span? Length(string? text) => Read(text, "--length", QuantityKind.Length, "30 to 50 in", (quantity, i) => quantity.Si(i));

    private static Span? Read(string? text, string option, QuantityKind kind, string example, Func<Quantity, int, double> value)
    {
        if (text is null)
        {
            return null;
        }

        string[] ends = text.Split(" to ");
        if (ends.Length != 2)
        {
            throw new InputException($"{option}: found `{text}`; allowed: two numbers with the word `to` between, as in \"{example}\"");
        }

        if (!Quantity.TryParse(string.Join(' ', ends), kind, out Quantity? quantity, out string problem))
        {
            throw new InputException($"{option}: {problem}; as in \"{example}\"");
        }

        if (quantity!.Count != 2 || value(quantity, 0) > value(quantity, 1))
        {
            throw new InputException($"{option}: found `{text}`; allowed: the smaller number first, as in \"{example}\"");
        }

        return new Span(value(quantity, 0), value(quantity, 1));
    }
}
