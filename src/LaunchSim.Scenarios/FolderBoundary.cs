namespace LaunchSim.Scenarios;

/// <summary>
/// A folder out of which nothing is read, whatever a file's name or a link says: for whoever reads files that others name.
/// Links are followed, in the way to the file and in the way to the folder. A hard link is the file itself and cannot be told
/// from it; a link that is changed between the look and the reading is not noticed.
/// </summary>
public sealed class FolderBoundary
{
    // As many as the usual systems follow.
    private const int MostLinks = 40;

    private static readonly StringComparison Comparison = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;

    private readonly string _real;

    /// <summary>A boundary.</summary>
    /// <param name="folder">The folder, which has to be there.</param>
    /// <exception cref="IOException">It cannot be looked at, or its links lead in a circle.</exception>
    public FolderBoundary(string folder)
    {
        Folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        _real = RealPath(Folder) ?? throw new IOException($"the links of `{folder}` lead in a circle");
    }

    /// <summary>The folder, as a whole path.</summary>
    public string Folder { get; }

    /// <summary>Whether a file may be read: null when it may, else what is wrong with it, in words that follow 'found'.</summary>
    /// <param name="path">The file, as a whole path; it need not be there.</param>
    public string? Refusal(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        try
        {
            // What lies outside by its very name is not even looked at: a look may reach another machine.
            if (!IsInside(Folder, path) && !IsInside(_real, path))
            {
                return "a file outside the folder";
            }

            if (RealPath(path) is not { } real || !IsInside(_real, real))
            {
                return "a link that leads out of the folder";
            }

            // A pipe or a device has no length, and reading it may never end.
            return new FileInfo(real) is { Exists: true, Length: 0 } ? "an empty file, or none that can be read to its end" : null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException)
        {
            return "a file that cannot be looked at";
        }
    }

    private static bool IsInside(string folder, string path) =>
        path.Length > folder.Length && path.StartsWith(folder, Comparison)
        && (Path.EndsInDirectorySeparator(folder) || path[folder.Length] == Path.DirectorySeparatorChar || path[folder.Length] == Path.AltDirectorySeparatorChar);

    /// <summary>The place that a path leads to once every link in it is followed; null when they lead in a circle.</summary>
    private static string? RealPath(string full)
    {
        string real = Path.GetPathRoot(full) ?? "";
        var rest = new Stack<string>();
        Push(full[real.Length..]);
        for (int links = 0; rest.TryPop(out string? part);)
        {
            if (part == "..")
            {
                real = Path.GetDirectoryName(real) ?? real;
                continue;
            }

            string next = Path.Combine(real, part);
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                real = next;
                continue;
            }

            if (++links > MostLinks)
            {
                return null;
            }

            if (Path.GetPathRoot(target) is { Length: > 0 } root)
            {
                real = Path.GetPathRoot(Path.GetFullPath(root, real)) ?? real;
                target = target[root.Length..];
            }

            Push(target);
        }

        return real;

        void Push(string way)
        {
            foreach (string part in way.Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries).Reverse())
            {
                if (part != ".")
                {
                    rest.Push(part);
                }
            }
        }
    }
}
