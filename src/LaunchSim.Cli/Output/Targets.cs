using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Output;

/// <summary>Whether what an option names can be a file or a folder.</summary>
internal static class Targets
{
    /// <summary>Refuses an option without a name.</summary>
    /// <param name="all">Options with what was given, null when they were not.</param>
    /// <exception cref="InputException">One is empty.</exception>
    public static void RefuseNameless(params (string Option, string? Given)[] all)
    {
        if (Array.Find(all, one => one.Given?.Length == 0).Option is { } nameless)
        {
            throw new InputException($"{nameless} needs a name");
        }
    }

    /// <summary>Refuses a file where a folder is meant.</summary>
    /// <param name="option">The option.</param>
    /// <param name="folder">What was given, null when it was not.</param>
    /// <exception cref="InputException">It is a file.</exception>
    public static void RefuseFile(string option, string? folder)
    {
        if (folder is not null && File.Exists(folder))
        {
            throw new InputException($"{option} {folder}: found a file; allowed: a folder, which is made when it is not there");
        }
    }

    /// <summary>Whether a folder is meant where either may be: one that is there, several files, or a name that ends like a folder.</summary>
    /// <param name="option">The option.</param>
    /// <param name="given">What was given.</param>
    /// <param name="kinds">The kinds that a file could have.</param>
    /// <param name="count">How many files there will be.</param>
    /// <exception cref="InputException">A file is named for several.</exception>
    public static bool IsFolder(string option, string given, IReadOnlyList<OutputKind> kinds, int count)
    {
        if (Directory.Exists(given))
        {
            return true;
        }

        if (count > 1 && (File.Exists(given) || kinds.Any(kind => given.EndsWith(kind.Extension, StringComparison.OrdinalIgnoreCase))))
        {
            throw new InputException($"{option} {given}: found a file for several scenarios; allowed: a folder, which is made when it is not there");
        }

        return count > 1 || Path.EndsInDirectorySeparator(given);
    }
}
