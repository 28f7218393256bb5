namespace LaunchSim.Scenarios.Schema;

/// <summary>Which numbers are allowed, in SI, and how a sentence says so.</summary>
internal sealed record Limits(string Words, double Least, bool LeastOpen, double Most, bool MostOpen)
{
    public static Limits Any { get; } = new("any number", double.NegativeInfinity, false, double.PositiveInfinity, false);

    public static Limits Positive { get; } = new("above 0", 0, true, double.PositiveInfinity, false);

    public static Limits NotNegative { get; } = new("0 or more", 0, false, double.PositiveInfinity, false);

    public static Limits Within(double least, double most, string words) => new(words, least, false, most, false);

    public static Limits Between(double least, double most, string words) => new(words, least, true, most, true);

    public bool Holds(double value) =>
        (LeastOpen ? value > Least : value >= Least) && (MostOpen ? value < Most : value <= Most);
}
