using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// A value that a person can begin with before it is measured: a number, a row or a point, out of what is known of the car,
/// with an honest doubt.
/// </summary>
public sealed record TypicalValue : RegisterEntry
{
    private readonly Func<KnownReading, double[]> _value;

    internal TypicalValue(Func<KnownReading, double[]> value) => _value = value;

    /// <summary>How it is worked out, in words without the final stop.</summary>
    public required string Formula { get; init; }

    /// <summary>
    /// How far off the typical value may be; of a row, by which it is scaled as a whole, always a share. Null for what is
    /// chosen and not doubtful: the row against which another one stands.
    /// </summary>
    public required TypicalDoubt? Doubt { get; init; }

    /// <summary>Where it comes from: a source by name, or that there is none.</summary>
    public required string Source { get; init; }

    /// <summary>The value for one car; null when something is not known that it is worked out from, see <see cref="Lacks"/>.</summary>
    /// <param name="car">What is known of the car. What it holds at this path is not looked at.</param>
    public TypicalEstimate? For(KnownCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var reading = new KnownReading(car);
        double[] values = _value(reading);
        return reading.Lacking.Count > 0 ? null : new TypicalEstimate { Entry = this, Values = values, From = reading.Read };
    }

    /// <summary>Paths of the measured values that are not known and that it is worked out from; empty when <see cref="For"/> gives a value.</summary>
    /// <param name="car">What is known of the car.</param>
    public IReadOnlyList<string> Lacks(KnownCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var reading = new KnownReading(car);
        _ = _value(reading);
        return reading.Lacking;
    }

    /// <summary>The value on behalf of another one, which also wants to know what was lacking.</summary>
    internal double[] Evaluate(KnownReading reading) => _value(reading);
}

/// <summary>A typical value for one car.</summary>
public sealed record TypicalEstimate
{
    /// <summary>What it is a value of.</summary>
    public required TypicalValue Entry { get; init; }

    /// <summary>The number, the row, or the point's two numbers, in SI, not rounded.</summary>
    public required IReadOnlyList<double> Values { get; init; }

    /// <summary>Paths that it was worked out from, known or typical themselves, in the order in which they were asked for.</summary>
    public required IReadOnlyList<string> From { get; init; }

    /// <summary>The doubt: in percent for a row, else the half-width in SI, the larger one of a point's two; null for what is chosen.</summary>
    public Doubt? Doubt => Entry.Doubt is not { } doubt ? null : Entry.IsRow ? new Doubt(100 * doubt.Size, true) : new Doubt(Values.Max(doubt.At), false);

    /// <summary>As a person writes it in the file, in round numbers and with its doubt: <c>140 ±35 N/mm</c>, <c>0 60 100 lb ±30 %</c>.</summary>
    /// <param name="system">In whose units.</param>
    /// <param name="withDoubt">Whether to write the doubt as well, where there is one.</param>
    public string Text(UnitSystem system, bool withDoubt = true) => RoundText.Of(this, system, withDoubt);
}
