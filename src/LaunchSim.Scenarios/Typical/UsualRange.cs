namespace LaunchSim.Scenarios.Typical;

/// <summary>What is called usual for a value: from where to where, and for what.</summary>
internal sealed record UsualRange
{
    /// <summary>The lower end in SI.</summary>
    public required Func<KnownReading, double> Low { get; init; }

    /// <summary>The upper end in SI.</summary>
    public required Func<KnownReading, double> High { get; init; }

    /// <summary>What it is usual for, as in <c>for a tyre of this size</c>.</summary>
    public required string ForWhat { get; init; }

    /// <summary>The number that is judged, out of the entered ones in SI: the first unless said otherwise.</summary>
    public Func<KnownReading, double[], double> Judged { get; init; } = (_, values) => values[0];

    /// <summary>What is judged of a row, as in <c>at 5 in/s</c>; empty for a single number.</summary>
    public string Where { get; init; } = "";

    /// <summary>The range for one car; null when something is not known that it goes with.</summary>
    public UsualSpan? For(KnownReading known, string part)
    {
        double low = Low(known), high = High(known);
        return double.IsFinite(low) && double.IsFinite(high) ? new UsualSpan(part, Math.Min(low, high), Math.Max(low, high), ForWhat, Where) : null;
    }

    /// <summary>A plain range.</summary>
    public static UsualRange Plain(double low, double high, string forWhat) => new() { Low = _ => low, High = _ => high, ForWhat = forWhat };

    /// <summary>A range that goes with a number.</summary>
    public static UsualRange Of(Func<KnownReading, double> centre, double low, double high, string forWhat) =>
        new() { Low = known => low * centre(known), High = known => high * centre(known), ForWhat = forWhat };
}
