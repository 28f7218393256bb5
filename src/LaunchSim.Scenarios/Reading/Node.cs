using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>A piece of a file's tree with its place. Immutable, so that variants share what they do not change.</summary>
internal abstract class Node(Place place)
{
    public Place Place { get; } = place;
}

/// <summary>A text; every scalar is one, whatever YAML would make of it.</summary>
internal sealed class ScalarNode(Place place, string text, int offset) : Node(place)
{
    private QuantityText? _quantity;

    public string Text { get; } = text;

    /// <summary>The text taken apart as a quantity: once, however often the tree is bound.</summary>
    public QuantityText Quantity => _quantity ??= QuantityText.Read(Text);

    /// <summary>The place of a character of the text; the start when the text does not lie on one line as it was written.</summary>
    public Place PlaceOf(int at) => offset < 0 || Place.Line == 0 ? Place : Place with { Column = Place.Column + offset + at };
}

/// <summary>Keys and values in the order of the file, keys unique.</summary>
internal sealed class MapNode(Place place, IReadOnlyList<KeyValuePair<ScalarNode, Node>> entries, bool inBraces) : Node(place)
{
    public IReadOnlyList<KeyValuePair<ScalarNode, Node>> Entries { get; } = entries;

    /// <summary>Written as {a: b}: a comma there parts entries.</summary>
    public bool InBraces { get; } = inBraces;

    /// <summary>What binding this section gave; the tree never changes, so it holds for good.</summary>
    public BoundPart? Bound { get; set; }

    public Node? Get(string key)
    {
        foreach (KeyValuePair<ScalarNode, Node> entry in Entries)
        {
            if (entry.Key.Text == key)
            {
                return entry.Value;
            }
        }

        return null;
    }

    public MapNode With(ScalarNode key, Node value)
    {
        var entries = new List<KeyValuePair<ScalarNode, Node>>(Entries.Count + 1);
        bool put = false;
        foreach (KeyValuePair<ScalarNode, Node> entry in Entries)
        {
            bool here = entry.Key.Text == key.Text;
            put |= here;

            // What was put in whole is from now on found where that was written; a section that was only changed within stays.
            entries.Add(!here ? entry : new(value.Place == entry.Value.Place ? entry.Key : key, value));
        }

        if (!put)
        {
            entries.Add(new(key, value));
        }

        return new MapNode(Place, entries, InBraces);
    }

    public MapNode Without(string key) => new(Place, [.. Entries.Where(entry => entry.Key.Text != key)], InBraces);
}

/// <summary>A list.</summary>
internal sealed class ListNode(Place place, IReadOnlyList<Node> items) : Node(place)
{
    public IReadOnlyList<Node> Items { get; } = items;
}

/// <summary>A point of which a change has set one part or both apart.</summary>
internal sealed class PointNode(Node whole, ScalarNode? ahead, ScalarNode? up) : Node(whole.Place)
{
    public Node Whole { get; } = whole;

    public ScalarNode? Ahead { get; } = ahead;

    public ScalarNode? Up { get; } = up;
}
