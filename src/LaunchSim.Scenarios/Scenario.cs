using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios;

/// <summary>
/// One set-up and one launch, as read: the car in SI, and what was written by path. Immutable and safe to use from
/// several threads; variations share the parsed file.
/// </summary>
public sealed class Scenario
{
    private readonly Lazy<MapNode> _root;
    private readonly BoundValues _values;
    private readonly ScenarioReader _reader;
    private readonly Lazy<string> _hash;
    private readonly Lazy<Dictionary<string, Doubt>> _doubts;
    private readonly Lazy<Dictionary<string, Bracket>> _brackets;
    private readonly Lazy<Dictionary<string, ClickInfo>> _clicks;
    private readonly Lazy<UnitSystem> _units;
    private readonly Lazy<SideViewEntries> _sideView;
    private readonly Lazy<EnteredAims?> _aims;

    internal Scenario(Lazy<MapNode> root, BoundValues values, string sourceFile, ScenarioReader reader)
    {
        (_root, _values, SourceFile, _reader) = (root, values, sourceFile, reader);
        var builder = new CarBuilder(values);
        Geometry = builder.Geometry();
        Run = builder.Run();
        Car = values.MissingForRun.All(path => path == "name") ? builder.Car() : null;
        Name = values.Find("name")?.Text is { } name && OnOneLine(name) is { Length: > 0 } plain ? plain : Path.GetFileNameWithoutExtension(sourceFile);
        Notes = values.Find("notes")?.Text.Trim() ?? "";
        _hash = new(() => ContentDigest.Of(Car is null ? Geometry : Car, Run));
        _doubts = new(() => ScenarioParts.Doubts(_values));
        _brackets = new(() => ScenarioParts.Brackets(_values));
        _clicks = new(() => ScenarioParts.Clicks(_values));
        _units = new(() => ScenarioParts.UnitSystem(_values));
        _sideView = new(() => SideViewReading.Of(_values));
        _aims = new(() => AimReading.Of(_values));
    }

    /// <summary>What the set-up is called, on one line; the file's name when it has none.</summary>
    public string Name { get; }

    /// <summary>The notes; empty when there are none.</summary>
    public string Notes { get; }

    /// <summary>The file as it was named when it was read.</summary>
    public string SourceFile { get; }

    /// <summary>Whose units most of the values are written in.</summary>
    public UnitSystem UnitSystem => _units.Value;

    /// <summary>The car in SI; null while something that a run needs is missing.</summary>
    public Car? Car { get; }

    /// <summary>What the side view needs, as measured.</summary>
    public GeometryPart Geometry { get; }

    /// <summary>The points and figures of the side view, as entered.</summary>
    public SideViewEntries SideView => _sideView.Value;

    /// <summary>How long to run and how finely.</summary>
    public RunSettings Run { get; }

    /// <summary>Paths that a run needs and that are not there; empty for a whole scenario.</summary>
    public IReadOnlyList<string> MissingForRun => _values.MissingForRun;

    /// <summary>What can be changed at the track, in the order of the file.</summary>
    public IReadOnlyList<Choice> Choices => _values.Choices;

    /// <summary>What is wanted of the launch, as entered; null when the file says nothing of it.</summary>
    public EnteredAims? Aims => _aims.Value;

    /// <summary>
    /// Doubts by path; points have them at <c>.ahead</c> and <c>.up</c>, holes at <c>.holes.NAME.ahead</c>, rows of clicks
    /// at <c>.clicks.N</c>. Each path can be varied with <see cref="With(IEnumerable{ValueTuple{string, string}})"/>.
    /// </summary>
    public IReadOnlyDictionary<string, Doubt> Doubts => _doubts.Value;

    /// <summary>Brackets with holes by path, such as <c>rear.linkage.upper.body</c>.</summary>
    public IReadOnlyDictionary<string, Bracket> Brackets => _brackets.Value;

    /// <summary>Adjusters by the path of their direction, such as <c>rear.damper.extension</c>.</summary>
    public IReadOnlyDictionary<string, ClickInfo> Clicks => _clicks.Value;

    /// <summary>
    /// SHA-256 in hexadecimal of what a run sees, in SI: the same for the same values, however they were layered, ordered,
    /// commented or named. Doubts, choices and holes that are not in use do not enter.
    /// </summary>
    public string ContentHash => _hash.Value;

