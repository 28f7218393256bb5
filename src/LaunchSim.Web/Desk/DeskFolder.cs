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

    /// <summary>The names of all scenarios in it, hidden ones left out, in their order.</summary>
    public IReadOnlyList<string> Names()
    {
        try
        {
            return [.. Directory.EnumerateFiles(Boundary.Folder).Select(path => Path.GetFileName(path)).Where(IsListed).Order(StringComparer.Ordinal)];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>
    /// Whether the folder has a scenario of a name. A name is only ever compared with those that are there: it is never taken
    /// apart, and so cannot lead anywhere else.
    /// </summary>
    /// <param name="name">The name as it was sent.</param>
    public bool Has(string name) => name == _own || (IsListed(name) && Names().Contains(name));

    // A name that a terminal or a page could not show as it is, is none.
    private static bool IsListed(string name) => IsScenario(name) && !name.StartsWith('.') && DeskLog.Plain(name) == name;

    private static bool IsScenario(string name) =>
        name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
}
