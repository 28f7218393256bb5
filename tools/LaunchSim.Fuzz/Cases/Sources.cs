namespace LaunchSim.Fuzz.Cases;

/// <summary>The shipped scenarios, and a part file.</summary>
internal sealed class Sources
{
    /// <summary>What <c>geometry</c> needs and no more.</summary>
    public const string Part = """
        # enough for the side view
        car:
          wheelbase: 105.5 in
          scales: {front: 1560 lb, rear: 1440 lb}
          cg_height: 21 ±1 in
        rear:
          linkage:
            type: four-link
            lower: {axle: 1.0 7.6 in, body: 21.0 9.0 in}
            upper: {axle: 2.5 17.0 in, body: {holes: {a: 14.0 15.4 in, b: 14.0 14.6 in}, use: b}}

        """;

    private readonly Dictionary<string, Source> _byName;

    private Sources(IEnumerable<Source> all)
    {
        All = [.. all];
        Whole = [.. All.Where(source => source.BaseName is null)];
        _byName = All.ToDictionary(source => source.Name, StringComparer.Ordinal);
    }

    /// <summary>All scenarios.</summary>
    public IReadOnlyList<Source> All { get; }

    /// <summary>Those that begin from no other file.</summary>
    public IReadOnlyList<Source> Whole { get; }

    /// <summary>Reads a folder of scenarios.</summary>
    /// <param name="folder">The folder.</param>
    public static Sources In(string folder) =>
        new(Directory.EnumerateFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Select(Source.Of));

    /// <summary>The repository's own scenarios.</summary>
    /// <exception cref="DirectoryNotFoundException">The program does not run from within the repository.</exception>
    public static Sources Shipped()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")))
            {
                return In(Path.Combine(folder.FullName, "scenarios"));
            }
        }

        throw new DirectoryNotFoundException("Above the program there is no folder with LaunchSim.sln, beside which the scenarios lie.");
    }

    /// <summary>Puts the files from which a scenario begins into a case.</summary>
    /// <param name="source">The scenario.</param>
    /// <param name="draft">The case.</param>
    public void AddBases(Source source, Draft draft)
    {
        while (source.BaseName is { } name)
        {
            source = _byName[name];
            if (!draft.Has(source.Name))
            {
                draft.Add(CaseFile.OfText(source.Name, source.Text));
            }
        }
    }
}
