using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Output;

/// <summary>Where the results of one scenario go.</summary>
/// <param name="Csv">The trace, or none.</param>
/// <param name="Json">The document, or none.</param>
internal sealed record RunFiles(OutputFile? Csv, OutputFile? Json)
{
    /// <summary>Plans the files of all scenarios; nothing is made yet.</summary>
    /// <param name="inputs">The scenario files.</param>
    /// <param name="csv">--csv: a file for one scenario, a folder for several; or none.</param>
    /// <param name="folder">--out: a folder for traces and documents; or none.</param>
    /// <exception cref="InputException">Two would be written to one place, or one cannot be written.</exception>
    public static IReadOnlyList<RunFiles> Plan(IReadOnlyList<string> inputs, string? csv, string? folder)
    {
        if (csv?.Length == 0 || folder?.Length == 0)
        {
            throw new InputException("--csv and --out need a name");
        }

        if (folder is not null && File.Exists(folder))
        {
            throw new InputException($"--out {folder}: found a file; allowed: a folder, which is made when it is not there");
        }

        bool csvIsFolder = csv is not null && CsvIsFolder(csv, inputs.Count);
        var all = new List<RunFiles>();
        foreach (string input in inputs)
        {
            string name = Path.GetFileNameWithoutExtension(input);
            OutputFile? trace = csv is not null
                ? OutputFile.Plan(csvIsFolder ? Path.Combine(csv, name + ".csv") : csv, OutputKind.Trace, inputs, csvIsFolder)
                : folder is not null ? OutputFile.Plan(Path.Combine(folder, name + ".csv"), OutputKind.Trace, inputs, true) : null;
            OutputFile? document = folder is not null ? OutputFile.Plan(Path.Combine(folder, name + ".json"), OutputKind.Json, inputs, true) : null;
            all.Add(new RunFiles(trace, document));
        }

        RefuseClashes(inputs, all);
        return all;
    }

    private static bool CsvIsFolder(string csv, int count)
    {
        if (Directory.Exists(csv))
        {
            return true;
        }

        if (count > 1 && (File.Exists(csv) || csv.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)))
        {
            throw new InputException($"--csv {csv}: found a file for several scenarios; allowed: a folder, which is made when it is not there");
        }

        return count > 1 || Path.EndsInDirectorySeparator(csv);
    }

    private static void RefuseClashes(IReadOnlyList<string> inputs, List<RunFiles> all)
    {
        for (int i = 0; i < all.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if ((all[i].Csv is { } trace && all[j].Csv is { } other && trace.SamePlace(other))
                    || (all[i].Json is { } document && all[j].Json is { } second && document.SamePlace(second)))
                {
                    throw new InputException($"{inputs[j]} and {inputs[i]} would both be written to `{(all[i].Csv ?? all[i].Json)!.Shown}`; run them apart, or rename one");
                }
            }
        }
    }
}
