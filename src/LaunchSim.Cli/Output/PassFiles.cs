using LaunchSim.Charts;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Comparing;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Output;

/// <summary>Where the table, the pictures and the page of a pass go.</summary>
internal sealed class PassFiles
{
    private static readonly string Program = $"{ProgramVersion.Name} {ProgramVersion.Text}";

    private OutputFile? _table, _sheet;
    private Dictionary<string, OutputFile> _charts = [];

    private PassFiles()
    {
    }

    /// <summary>The page; null when none was asked for.</summary>
    public OutputFile? Page { get; private set; }

    /// <summary>Looks at what was asked for, before anything is read.</summary>
    /// <param name="inputs">The scenario, the mappings and the logs: none is overwritten.</param>
    /// <param name="targets">Where results are to go.</param>
    /// <param name="page">--page, or none.</param>
    /// <exception cref="InputException">One cannot be written.</exception>
    public static PassFiles Plan(IReadOnlyList<string> inputs, RunTargets targets, string? page)
    {
        _ = PictureTarget.Kind(targets);
        Targets.RefuseNameless(("--csv", targets.Csv), ("--picture", targets.Picture), ("--charts", targets.Charts), ("--page", page));
        Targets.RefuseFile("--charts", targets.Charts);
        var files = new PassFiles
        {
            _table = targets.Csv is { } csv ? OutputFile.Plan(csv, OutputKind.MeasuredRows, inputs) : null,
            _sheet = targets.Picture is { } sheet ? OutputFile.Plan(sheet, PictureTarget.KindOf(sheet, targets.Format), inputs) : null,
            Page = page is null ? null : PageTarget.Plan(page, inputs),
        };
        files.RefuseClashes();
        return files;
    }

    /// <summary>Looks at the charts' files, once it is known which there are.</summary>
    /// <param name="inputs">The scenario, the mappings and the logs.</param>
    /// <param name="targets">Where results are to go.</param>
    /// <param name="names">The charts' names.</param>
    /// <exception cref="InputException">One cannot be written.</exception>
    public void PlanCharts(IReadOnlyList<string> inputs, RunTargets targets, IReadOnlyList<string> names)
    {
        if (targets.Charts is { } folder)
        {
            OutputKind kind = PictureTarget.Kind(targets);
            string name = Path.GetFileNameWithoutExtension(inputs[0]);
            _charts = names.ToDictionary(chart => chart, chart => OutputFile.Plan(Path.Combine(folder, $"{name}-measured-{chart}{kind.Extension}"), kind, inputs, makesFolder: true));
            RefuseClashes();
        }
    }

    private void RefuseClashes()
    {
        var taken = new HashSet<string>(OutputFile.Comparer);
        foreach (OutputFile file in _charts.Values.Prepend(_sheet).Prepend(_table).Prepend(Page).OfType<OutputFile>())
        {
            if (!taken.Add(file.Target))
            {
                throw new InputException($"two results would both be written to `{file.Shown}`; name another place for one");
            }
        }
    }

    /// <summary>Writes table and pictures, and says so.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="readout">The units of the pictures.</param>
    /// <param name="session">Takes the notices.</param>
    /// <exception cref="OutputException">One could not be written.</exception>
    public void Write(PassComparison comparison, Readout readout, Session session)
    {
        Write(_table, stream => PassCsv.Write(comparison, stream), session);
        Write(_sheet, stream => PictureTarget.Write(PassPictures.Sheet(comparison, readout, Program), _sheet!.Kind, stream), session);
        if (_charts.Count > 0)
        {
            foreach ((string name, Picture picture) in PassPictures.Charts(comparison, readout, Program))
            {
                Write(_charts[name], stream => PictureTarget.Write(picture, _charts[name].Kind, stream), session);
            }
        }
    }

    /// <summary>Writes one file, and says so.</summary>
    /// <param name="file">The file; null for none.</param>
    /// <param name="content">Writes its content.</param>
    /// <param name="session">Takes the notice.</param>
    public static void Write(OutputFile? file, Action<Stream> content, Session session)
    {
        if (file is not null)
        {
            file.Write(content, session.Cancellation);
            session.Error.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
        }
    }
}
