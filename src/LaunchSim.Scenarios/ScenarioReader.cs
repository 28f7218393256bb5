using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Reading.Rules;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios;

/// <summary>Reads scenario files. Whatever a file holds comes back as a scenario or as errors; it throws for no content.</summary>
public sealed class ScenarioReader
{
    /// <summary>What the scenario is read for; a run unless set otherwise.</summary>
    public ReadPurpose Purpose { get; init; } = ReadPurpose.Run;

    /// <summary>
    /// Looks at a whole car for what only shows once it is put together (a linkage that does not close or locks within its
    /// travel, a car that cannot stand). Called when the file itself has no error; its findings get the place of their path.
    /// </summary>
    public Func<Car, IReadOnlyList<CarFinding>>? CarCheck { get; init; }

    /// <summary>The same for a file that describes the side view only.</summary>
    public Func<GeometryPart, IReadOnlyList<CarFinding>>? GeometryCheck { get; init; }

    /// <summary>
    /// Whether to warn of entered numbers outside what is usual, see <see cref="UsualCheck"/>: also in a file with errors,
    /// which an unusual number may well be the cause of. Variations of a scenario are not looked at again.
    /// </summary>
    public bool WarnsOfUnusual { get; init; }

    /// <summary>
    /// The folder in which the file and all its bases have to lie, links followed, and from which the file's name is seen; null
    /// when they may lie anywhere, names then being seen from the current folder.
    /// </summary>
    public FolderBoundary? Boundary { get; init; }

    /// <summary>Reads a file with its bases.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    /// <param name="overrides">Values that take the place of the file's, by path, in its notation; later ones win.</param>
    public ReadResult Read(string path, IReadOnlyList<(string Path, string Value)>? overrides = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        var loader = new ScenarioLoader(findings, Boundary);
        return Complete(loader.LoadFile(path), path, overrides, findings) with { Files = loader.Files };
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The scenario.</param>
    /// <param name="displayName">What errors are to call it.</param>
    /// <param name="overrides">Values that take the place of the text's, by path.</param>
    /// <param name="folder">Folder from which a <c>base</c> is looked up; without one a base is an error.</param>
    public ReadResult ReadText(string text, string displayName, IReadOnlyList<(string Path, string Value)>? overrides = null, string? folder = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(displayName);
        var findings = new Findings();
        var loader = new ScenarioLoader(findings, Boundary);
        return Complete(loader.LoadText(text, displayName, folder), displayName, overrides, findings) with { Files = loader.Files };
    }

    internal ReadResult Finish(MapNode root, string shown, Findings findings, IReadOnlyList<Choice>? known)
    {
        root = TrackTable.Lift(root);
        BoundValues values = Binder.Bind(root, Purpose, findings);
        Rule.CheckAll(values, findings);
        values.Choices = known ?? new ChoiceReader(root, Purpose, values, findings).Read();
        return Finish(new Lazy<MapNode>(root), values, shown, findings, isFile: known is null, putsTogether: true);
    }

    /// <summary>Values that were replaced → a scenario: what holds between them is looked at again.</summary>
    internal ReadResult FinishEdited(Lazy<MapNode> root, BoundValues values, string shown, bool putsTogether)
    {
        var findings = new Findings();
        Rule.CheckAll(values, findings);
        return Finish(root, values, shown, findings, isFile: false, putsTogether);
    }

    private ReadResult Finish(Lazy<MapNode> root, BoundValues values, string shown, Findings findings, bool isFile, bool putsTogether)
    {
        Scenario? scenario = null;
        if (!findings.HasErrors)
        {
            scenario = new Scenario(root, values, shown, this);
            if (putsTogether)
            {
                Report(scenario.Car is { } car ? CarCheck?.Invoke(car) ?? [] : GeometryCheck?.Invoke(scenario.Geometry) ?? []);
            }
        }

        if (WarnsOfUnusual && isFile)
        {
            // What was found at the number itself says enough.
            Report(UsualCheck.Of(values).Where(finding => !findings.Has(finding.Path)));
        }

        return new ReadResult { Scenario = findings.HasErrors ? null : scenario, Errors = findings.Errors(), Warnings = findings.Warnings(), Values = values };

        void Report(IEnumerable<CarFinding> more)
        {
            foreach (CarFinding finding in more)
            {
                Place place = values.PlaceOf(finding.Path, root.Value.Place);
                if (finding.Severity == Severity.Error)
                {
                    findings.Error(place, finding.Path, finding.Found, finding.Allowed, finding.Mend);
                }
                else
                {
                    findings.Warning(place, finding.Path, finding.Found, finding.Allowed, finding.Mend);
                }
            }
        }
    }

    private ReadResult Complete(MapNode? root, string shown, IReadOnlyList<(string Path, string Value)>? overrides, Findings findings)
    {
        if (root is null)
        {
            return new ReadResult { Scenario = null, Errors = findings.Errors(), Warnings = findings.Warnings() };
        }

        root = Overrides.Apply(root, overrides ?? [], findings);
        return Finish(root, shown, findings, null);
    }
}
