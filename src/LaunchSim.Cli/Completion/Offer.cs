using System.CommandLine.Completions;

namespace LaunchSim.Cli.Completion;

/// <summary>
/// What may stand in the place of the word at the cursor: the whole word, not quoted, with its kind, which tells a shell
/// how to quote it and whether a space follows.
/// </summary>
internal static class Offer
{
    private const string WordKind = "word", PartKind = "part", FileKind = "file", FolderKind = "folder";

    /// <summary>A whole word.</summary>
    /// <param name="text">The word.</param>
    /// <param name="about">What it means; empty when there is nothing to say.</param>
    public static CompletionItem Word(string text, string? about = null) => new(text, WordKind, detail: about);

    /// <summary>The beginning of a word: more has to be typed.</summary>
    /// <param name="text">The beginning.</param>
    /// <param name="about">What it means; empty when there is nothing to say.</param>
    public static CompletionItem Part(string text, string? about = null) => new(text, PartKind, detail: about);

    /// <summary>A file.</summary>
    /// <param name="path">The file.</param>
    public static CompletionItem File(string path) => new(path, FileKind);

    /// <summary>A folder, what is in it may be wanted.</summary>
    /// <param name="path">The folder, with a slash at its end.</param>
    public static CompletionItem Folder(string path) => new(path, FolderKind);

    /// <summary>The line that the shells' scripts read: text, kind and meaning, with tabs between.</summary>
    /// <param name="item">What is offered.</param>
    public static string Line(CompletionItem item) =>
        $"{item.Label}\t{(item.Kind is PartKind or FileKind or FolderKind ? item.Kind : WordKind)}\t{item.Detail}";

    /// <summary>Whether it fits on a line: the name of a file may hold anything.</summary>
    /// <param name="item">What is offered.</param>
    public static bool FitsLine(CompletionItem item) => !item.Label.Any(char.IsControl);
}
