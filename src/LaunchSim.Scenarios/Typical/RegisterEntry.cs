using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>What the register knows of one value of the scenario: how well it is usually known, what is usual, how to get it at home.</summary>
public abstract record RegisterEntry
{
    private SchemaKey? _key;

    /// <summary>The path in the scenario, such as <c>rear.tire.vertical_rate</c>.</summary>
    public required string Path { get; init; }

    /// <summary>The doubt of a number that was entered without one, when it was got in the usual way; null for what is chosen or counted and not measured.</summary>
    public required TypicalDoubt? EnteredDoubt { get; init; }

    /// <summary>How to get it at home; null where there is no such way.</summary>
    public HomeTest? HomeTest { get; init; }

    /// <summary>What it is, in one sentence without the final stop.</summary>
    public string What => Key.What;

    /// <summary>What kind of quantity it is.</summary>
    public QuantityKind Kind => Key.Kind switch
    {
        NumberKind number => number.Quantity,
        RowKind row => row.Quantity,
        _ => QuantityKind.Length,
    };

    /// <summary>Whether it is a point, ahead and up.</summary>
    public bool IsPoint => Key.Kind is PointKind;

    /// <summary>Whether it is a row of a table.</summary>
    public bool IsRow => Key.Kind is RowKind;

    internal UsualRange? Usual { get; init; }

    /// <summary>The range of a point's second number.</summary>
    internal UsualRange? UsualUp { get; init; }

    internal SchemaKey Key => _key ??= ScenarioPath.Known[Path];

    /// <summary>What is usual for one car: one span for a number or a row, two for a point, none where nothing is known.</summary>
    /// <param name="car">What is known of the car.</param>
    public IReadOnlyList<UsualSpan> UsualFor(KnownCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return [.. Ranges().Select(pair => pair.Range.For(new KnownReading(car), pair.Part)).OfType<UsualSpan>()];
    }

    /// <summary>The ranges, each with the part of the value that it is about.</summary>
    internal IEnumerable<(UsualRange Range, string Part)> Ranges()
    {
        if (Usual is not null)
        {
            yield return (Usual, IsPoint ? ".ahead" : "");
        }

        if (UsualUp is not null)
        {
            yield return (UsualUp, ".up");
        }
    }
}
