using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>A value in its place in the scenario: number, row, point, word or text, checked by itself.</summary>
internal sealed class Bound(string path, SchemaKey key, Node node)
{
    public string Path { get; } = path;

    public SchemaKey Key { get; } = key;

    public Node Node { get; } = node;

    public Place Place => Node.Place;

    /// <summary>The number or row, or the point with both its parts.</summary>
    public Quantity? Quantity { get; init; }

    /// <summary>The second part of a point whose parts were set apart in different units; null otherwise.</summary>
    public Quantity? Up { get; init; }

    public string Text { get; init; } = "";

    /// <summary>When something was seen, for a moment.</summary>
    public MomentText? Moment { get; init; }

    /// <summary>Holes by name in the order of the file, for a bracket.</summary>
    public IReadOnlyList<KeyValuePair<string, Bound>>? Holes { get; init; }

    /// <summary>The hole in use, for a bracket.</summary>
    public string Use { get; init; } = "";

    /// <summary>Force rows by click, rising, for clicks.</summary>
    public IReadOnlyList<KeyValuePair<double, Bound>>? Clicks { get; init; }

    /// <summary>The point; for a bracket the one of the hole in use.</summary>
    public Point Point()
    {
        if (Holes is not null)
        {
            foreach (KeyValuePair<string, Bound> hole in Holes)
            {
                if (hole.Key == Use)
                {
                    return hole.Value.Point();
                }
            }
        }

        return Up is null ? new Point(Quantity!.Si(0), Quantity.Si(1)) : new Point(Quantity!.Si(0), Up.Si(0));
    }
}
