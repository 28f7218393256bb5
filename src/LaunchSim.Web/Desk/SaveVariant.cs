using System.Text.Json;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Web.Desk;

/// <summary>Saves what was moved as a variant file of its own, in the folder, never over another one.</summary>
internal static class SaveVariant
{
    private const int LongestNotes = 2000;

    /// <summary>Saves one.</summary>
    /// <param name="sent">What was sent: <c>file</c>, <c>as</c>, <c>name</c>, <c>edits</c>, and perhaps <c>notes</c>.</param>
    /// <param name="file">The file that it begins from.</param>
    /// <param name="reading">How files are read.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="cancellation">Ends it before the file has its name.</param>
    /// <exception cref="MalformedException">What was sent is not as it has to be.</exception>
    public static DeskAnswer Answer(JsonElement sent, DeskFile file, DeskReading reading, DeskFolder folder, CancellationToken cancellation)
    {
        (string target, string name) = (Sent.Text(sent, "as"), Sent.Text(sent, "name"));
        string? notes = Sent.OptionalText(sent, "notes", LongestNotes);
        IReadOnlyList<(string Path, string Value)> edits = Sent.Edits(sent);
        if (VariantName.Problem(target) is { } problem)
        {
            return DeskAnswer.Refused(400, $"found {problem}");
        }

        if (name.Trim().Length == 0)
        {
            return DeskAnswer.Refused(400, "found no name; say what the set-up is called");
        }

        DeskSetUp setUp = DeskSetUp.Of(file.Current, edits);
        if (setUp.Scenario is not { } scenario)
        {
            return DeskAnswer.Refused(400, setUp.Errors);
        }

        if (setUp.Edits.Count == 0)
        {
            return DeskAnswer.Refused(400, $"found nothing that was moved; {file.Name} is that set-up already");
        }

        string said = notes is { } own && own.Trim().Length > 0 ? own : $"Set on the desk, from {file.Name}.";
        string text = VariantText.Of(name, said, file.Name, scenario, setUp.Edits);
        return ReadBack(text, target, scenario, reading, folder) ?? Write(text, target, folder, cancellation);
    }

    /// <summary>Reads the text as the file will be read; it has to be the car that was seen.</summary>
    private static DeskAnswer? ReadBack(string text, string target, Scenario scenario, DeskReading reading, DeskFolder folder)
    {
        ReadResult read = reading.Reader.ReadText(text, target, folder: folder.Boundary.Folder);
        return read.Scenario is not { } same ? DeskAnswer.Refused(409, read.Errors)
            : same.ContentHash != scenario.ContentHash ? DeskAnswer.Refused(409, "the file has changed on the disk since this set-up was made from it; nothing was saved")
            : null;
    }

    private static DeskAnswer Write(string text, string target, DeskFolder folder, CancellationToken cancellation)
    {
        string path = Path.Combine(folder.Boundary.Folder, target);
        try
        {
            if (IsTaken(path, target, folder))
            {
                return Taken(target);
            }

            NewFile.Write(path, text, cancellation);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // Somebody may have been quicker.
            return Path.Exists(path) ? Taken(target) : DeskAnswer.Refused(500, $"{target} could not be written, nothing of it is left behind: {DeskLog.Plain(exception.Message)}");
        }

        return DeskAnswer.Of(201, json =>
        {
            json.WriteString("saved", target);
            json.WriteString("place", path);
        });
    }

    // On other systems names that differ by capitals only are one; a link that leads nowhere is something too.
    private static bool IsTaken(string path, string target, DeskFolder folder) =>
        Path.Exists(path) || new FileInfo(path).LinkTarget is not null
        || Directory.EnumerateFileSystemEntries(folder.Boundary.Folder).Any(entry => string.Equals(Path.GetFileName(entry), target, StringComparison.OrdinalIgnoreCase));

    private static DeskAnswer Taken(string target) => DeskAnswer.Refused(409, $"{target} is there already and is never overwritten; choose another name");
}
