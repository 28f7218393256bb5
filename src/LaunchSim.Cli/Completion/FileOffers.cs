using System.CommandLine.Completions;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Completion;

/// <summary>Files and folders that begin as the word does. A name that begins with a dot is offered when the dot was typed.</summary>
internal static class FileOffers
{
    private static StringComparison Comparison => OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;

    /// <summary>Scenarios, and folders that may hold some.</summary>
    /// <param name="context">Holds the word.</param>
    public static IEnumerable<CompletionItem> Scenarios(CompletionContext context) => Beginning(context.WordToComplete, InputFiles.IsScenario);

    /// <summary>Folders only.</summary>
    /// <param name="context">Holds the word.</param>
    public static IEnumerable<CompletionItem> Folders(CompletionContext context) => Beginning(context.WordToComplete, _ => false);

    /// <summary>Files of some kinds, and folders.</summary>
    /// <param name="extensions">Such as <c>.csv</c>.</param>
    public static Func<CompletionContext, IEnumerable<CompletionItem>> Ending(params string[] extensions) =>
        context => Beginning(context.WordToComplete, name => Array.Exists(extensions, extension => name.EndsWith(extension, StringComparison.OrdinalIgnoreCase)));

    private static IEnumerable<CompletionItem> Beginning(string word, Func<string, bool> isWanted)
    {
        int slash = OperatingSystem.IsWindows() ? word.LastIndexOfAny(['/', '\\']) : word.LastIndexOf('/');
        string typed = word[..(slash + 1)], start = word[(slash + 1)..];
        return Entries(typed.Length == 0 ? "." : FromHome(typed))
            .Where(entry => entry.Name.StartsWith(start, Comparison) && (start.StartsWith('.') || !entry.Name.StartsWith('.')))
            .Where(entry => entry is DirectoryInfo || isWanted(entry.Name))
            .Select(entry => entry is DirectoryInfo ? Offer.Folder($"{typed}{entry.Name}/") : Offer.File(typed + entry.Name));
    }

    // The shell has not done it: it hands over the word as typed, and wants it back so.
    private static string FromHome(string folder) =>
        folder.StartsWith("~/", StringComparison.Ordinal) ? Path.Join(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), folder[1..]) : folder;

    private static FileSystemInfo[] Entries(string folder)
    {
        try
        {
            return new DirectoryInfo(folder).GetFileSystemInfos();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // What cannot be read cannot be offered.
            return [];
        }
    }
}
