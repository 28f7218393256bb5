using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>Reads a season's folder. It needs no lock: files are whole whenever they are looked at.</summary>
/// <param name="scenarios">How cars are read: for a run.</param>
public sealed class SeasonReader(ScenarioReader scenarios)
{
    /// <summary>Reads all passes.</summary>
    /// <param name="folder">The folder, as errors are to name it; it has to be there.</param>
    /// <param name="fitted">A file of a fitted car in the place of the season's; null for that.</param>
    public SeasonResult Read(string folder, string? fitted = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        SeasonFileResult file = SeasonFileReader.Read(folder);
        var passes = new PassReader(scenarios);
        PassResult[] read = [.. SeasonFolder.Passes(folder).Select(passes.Read)];
        ReadResult? fit = (fitted ?? file.Season?.FittedFile) is { } name ? scenarios.Read(name) : null;

        // One car's warnings come once, however many passes it made.
        Diagnostic[] errors = [.. file.Errors.Concat(read.SelectMany(one => one.Errors)).Concat(fit?.Errors ?? []).Distinct()];
        Diagnostic[] warnings = [.. read.SelectMany(one => one.Warnings).Concat(fit?.Warnings ?? []).Distinct()];
        return errors.Length > 0 ? new SeasonResult(null, errors, warnings) : new SeasonResult(
            new Season
            {
                Folder = folder,
                Name = file.Season!.Name ?? Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder))),
                File = file.Season,
                Passes = InOrder([.. read.Select(one => one.Pass!)]),
                Fitted = fit?.Scenario,
            },
            [],
            warnings);
    }

    /// <summary>By when they were made; a pass that does not say stands where its file's name puts it.</summary>
    private static List<PassFile> InOrder(PassFile[] passes)
    {
        var timed = new List<(PassFile Pass, DateTime When)>();
        DateTime last = DateTime.MinValue;
        foreach (PassFile pass in passes)
        {
            last = pass.Time ?? last;
            timed.Add((pass, last));
        }

        return [.. timed.OrderBy(one => one.When).Select(one => one.Pass)];
    }
}
