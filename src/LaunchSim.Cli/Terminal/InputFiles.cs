namespace LaunchSim.Cli.Terminal;

/// <summary>The scenario files that were named; a folder stands for the scenarios in it.</summary>
internal static class InputFiles
{
    /// <summary>All files in the order in which they were named, those of a folder by name.</summary>
    /// <param name="named">Files and folders as the user wrote them.</param>
    /// <exception cref="InputException">A folder holds no scenario or cannot be read.</exception>
    public static IReadOnlyList<string> Find(IEnumerable<string> named)
    {
        var files = new List<string>();
        foreach (string name in named)
        {
            if (!Directory.Exists(name))
            {
                if (name.StartsWith("--", StringComparison.Ordinal) && !File.Exists(name))
                {
                    throw new InputException($"found no option `{name}`; --help tells all there are");
                }

                files.Add(name);
                continue;
            }

            List<string> inside = InFolder(name);
            if (inside.Count == 0)
            {
                throw new InputException($"the folder `{name}` holds no .yaml file");
            }

            files.AddRange(inside);
        }

        return files;
    }

    /// <summary>Whether a name is that of a scenario file.</summary>
    /// <param name="name">The name.</param>
    public static bool IsScenario(string name) =>
        name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);

    private static List<string> InFolder(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder).Where(IsScenario).Order(StringComparer.Ordinal)];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new InputException($"the folder `{folder}` cannot be read: {exception.Message}");
        }
    }
}
