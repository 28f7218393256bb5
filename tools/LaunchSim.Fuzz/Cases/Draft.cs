namespace LaunchSim.Fuzz.Cases;

/// <summary>A case while it is being made: its files so far, and how it came about.</summary>
/// <param name="dice">The case's random numbers.</param>
internal sealed class Draft(Dice dice)
{
    private readonly Dictionary<string, CaseFile> _files = new(StringComparer.Ordinal);
    private readonly List<string> _steps = [];

    /// <summary>The case's random numbers.</summary>
    public Dice Dice { get; } = dice;

    /// <summary>The files, in the order in which they were added.</summary>
    public IReadOnlyCollection<CaseFile> Files => _files.Values;

    /// <summary>How the case came about.</summary>
    public IReadOnlyList<string> Steps => _steps;

    /// <summary>The scenario files that the command is given, without their folder.</summary>
    public List<string> Named { get; } = [];

    /// <summary>The shipped scenarios from which the named files begin.</summary>
    public List<Source> Hosts { get; } = [];

    /// <summary>Values for --set.</summary>
    public List<Change> Sets { get; } = [];

    /// <summary>Whether it has numbers beyond all that a car could have.</summary>
    public bool IsWild { get; set; }

    /// <summary>Adds a file, or puts it in the place of one of its name.</summary>
    /// <param name="file">The file.</param>
    public void Add(CaseFile file) => _files[file.Name] = file;

    /// <summary>Whether there is a file of a name, or a folder that the name would go through.</summary>
    /// <param name="name">The name.</param>
    public bool Has(string name) => _files.ContainsKey(name);

    /// <summary>A name that no file has yet.</summary>
    /// <param name="stem">How it begins.</param>
    /// <param name="extension">How it ends, with the dot.</param>
    public string Free(string stem, string extension = ".yaml")
    {
        string name = stem + extension;
        for (int i = 2; _files.ContainsKey(name); i++)
        {
            name = $"{stem}-{i}{extension}";
        }

        return name;
    }

    /// <summary>Notes what was done.</summary>
    /// <param name="step">In a few words.</param>
    public void Note(string step) => _steps.Add(step);
}

/// <summary>A value for a path, as a change of a variant or for --set.</summary>
/// <param name="Path">The path.</param>
/// <param name="Value">The value in the notation of the file.</param>
internal sealed record Change(string Path, string Value);
