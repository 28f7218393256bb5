using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Reads the file <c>season.yaml</c>.</summary>
public static class SeasonFileReader
{
    /// <summary>Reads it; a folder without one is a season all the same.</summary>
    /// <param name="folder">The season's folder, as errors are to name it.</param>
    public static SeasonFileResult Read(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        string path = Path.Combine(folder, SeasonFile.FileName);
        if (!File.Exists(path))
        {
            return new SeasonFileResult(SeasonFile.None, []);
        }

        var findings = new Findings();
        if (ScenarioText.Read(Path.GetFullPath(path), path, new Place(path, 1, 1), findings) is not { } text)
        {
            return new SeasonFileResult(null, findings.Errors());
        }

        if (text.Trim().Length == 0)
        {
            return new SeasonFileResult(SeasonFile.None, []);
        }

        switch (NodeReader.Read(text, path, findings))
        {
            case MapNode root:
                BoundValues values = Binder.Bind(SeasonKeys.Season, root, findings);
                return findings.HasErrors ? new SeasonFileResult(null, findings.Errors()) : new SeasonFileResult(
                    new SeasonFile(Of("name") is { Length: > 0 } name ? name : null, Of("notes") ?? "", File("car"), File("fitted")), []);
                string? Of(string key) => values.Find(key)?.Text.Trim();
                string? File(string key) => Of(key) is { Length: > 0 } named ? FileNames.Seen(folder, named) : null;
            case { } other:
                findings.Error(other.Place, "", $"{Binder.Describe(other)} where a season is due", "`key: value` lines: name, car, fitted", "begin with name:");
                break;
        }

        return new SeasonFileResult(null, findings.Errors());
    }
}
