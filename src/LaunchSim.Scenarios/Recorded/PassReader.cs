using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Reads pass files. Whatever a file holds comes back as a pass or as errors; it throws for no content.</summary>
/// <param name="scenarios">How the car's file is read: for a run.</param>
public sealed class PassReader(ScenarioReader scenarios)
{
    /// <summary>Reads a pass file, and the car that it names.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    public PassResult Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        string full;
        try
        {
            full = Path.GetFullPath(path);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or PathTooLongException)
        {
            findings.Error(new Place(path, 1, 1), "", "a name that no file can have", "the name of a pass file");
            return Nothing(findings);
        }

        return ScenarioText.Read(full, path, new Place(path, 1, 1), findings) is { } text ? OfText(text, path, findings) : Nothing(findings);
    }

    /// <summary>Whether a file is meant as a pass: it names its car, where a scenario describes it.</summary>
    /// <param name="path">The file; one that cannot be read is none.</param>
    public static bool IsPass(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        return File.Exists(path) && ScenarioText.Read(Path.GetFullPath(path), path, new Place(path, 1, 1), findings) is { } text
            && NodeReader.Read(text, path, findings) is MapNode root && root.Get("car") is not (null or MapNode);
    }

    /// <summary>Reads the text of a pass file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The file that it is or is to be: what errors call it, and from whose folder names are looked up.</param>
    public PassResult ReadText(string text, string path)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        text = text.StartsWith('\ufeff') ? text[1..] : text;
        return ScenarioText.Accept(text, path, findings) ? OfText(text, path, findings) : Nothing(findings);
    }

    private static PassResult Nothing(Findings findings) => new(null, findings.Errors(), findings.Warnings());

    private PassResult OfText(string text, string path, Findings findings)
    {
        switch (NodeReader.Read(text, path, findings))
        {
            case null:
                return Nothing(findings);
            case MapNode root when root.Get("car") is MapNode or null && (root.Get("rear") ?? root.Get("base")) is not null:
                findings.Error(root.Place, "", "a scenario where a pass is due", "a pass file: car, changed, seen, …", "name the pass; in it, car: names this file");
                return Nothing(findings);
            case MapNode root:
                return OfRoot(root, path, findings);
            case { } other:
                findings.Error(other.Place, "", $"{Binder.Describe(other)} where a pass is due", "`key: value` lines: car, when, changed, seen", "begin with car: FILE.yaml");
                return Nothing(findings);
        }
    }

    private PassResult OfRoot(MapNode root, string path, Findings findings)
    {
        BoundValues values = Binder.Bind(PassKeys.Pass, root, findings);
        IReadOnlyList<(string Path, string Value)> changed = Changed(root, findings);
        SeenFacts seen = SeenReading.Of(values, findings);
        PassRules.Check(values, seen, root, findings);
        string folder = Path.GetDirectoryName(path) ?? "";
        IReadOnlyList<PassLog> logs = Logs(values, folder, findings);
        string digest = PassSeal.Of(root);
        bool? whole = values.Find("seal")?.Text.Trim() is { } seal ? seal == digest : null;
        if (whole == false && !findings.HasErrors)
        {
            findings.Warning(values.Find("seal")!.Place, "seal", "values that are no longer those that were closed or corrected", "changes of a closed pass by corrections", "put back what was changed by hand, and use launchsim season correct");
        }

        if (values.Find("car") is not { } named)
        {
            return Nothing(findings);
        }

        string carFile = FileNames.Seen(folder, named.Text.Trim());
        ReadResult car = scenarios.Read(carFile);
        if (car.Scenario is null && !File.Exists(carFile))
        {
            findings.Error(named.Place, "car", $"no file {Shown.Quoted(carFile)}", "the car's file, seen from this file's folder", "look at the name and the folder");
            return Nothing(findings);
        }

        if (car.Scenario is not { } asItIs)
        {
            return new PassResult(null, [.. findings.Errors(), .. car.Errors], [.. findings.Warnings(), .. car.Warnings]);
        }

        ReadResult ran = Ran(root, carFile);
        if (values.Find("car_hash") is { } hash && !findings.Has("car_hash") && !asItIs.ContentHash.StartsWith(hash.Text.Trim(), StringComparison.OrdinalIgnoreCase))
        {
            string now = asItIs.ContentHash[..Math.Max(8, Math.Min(asItIs.ContentHash.Length, hash.Text.Trim().Length))];
            findings.Warning(hash.Place, "car_hash", $"{Shown.Quoted(hash.Text)}, and the car's file is now {Shown.Quoted(now)}: it was changed since this pass", "the car's file as it was at the pass", $"write what was different then under changed; if the file only was put right, write car_hash: {now}");
        }

        SeenFacts whoSaw = SeenReading.WithMarks(seen, values, ran.Scenario, findings);
        IReadOnlyList<Diagnostic> errors = [.. findings.Errors(), .. ran.Errors];
        IReadOnlyList<Diagnostic> warnings = [.. findings.Warnings(), .. ran.Warnings];
        return errors.Count > 0 || ran.Scenario is not { } scenario ? new PassResult(null, errors, warnings) : new PassResult(
            new PassFile
            {
                Name = Text("name") is { Length: > 0 } name ? string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) : Path.GetFileNameWithoutExtension(path),
                Notes = Text("notes"),
                When = Text("when") is { Length: > 0 } when ? when : null,
                Track = Text("track"),
                Weather = Text("weather"),
                SourceFile = path,
                CarFile = carFile,
                CarWritten = named.Text.Trim(),
                CarHash = values.Find("car_hash")?.Text.Trim(),
                Changed = changed,
                Logs = logs,
                Seen = whoSaw,
                Closed = values.Find("closed")?.Text,
                IsSealWhole = whole,
                Digest = digest,
                Corrections = Corrections(values),
                Scenario = scenario,
                CarScenario = asItIs,
            },
            errors,
            warnings);

        string Text(string key) => values.Find(key)?.Text.Trim() ?? "";
    }

    /// <summary>The car with the changed values put in where they stand in the pass file, so that what is wrong with them is told there.</summary>
    private ReadResult Ran(MapNode root, string carFile)
    {
        var findings = new Findings();
        MapNode? tree = new ScenarioLoader(findings, scenarios.Boundary).LoadFile(carFile);
        if (tree is null)
        {
            return new ReadResult { Scenario = null, Errors = findings.Errors(), Warnings = findings.Warnings() };
        }

        if (root.Get("changed") is MapNode changes)
        {
            foreach (KeyValuePair<ScalarNode, Node> entry in changes.Entries.Where(entry => !IsNothing(entry.Value)))
            {
                tree = TreeEdit.Set(tree, entry.Key.Text, entry.Key.Place, entry.Value, findings);
            }
        }

        return scenarios.Finish(tree, carFile, findings, null);
    }

    private static IReadOnlyList<(string Path, string Value)> Changed(MapNode root, Findings findings)
    {
        switch (root.Get("changed"))
        {
            case null or ScalarNode { Text: "" }:
                return [];
            case MapNode map:
                foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries.Where(entry => IsNothing(entry.Value)))
                {
                    findings.Error(entry.Key.Place, entry.Key.Text, "nothing after the colon", "the value at the pass", map.InBraces ? "part numbers by spaces, and put a space after each colon" : "write the value after the path, or take the line away");
                }

                return [.. map.Entries.Where(entry => !IsNothing(entry.Value)).Select(entry => (entry.Key.Text, NodeText.Of(entry.Value)))];
            case { } node:
                findings.Error(node.Place, "changed", $"{Binder.Describe(node)} where settings are due", "`path: value` lines", "as in rear.tire.pressure.set: 15 psi");
                return [];
        }
    }

    private static List<PassLog> Logs(BoundValues values, string folder, Findings findings)
    {
        var logs = new List<PassLog>();
        for (int i = 0; i < values.CountOf("logs"); i++)
        {
            if (values.Find($"logs[{i}].file") is not { } file)
            {
                continue;
            }

            Bound? mapping = values.Find($"logs[{i}].mapping");
            logs.Add(new PassLog(FileNames.Seen(folder, file.Text.Trim()), mapping is null ? null : FileNames.Seen(folder, mapping.Text.Trim()), file.Text.Trim(), string.Create(CultureInfo.InvariantCulture, $"{file.Place.Origin}:{file.Place.Line}:{file.Place.Column}")));
            foreach (Bound named in new[] { file, mapping }.OfType<Bound>().Where(named => !File.Exists(FileNames.Seen(folder, named.Text.Trim()))))
            {
                findings.Warning(named.Place, named.Path, $"no file {Shown.Quoted(named.Text)}", "a file beside the pass file", "what needs the log cannot be done without it");
            }
        }

        return logs;
    }

    private static IReadOnlyList<PassCorrection> Corrections(BoundValues values) =>
    [
        .. Enumerable.Range(0, values.CountOf("corrections")).Select(i => new PassCorrection(
            Of(values, i, "when") ?? "", Of(values, i, "path") ?? "", Of(values, i, "was"), Of(values, i, "is"), Of(values, i, "why") ?? "")),
    ];

    private static string? Of(BoundValues values, int index, string key) => values.Find($"corrections[{index}].{key}")?.Text.Trim();

    private static bool IsNothing(Node node) => node is ScalarNode { Text: "" };
}
