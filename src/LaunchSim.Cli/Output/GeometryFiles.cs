using LaunchSim.Charts.SideViews;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Output;

/// <summary>Where the tables and the pictures of one side view go.</summary>
internal sealed class GeometryFiles
{
    private readonly OutputFile? _table;
    private readonly IReadOnlyDictionary<string, OutputFile> _charts;

    private GeometryFiles(OutputFile? table, IReadOnlyDictionary<string, OutputFile> charts) => (_table, _charts) = (table, charts);

    /// <summary>Plans the files; nothing is made yet.</summary>
    /// <param name="input">The scenario file.</param>
    /// <param name="csv">--csv: a file; or none.</param>
    /// <param name="folder">--charts: a folder; or none.</param>
    /// <param name="format">--format: png or svg; or none.</param>
    /// <exception cref="InputException">One cannot be written.</exception>
    public static GeometryFiles Plan(string input, string? csv, string? folder, string? format)
    {
        Targets.RefuseNameless(("--csv", csv), ("--charts", folder));
        Targets.RefuseFile("--charts", folder);
        if (format is not null && folder is null)
        {
            throw new InputException($"--format {format}: found no picture to draw; --charts says where they go");
        }

        OutputKind kind = PictureTarget.Named(format);
        string name = Path.GetFileNameWithoutExtension(input);
        return new GeometryFiles(
            csv is null ? null : OutputFile.Plan(csv, OutputKind.Geometry, [input]),
            folder is null ? new Dictionary<string, OutputFile>()
                : GeometryCharts.Names.ToDictionary(chart => chart, chart => OutputFile.Plan(Path.Combine(folder, $"{name}-{chart}{kind.Extension}"), kind, [input], makesFolder: true)));
    }

    /// <summary>Writes them, and says so.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units of the pictures.</param>
    /// <param name="session">Takes the notices.</param>
    /// <exception cref="OutputException">One could not be written.</exception>
    public void Write(GeometryReport report, Readout readout, Session session)
    {
        _table?.Write(stream => GeometryCsv.Write(report, stream), session.Cancellation);
        if (_charts.Count == 0)
        {
            return;
        }

        foreach (GeometryChart chart in GeometryCharts.Of(report, readout))
        {
            OutputFile file = _charts[chart.Name];
            if (chart.Picture is not { } picture)
            {
                session.Error.WriteLine($"not drawn: {file.Shown}; {chart.Lacks}");
                continue;
            }

            file.Write(stream => PictureTarget.Write(picture, file.Kind, stream), session.Cancellation);
            session.Error.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
        }
    }
}
