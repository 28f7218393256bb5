using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>All values of a scenario by path, and which sections and forms it has.</summary>
internal sealed class BoundValues
{
    private readonly Dictionary<string, Bound> _values = new(160, StringComparer.Ordinal);
    private readonly Dictionary<string, Place> _sections = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _lists = new(StringComparer.Ordinal);
    private readonly List<string> _missing = [];

    public IReadOnlyDictionary<string, Bound> All => _values;

    /// <summary>Paths that a run needs and that are not there.</summary>
    public IReadOnlyList<string> MissingForRun => _missing;

    public IReadOnlyList<Choice> Choices { get; set; } = [];

    public void Add(Bound bound) => _values[bound.Path] = bound;

    public void AddSection(string path, Place place) => _sections[path] = place;

    public void AddList(string path, int count) => _lists[path] = count;

    public void AddMissing(IEnumerable<string> paths) => _missing.AddRange(paths);

    public bool HasSection(string path) => _sections.ContainsKey(path);

    public int CountOf(string list) => _lists.GetValueOrDefault(list);

    /// <summary>The value at a path, or null when it is not there or was refused.</summary>
    public Bound? Find(string path) => _values.GetValueOrDefault(path);

    /// <summary>The place of a value, or of the nearest section above it that has one.</summary>
    public Place PlaceOf(string path, Place otherwise)
    {
        while (true)
        {
            if (_values.TryGetValue(path, out Bound? bound))
            {
                return bound.Place;
            }

            if (_sections.TryGetValue(path, out Place place))
            {
                return place;
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

    public double Number(string path) => _values[path].Quantity!.Si();

    public double Number(string path, double otherwise) => FindNumber(path) ?? otherwise;

    public double[] Row(string path) => _values[path].Quantity!.AllSi();

    public Point Point(string path) => _values[path].Point();

    public string Word(string path) => _values[path].Text;

    public Table Table(string x, string y) => new(Row(x), Row(y));
}
