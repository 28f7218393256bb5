using System.Globalization;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.DemoSeason;

/// <summary>The files of the invented season, by name.</summary>
internal static class SeasonFiles
{
    /// <summary>The car's file as the season's crew knows it: it is written by hand and only read here.</summary>
    public const string Car = "car.yaml";

    private const ulong Seed = 20260509;

    // Beyond 60 ft by what any of the cars needs.
    private const double Duration = 2.5;

    /// <summary>Makes them: passes, logs and mappings.</summary>
    /// <param name="file">The season's car, read for a run.</param>
    public static IReadOnlyList<(string Name, string Text)> Of(Scenario file)
    {
        TrueCar car = HiddenCar.Of(file);
        var files = new List<(string Name, string Text)> { ("dash.yaml", LogFiles.DashMapping), ("box.yaml", LogFiles.BoxMapping) };
        for (int i = 0; i < SeasonPlan.Passes.Count; i++)
        {
            PlannedPass pass = SeasonPlan.Passes[i];
            var dice = new Dice(Seed + (ulong)i);
            Scenario setUp = file.With(pass.Changed).Scenario ?? throw new InvalidOperationException($"{pass.Name} cannot be set.");
            RunSettings settings = file.Run with { Duration = Duration };
            LaunchSolution launch = car.Launch(setUp, settings) ?? throw new InvalidOperationException($"{pass.Name} does not come to its end.");
            string stem = string.Create(CultureInfo.InvariantCulture, $"{i + 1:00}-{pass.Slug}");
            string log = pass.Logger switch
            {
                Logger.Dash => LogFiles.OfDash(launch, pass.Name, dice),
                Logger.Box => LogFiles.OfBox(launch, dice),
                _ => "",
            };
            string seen = pass.Logger == Logger.None ? SeenByVideo.Whole(launch, settings, dice) : SeenByVideo.TimeSlip(launch, settings, dice);
            files.Add(($"{stem}.yaml", PassText(pass, file.ContentHash, stem, seen)));
            if (log.Length > 0)
            {
                files.Add(($"{stem}.csv", log));
            }
        }

        return files;
    }

    private static string PassText(PlannedPass pass, string hash, string stem, string seen)
    {
        string changed = pass.Changed.Count == 0 ? "" : $"changed:\n{string.Concat(pass.Changed.Select(change => $"  {change.Path}: {change.Value}\n"))}";
        string logs = pass.Logger == Logger.None ? "" : $"logs:\n  - {{file: {stem}.csv, mapping: {(pass.Logger == Logger.Dash ? "dash" : "box")}.yaml}}\n";
        return $"""
            name: {pass.Name}
            when: {pass.When}
            car: {Car}
            car_hash: {hash}
            {changed}track: {pass.Track}
            weather: {pass.Weather}
            {logs}{seen}notes: {pass.Notes}

            """;
    }
}