    /// <summary>The values as they were written, with those of its bases and what is set beside the file, in the order of the reference; without name, notes and choices.</summary>
    public IReadOnlyList<WrittenValue> Written => WrittenValues.Of(_values);

    /// <summary>The values as they were bound.</summary>
    internal BoundValues Values => _values;

    /// <summary>The scenario with some values changed, read and checked like a file, without parsing it again.</summary>
    /// <param name="changes">Paths and values in the notation of the file; later ones win.</param>
    /// <returns>The changed scenario, or errors whose file is <c>--set path=value</c>. Choices are taken over as they are.</returns>
    public ReadResult With(IEnumerable<(string Path, string Value)> changes)
    {
        var findings = new Findings();
        MapNode root = Overrides.Apply(_root.Value, changes, findings);
        return _reader.Finish(root, SourceFile, findings, Choices);
    }

    /// <summary>
    /// The scenario with some values put in their places, checked like a file: some times as quick as reading them. A number that
    /// is put in the place of one with a doubt keeps that doubt.
    /// </summary>
    /// <param name="edits">The values; later ones win.</param>
    /// <param name="putsTogether">Whether the car is also put together and stood, as the scenario's reader does; otherwise that is left to the caller, who does so anyway.</param>
    /// <returns>The changed scenario, or errors whose file is <c>--set path=value</c>. Choices are taken over as they are.</returns>
    public ReadResult With(IReadOnlyList<ScenarioEdit> edits, bool putsTogether = true)
    {
        ArgumentNullException.ThrowIfNull(edits);
        BoundValues values = _values.Copy();
        foreach (ScenarioEdit edit in edits)
        {
            if (!BoundEdit.TryPut(values, edit))
            {
                return With(edits.Select(one => (one.Path, Doubted(one))));
            }
        }

        MapNode Root() => Overrides.Apply(_root.Value, edits.Select(edit => (edit.Path, edit.Value)), new Findings());
        ReadResult read = _reader.FinishEdited(new Lazy<MapNode>(Root), values, SourceFile, putsTogether);

        // The places of what was put in are told by reading it: only who is refused pays for that.
        return read.Errors.Count > 0 ? With(edits.Select(edit => (edit.Path, edit.Value))) : read;
    }

    // What goes through the tree keeps the doubt of what stood there, too.
    private string Doubted(ScenarioEdit edit) =>
        edit.Quantity is { } quantity && ScenarioParts.Quantity(_values, edit.Target) is { } before && before.Count == quantity.Count ? quantity.DoubtedLike(before).ToString() : edit.Value;

    /// <summary>The value at a path as it was written: a number, a row, or a point with its two numbers.</summary>
    /// <param name="path">Such as <c>rear.spring.rate</c>, <c>rear.linkage.upper.body.up</c> or <c>rear.damper.extension.clicks.6</c>; of a bracket the hole in use.</param>
    /// <returns>The quantity; null when the path is not known, names something else, or was left out.</returns>
    public Quantity? Find(string path) =>
        ScenarioPath.Resolve(path, out _) is { } resolved ? ScenarioParts.Quantity(_values, resolved) : null;

    /// <summary>The word or text at a path, such as the hole at <c>rear.linkage.upper.body.use</c>.</summary>
    /// <param name="path">The path of a word, a text or a bracket's <c>use</c>.</param>
    /// <returns>The text; null when the path is not known, names something else, or was left out.</returns>
    public string? FindText(string path)
    {
        if (ScenarioPath.Resolve(path, out _) is not { } resolved)
        {
            return null;
        }

        if (resolved.Tail == PathTail.Use)
        {
            return _values.Find(resolved.Text[..^4]) is { Holes: not null } bracket ? bracket.Use : null;
        }

        return resolved.Key.Kind is WordKind or TextKind ? _values.Find(resolved.Text)?.Text : null;
    }

    /// <summary>Where the value at a path was written, as <c>file:line:column</c>; where the section above it was when it was left out.</summary>
    /// <param name="path">Any path.</param>
    public string PlaceOf(string path)
    {
        Place place = _values.PlaceOf(path, _root.Value.Place);
        return place.Line > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{place.Origin}:{place.Line}:{place.Column}") : place.Origin;
    }

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
