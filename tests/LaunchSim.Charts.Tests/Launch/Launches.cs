using System.Globalization;
using System.Runtime.CompilerServices;
using LaunchSim.Charts.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Charts.Tests.Launch;

/// <summary>Launches to draw: those of the repository's scenarios, and of cars that nobody tuned a picture for.</summary>
internal static class Launches
{
    private static readonly string Root = FindRoot();
    private static readonly string[] Files =
    [
        .. Directory.GetFiles(Path.Combine(Root, "scenarios"), "*.yaml").Order(StringComparer.Ordinal),
        .. Directory.GetFiles(Path.Combine(Root, "tests", "LaunchSim.Cli.Tests", "Scenarios"), "*.yaml").Order(StringComparer.Ordinal).Where(file => !file.EndsWith("part.yaml", StringComparison.Ordinal)),
    ];

    /// <summary>Names of all scenarios.</summary>
    public static IEnumerable<string> Names => Files.Select(Named);

    /// <summary>One scenario's launch in its own units, with some values changed.</summary>
    public static LaunchView Of(string name, params (string Path, string Value)[] set)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(Array.Find(Files, file => Named(file) == name)!, set);
        Assert.Empty(read.Errors);
        return Of(read.Scenario!, read.Scenario!.UnitSystem);
    }

    /// <summary>Cars with some of their values drawn at random, wide but such that they stand.</summary>
    public static IEnumerable<(int Seed, LaunchView View)> Random(int count)
    {
        for (int seed = 0, found = 0; found < count; seed++)
        {
            var random = new Random(seed);
            string file = Files[random.Next(Files.Length)];
            ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(file, Changes(random, file));
            if (read.Scenario is { } scenario)
            {
                found++;
                yield return (seed, Of(scenario, random.Next(2) == 0 ? UnitSystem.Shop : UnitSystem.Si));
            }
        }
    }

    // Some names are in both folders.
    private static string Named(string file) => (file.Contains("tests", StringComparison.Ordinal) ? "test-" : "") + Path.GetFileNameWithoutExtension(file);

    private static LaunchView Of(Scenario scenario, UnitSystem units) =>
        new(LaunchOutcome.Of(scenario, CancellationToken.None), new Readout(units), "LaunchSim 0.0.0");

    private static List<(string Path, string Value)> Changes(Random random, string file)
    {
        var changes = new List<(string, string)>();
        void May(double chance, string path, string unit, double from, double to)
        {
            if (random.NextDouble() < chance)
            {
                double value = from * Math.Pow(to / from, random.NextDouble());
                changes.Add((path, string.Create(CultureInfo.InvariantCulture, $"{value:0.#####} {unit}")));
            }
        }

        May(0.5, "rear.tire.grip", "", 0.5, 4);
        May(0.5, "car.cg_height", "in", 9, 45);
        May(0.4, "rear.damper.travel.extend", "in", 0.2, 6);
        May(0.3, "rear.damper.travel.compress", "in", 0.2, 6);
        May(0.3, "front.damper.travel.extend", "in", 0.2, 6);
        May(0.4, "rear.spring.rate", "lb/in", 60, 500);
        May(0.3, "front.spring.rate", "lb/in", 60, 500);
        May(0.3, "rear.tire.vertical_rate", "lb/in", 400, 2000);
        May(0.3, "car.pitch_inertia", "kg·m²", 700, 5000);
        May(0.5, "run.duration", "s", 0.004, 2.5);
        if (random.NextDouble() < 0.2)
        {
            changes.Add(("name", new string('W', random.Next(1, 300))));
        }

        if (Named(file) is "test-squats" or "test-parallel")
        {
            May(1, "rear.linkage.upper.body", "in", 1, 1);
            changes[^1] = ("rear.linkage.upper.body", string.Create(CultureInfo.InvariantCulture, $"{random.Next(80, 190) / 10.0} {random.Next(105, 210) / 10.0} in"));
        }

        return changes;
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")))
            {
                return folder.FullName;
            }
        }

        return Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
    }
}
