using System.Globalization;
using System.Text;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Web.Desk;

/// <summary>Reads files of the folder for the desk.</summary>
/// <param name="folder">The folder.</param>
internal sealed class DeskReading(DeskFolder folder)
{
    // Of each file; whoever has more to mend begins with these.
    private const int MostLines = 20;

    private const int LongestLine = 400;

    private readonly ScenarioReader _reader = new() { Purpose = ReadPurpose.Run, CarCheck = StandingCheck.OfCar, GeometryCheck = StandingCheck.OfSideView, Boundary = folder.Boundary };

    /// <summary>How scenarios are read.</summary>
    public ScenarioReader Reader => _reader;

    /// <summary>Reads a file.</summary>
    /// <param name="path">Its whole path.</param>
    /// <param name="before">What was read before; null for nothing.</param>
    /// <param name="files">The files that it was read from or looked for in.</param>
    public DeskState Read(string path, DeskState? before, out IReadOnlyList<string> files)
    {
        ReadResult read = _reader.Read(path);
        files = read.Files.Count > 0 ? read.Files : [path];
        IReadOnlyList<Diagnostic> errors = read.Scenario is { } scenario ? TooLong(scenario) : read.Errors;
        Scenario? now = errors.Count == 0 ? read.Scenario : null;
        return new DeskState
        {
            Version = (before?.Version ?? 0) + 1,
            Scenario = now ?? before?.Scenario,
            Errors = errors,
            Warnings = read.Warnings,
            Lines = Lines(errors, files),
            Controls = now is not null ? Controls.Of(now) : before?.Controls ?? [],
        };
    }

    /// <summary>What is wrong with a run of more rows than can be drawn; empty when nothing is.</summary>
    /// <param name="scenario">The scenario.</param>
    public static IReadOnlyList<Diagnostic> TooLong(Scenario scenario)
    {
        RunSettings run = scenario.Run;
        double rows = (run.Duration ?? (run.Marks.Count > 0 ? RunSettings.LongestDuration : RunSettings.DefaultDuration)) / run.Sample;
        if (rows <= DeskLimits.Rows)
        {
            return [];
        }

        string[] place = scenario.PlaceOf("run.sample").Split(':');
        bool isPlaced = place.Length > 2 && int.TryParse(place[^2], CultureInfo.InvariantCulture, out _);
        return
        [
            new Diagnostic
            {
                File = isPlaced ? string.Join(':', place[..^2]) : scenario.SourceFile,
                Line = isPlaced ? int.Parse(place[^2], CultureInfo.InvariantCulture) : 0,
                Column = isPlaced ? int.Parse(place[^1], CultureInfo.InvariantCulture) : 0,
                Severity = Severity.Error,
                Path = "run.sample",
                Message = string.Create(CultureInfo.InvariantCulture, $"a run of {rows:#,0} rows"),
                Allowed = string.Create(CultureInfo.InvariantCulture, $"on the desk {DeskLimits.Rows:#,0} rows at the most"),
                Mend = "make run.sample longer or run.duration shorter",
            },
        ];
    }

    // Errors are shown with the line that they are in.
    private Dictionary<(string, int), string> Lines(IReadOnlyList<Diagnostic> errors, IReadOnlyList<string> files)
    {
        var lines = new Dictionary<(string, int), string>();
        foreach (IGrouping<string, Diagnostic> group in errors.Where(error => error.Line > 0).GroupBy(error => error.File))
        {
            string? path = files.FirstOrDefault(file => folder.Shown(file) == folder.Shown(Path.GetFullPath(group.Key)));
            string[] text = path is null ? [] : Text(path);
            foreach (int line in group.Select(error => error.Line).Distinct().Where(line => line <= text.Length).Take(MostLines))
            {
                lines[(group.Key, line)] = DeskLog.Plain(text[line - 1].TrimEnd('\r').Replace('\t', ' '));
            }
        }

        return lines;
    }

    private string[] Text(string path)
    {
        try
        {
            return folder.Boundary.Refusal(path) is null && new FileInfo(path) is { Exists: true, Length: < 1 << 20 }
                ? [.. File.ReadAllText(path, Encoding.UTF8).Split('\n').Select(line => line.Length > LongestLine ? line[..LongestLine] : line)]
                : [];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
