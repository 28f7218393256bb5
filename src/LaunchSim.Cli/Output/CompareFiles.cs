using LaunchSim.Charts;
using LaunchSim.Charts.Overlay;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Comparing;

namespace LaunchSim.Cli.Output;

/// <summary>Where the table and the pictures of a comparison go.</summary>
internal sealed class CompareFiles
{
    private static readonly string Program = $"{ProgramVersion.Name} {ProgramVersion.Text}";
    private OutputFile? _table, _sheet;
    private Dictionary<string, OutputFile> _charts = [];

    private CompareFiles()
    {
    }

    /// <summary>Plans the files; nothing is made yet.</summary>
    /// <param name="inputs">The scenario files; charts get the name of the first.</param>
    /// <param name="targets">Where they are to go.</param>
    /// <exception cref="InputException">One cannot be written, or more set-ups are asked for than a picture can tell apart.</exception>
    public static CompareFiles Plan(IReadOnlyList<string> inputs, RunTargets targets)
    {
        OutputKind kind = PictureTarget.Kind(targets);
        Targets.RefuseNameless(("--csv", targets.Csv), ("--picture", targets.Picture), ("--charts", targets.Charts));
        Targets.RefuseFile("--charts", targets.Charts);
        if (targets is not { Picture: null, Charts: null } && inputs.Count > OverlayCharts.Most)
        {
            throw new InputException($"{(targets.Picture is null ? "--charts" : "--picture")}: found {inputs.Count} scenarios; allowed: {OverlayCharts.Most} at most, for more lines are not told apart; the tables take any number");
        }

        string name = Path.GetFileNameWithoutExtension(inputs[0]);
        var files = new CompareFiles
        {
            _table = targets.Csv is { } csv ? OutputFile.Plan(csv, OutputKind.Comparison, inputs) : null,
            _sheet = targets.Picture is { } sheet ? OutputFile.Plan(sheet, PictureTarget.KindOf(sheet, targets.Format), inputs) : null,
            _charts = targets.Charts is { } folder
                ? OverlayCharts.Names.ToDictionary(chart => chart, chart => OutputFile.Plan(Path.Combine(folder, $"{name}-compared-{chart}{kind.Extension}"), kind, inputs, makesFolder: true))
                : [],
        };
        files.RefuseClashes();
        return files;
    }

    private void RefuseClashes()
    {
        var taken = new HashSet<string>(OutputFile.Comparer);
        foreach (OutputFile file in _charts.Values.Prepend(_sheet).Prepend(_table).OfType<OutputFile>())
        {
            if (!taken.Add(file.Target))
            {
                throw new InputException($"two results would both be written to `{file.Shown}`; name another place for one");
            }
        }
    }

    /// <summary>Writes them, and says so.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="readout">The units of the pictures.</param>
    /// <param name="session">Takes the notices.</param>
    /// <exception cref="OutputException">One could not be written.</exception>
    public void Write(Comparison comparison, Readout readout, Session session)
    {
        OverlayLaunch[] launches = [.. comparison.SetUps.Select(setUp => new OverlayLaunch(setUp.Letter, setUp.Run))];
        Write(_table, stream => CompareCsv.Write(comparison, stream));
        Write(_sheet, stream =>
        {
            string[] sentences = [.. comparison.Differences.SelectMany(difference => ComparisonWords.Of(comparison, difference, readout))];
            PictureTarget.Write(OverlayCharts.Sheet(launches, sentences, readout, Program), _sheet!.Kind, stream);
        });
        if (_charts.Count > 0)
        {
            foreach ((string name, Picture picture) in OverlayCharts.Charts(launches, readout, Program))
            {
                Write(_charts[name], stream => PictureTarget.Write(picture, _charts[name].Kind, stream));
            }
        }

        void Write(OutputFile? file, Action<Stream> content)
        {
            if (file is not null)
            {
                file.Write(content, session.Cancellation);
                session.Error.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
            }
        }
    }
}
