using LaunchSim.Scenarios;

namespace LaunchSim.Web.Desk;

/// <summary>The folder that is served: which scenarios are in it, and nothing outside of it.</summary>
internal sealed class DeskFolder
{
    private readonly string? _own;

    /// <summary>A folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="own">A file in it that is known whatever its name ends in; null for none.</param>
    public DeskFolder(string folder, string? own)
    {
        Boundary = new FolderBoundary(folder);
        _own = own;
    }

    /// <summary>The boundary of all reading.</summary>
    public FolderBoundary Boundary { get; }

    /// <summary>The names of the scenarios in it, hidden ones left out, in their order.</summary>
    public IReadOnlyList<string> Names()
    {
        try
        {
            return
            [
                .. Directory.EnumerateFiles(Boundary.Folder).Select(path => Path.GetFileName(path)).Where(name => IsScenario(name) && !name.StartsWith('.') && DeskLog.Plain(name) == name)
                    .Order(StringComparer.Ordinal).Take(DeskLimits.Listed),
            ];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>
    /// The whole path of a scenario by its name; null when the folder has none of that name. A name is only ever compared
    /// with those that are there: it is never taken apart, and so cannot lead anywhere else.
    /// </summary>
    /// <param name="name">The name as it was sent.</param>
    public string? Find(string name)
    {
        if (name == _own)
        {
            return Path.Combine(Boundary.Folder, _own);
        }

        return IsScenario(name) && name.AsSpan().IndexOfAny('/', '\\', ':') < 0 && Names().Contains(name) ? Path.Combine(Boundary.Folder, name) : null;
    }

    /// <summary>A path as it is shown: from the folder on.</summary>
    /// <param name="path">A path as the reader names it, or whatever else a finding is of.</param>
    public string Shown(string path) => Path.IsPathFullyQualified(path) ? Path.GetRelativePath(Boundary.Folder, path).Replace('\\', '/') : path;

    private static bool IsScenario(string name) =>
        name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
}
