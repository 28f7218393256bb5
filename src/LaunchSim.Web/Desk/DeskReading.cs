using System.Text;
using LaunchSim.Scenarios;

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
    /// <param name="name">Its name in the folder.</param>
    /// <param name="before">What was read before; null for nothing.</param>
    /// <param name="files">The files that it was read from or looked for in.</param>
    public DeskState Read(string name, DeskState? before, out IReadOnlyList<string> files)
    {
        ReadResult read = _reader.Read(name);
        files = read.Files.Count > 0 ? read.Files : [Path.Combine(folder.Boundary.Folder, name)];
        return new DeskState
        {
            Version = (before?.Version ?? 0) + 1,
            Scenario = read.Scenario ?? before?.Scenario,
            Errors = read.Errors,
            Warnings = read.Warnings,
            Lines = Lines(read.Errors),
            Controls = read.Scenario is { } scenario ? Controls.Of(scenario) : before?.Controls ?? [],
        };
    }

    // Errors are shown with the line that they are in.
    private Dictionary<(string, int), string> Lines(IReadOnlyList<Diagnostic> errors)
    {
        var lines = new Dictionary<(string, int), string>();
        foreach (IGrouping<string, Diagnostic> group in errors.Where(error => error.Line > 0).GroupBy(error => error.File))
        {
            string[] text = Text(Path.GetFullPath(group.Key, folder.Boundary.Folder));
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
