using LaunchSim.Scenarios.Schema;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>All values of a scenario by path, and which sections and lists it has.</summary>
internal sealed class BoundValues
{
    private readonly Dictionary<string, int> _places;
    private readonly List<Bound> _order;
    private readonly List<KeyValuePair<string, Place>> _sections;
    private readonly List<KeyValuePair<string, int>> _lists;
    private readonly List<string> _missing;

    public BoundValues()
    {
        _places = new(192, StringComparer.Ordinal);
        _order = new(128);
        _sections = new(32);
        _lists = [];
        _missing = [];
    }

    private BoundValues(BoundValues other)
    {
        _places = other._places;
        _order = [.. other._order];
        _sections = other._sections;
        _lists = other._lists;
        _missing = other._missing;
        Choices = other.Choices;
    }

    /// <summary>The values in the order of the schema.</summary>
    public IReadOnlyList<Bound> All => _order;

    /// <summary>Paths that a run needs and that are not there.</summary>
    public IReadOnlyList<string> MissingForRun => _missing;

    public IReadOnlyList<Choice> Choices { get; set; } = [];

    public void Add(Bound bound)
    {
        _places[bound.Path] = _order.Count;
        _order.Add(bound);
    }

    /// <summary>The same values, to have some of them replaced; nothing can be added to either of the two any more.</summary>
    public BoundValues Copy() => new(this);

    /// <summary>Puts a value in the place of the one at its path.</summary>
    public void Replace(Bound bound) => _order[_places[bound.Path]] = bound;

    public void AddSection(string path, Place place) => _sections.Add(new(path, place));

    public void AddList(string path, int count) => _lists.Add(new(path, count));

    public void AddMissing(IEnumerable<string> paths) => _missing.AddRange(paths);

    public BoundMark Mark() => new(_order.Count, _sections.Count, _lists.Count, _missing.Count);

    /// <summary>What was bound since a mark.</summary>
    public BoundPart Since(BoundMark mark, Section section, string path, ReadPurpose purpose) => new(
        section, path, purpose, [.. _order[mark.Values..]], [.. _sections[mark.Sections..]], [.. _lists[mark.Lists..]], [.. _missing[mark.Missing..]]);

    /// <summary>Adds what was bound another time.</summary>
    public void Replay(BoundPart part)
    {
        foreach (Bound bound in part.Values)
        {
            Add(bound);
        }

        _sections.AddRange(part.Sections);
        _lists.AddRange(part.Lists);
        _missing.AddRange(part.Missing);
    }

    public bool HasSection(string path) => _sections.Exists(section => section.Key == path);

    public int CountOf(string list) => _lists.Find(entry => entry.Key == list).Value;

    /// <summary>The value at a path, or null when it is not there or was refused.</summary>
    public Bound? Find(string path) => _places.TryGetValue(path, out int place) ? _order[place] : null;

    /// <summary>The place of a value, or of the nearest section above it that has one.</summary>
    public Place PlaceOf(string path, Place otherwise)
    {
        while (true)
        {
            if (Find(path) is { } bound)
            {
                return bound.Place;
            }

            int section = _sections.FindIndex(entry => entry.Key == path);
            if (section >= 0)
            {
                return _sections[section].Value;
            }

            int dot = path.LastIndexOf('.');
            if (dot < 0)
            {
                return otherwise;
            }

            path = path[..dot];
        }
    }

    public double? FindNumber(string path) => Find(path)?.Quantity?.Si();

    public double Number(string path) => _order[_places[path]].Quantity!.Si();

    public double Number(string path, double otherwise) => FindNumber(path) ?? otherwise;

    public double[] Row(string path) => _order[_places[path]].Quantity!.AllSi();

    public Point Point(string path) => _order[_places[path]].Point();

    public string Word(string path) => _order[_places[path]].Text;

    public Table Table(string x, string y) => new(Row(x), Row(y));
}
