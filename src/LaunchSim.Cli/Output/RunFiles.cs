using LaunchSim.Charts.Launch;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Output;

/// <summary>Where the results of one scenario go.</summary>
internal sealed record RunFiles
{
    /// <summary>The trace, or none.</summary>
    public OutputFile? Csv { get; private init; }

    /// <summary>The document, or none.</summary>
    public OutputFile? Json { get; private init; }

    /// <summary>The sheet, or none.</summary>
    public OutputFile? Picture { get; private init; }

    /// <summary>The charts by name.</summary>
    public IReadOnlyDictionary<string, OutputFile> Charts { get; private init; } = new Dictionary<string, OutputFile>();

    /// <summary>Plans the files of all scenarios; nothing is made yet.</summary>
    /// <param name="inputs">The scenario files.</param>
    /// <param name="scenarios">What was read from them.</param>
    /// <param name="targets">Where they are to go.</param>
    /// <exception cref="InputException">Two would be written to one place, or one cannot be written.</exception>
    public static IReadOnlyList<RunFiles> Plan(IReadOnlyList<string> inputs, IReadOnlyList<Scenario> scenarios, RunTargets targets)
    {
        OutputKind pictures = PictureTarget.Kind(targets);
        Targets.RefuseNameless(("--csv", targets.Csv), ("--out", targets.Folder), ("--picture", targets.Picture), ("--charts", targets.Charts));
        Targets.RefuseFile("--out", targets.Folder);
        Targets.RefuseFile("--charts", targets.Charts);
        bool csvIsFolder = targets.Csv is { } csv && Targets.IsFolder("--csv", csv, [OutputKind.Trace], inputs.Count);
        bool pictureIsFolder = targets.Picture is { } picture && Targets.IsFolder("--picture", picture, PictureTarget.Kinds, inputs.Count);
        string? traces = csvIsFolder ? targets.Csv : targets.Csv is null ? targets.Folder : null, sheets = pictureIsFolder ? targets.Picture : null;
        var all = new List<RunFiles>();
        for (int i = 0; i < inputs.Count; i++)
        {
            string name = Path.GetFileNameWithoutExtension(inputs[i]);
            all.Add(new RunFiles
            {
                Csv = InFolder(traces, name, OutputKind.Trace) ?? InPlace(targets.Csv, OutputKind.Trace),
                Json = InFolder(targets.Folder, name, OutputKind.Json),
                Picture = InFolder(sheets, name, pictures) ?? (targets.Picture is { } file ? InPlace(file, PictureTarget.KindOf(file, targets.Format)) : null),
                Charts = targets.Charts is { } folder && scenarios[i].Car is { } car
                    ? LaunchCharts.Names(car).ToDictionary(chart => chart, chart => InFolder(folder, $"{name}-{chart}", pictures)!)
                    : [],
            });
        }

        RefuseClashes(inputs, all);
        return all;

        OutputFile? InFolder(string? folder, string name, OutputKind kind) =>
            folder is null ? null : OutputFile.Plan(Path.Combine(folder, name + kind.Extension), kind, inputs, makesFolder: true);

        OutputFile? InPlace(string? file, OutputKind kind) => file is null ? null : OutputFile.Plan(file, kind, inputs);
    }

    private IEnumerable<OutputFile> Files => new[] { Csv, Json, Picture }.OfType<OutputFile>().Concat(Charts.Values);

    private static void RefuseClashes(IReadOnlyList<string> inputs, List<RunFiles> all)
    {
        var taken = new Dictionary<string, string>(OutputFile.Comparer);
        for (int i = 0; i < all.Count; i++)
        {
            foreach (OutputFile file in all[i].Files)
            {
                if (!taken.TryAdd(file.Target, inputs[i]))
                {
                    string first = taken[file.Target];
                    throw new InputException(first == inputs[i]
                        ? $"{first}: two of its results would both be written to `{file.Shown}`; name another place for one"
                        : $"{first} and {inputs[i]} would both be written to `{file.Shown}`; run them apart, or rename one");
                }
            }
        }
    }
}
