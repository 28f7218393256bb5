using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Scenarios.Paths;

namespace LaunchSim.Passes.Fitting;

/// <summary>Which numbers of a scenario a fit moves.</summary>
public static class FitParameters
{
    // What is hardest to measure on a flat floor; common practice, no source.
    private static readonly string[] Usual =
        ["car.cg_height", "car.pitch_inertia", "front.tire.vertical_rate", "rear.tire.vertical_rate", "rear.tire.grip", "driveline.torque", "driveline.engine.torque"];

    private const string Set = ".set";

    /// <summary>
    /// What is moved when nothing was asked for: every number whose doubt was entered, those that can hardly be measured at home
    /// with their usual doubt, and how far each adjuster is off its sheets.
    /// </summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    public static IReadOnlyList<FitParameter> Default(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return [.. All(scenario).Where(parameter => parameter.IsClicks || parameter.Number.IsEntered || Usual.Contains(parameter.Path))];
    }

    /// <summary>What can hardly be measured at home, and how far each adjuster is off its sheets: few enough for a quick look between two passes.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    public static IReadOnlyList<FitParameter> Hardest(Scenario scenario) =>
        [.. All(scenario).Where(parameter => parameter.IsClicks || Usual.Contains(parameter.Path))];

    /// <summary>Everything that could be moved.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    public static IReadOnlyList<FitParameter> All(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        IEnumerable<FitParameter> numbers = DoubtfulNumbers.Of(scenario)
            .Where(number => !(number.Path.EndsWith(Set, StringComparison.Ordinal) && scenario.Clicks.ContainsKey(number.Path[..^Set.Length])))
            .Select(number => new FitParameter(number, false));
        IEnumerable<FitParameter> clicks = scenario.Clicks.Keys.Select(side => ClickOffsets.Of(scenario, side)).OfType<DoubtfulNumber>().Select(number => new FitParameter(number, true));
        return [.. numbers, .. clicks];
    }

    /// <summary>Chosen ones.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="paths">Their paths.</param>
    /// <param name="problems">Plain sentences on paths that cannot be moved, each with what can be.</param>
    public static IReadOnlyList<FitParameter> Of(Scenario scenario, IReadOnlyList<string> paths, out IReadOnlyList<string> problems)
    {
        ArgumentNullException.ThrowIfNull(paths);
        IReadOnlyList<FitParameter> all = All(scenario);
        var chosen = new List<FitParameter>();
        var wrong = new List<string>();
        foreach (string path in paths.Distinct(StringComparer.Ordinal))
        {
            if (all.FirstOrDefault(parameter => parameter.Path == path) is { } parameter)
            {
                chosen.Add(parameter);
            }
            else
            {
                string near = Nearest.To(path, all.Select(one => one.Path)) is { } similar ? $"did you mean {similar}?" : "write its value with a ± into the file";
                wrong.Add($"found {path}, which has no doubt in this file; allowed: {string.Join(", ", all.Where(one => Usual.Contains(one.Path) || one.IsClicks || one.Number.IsEntered).Select(one => one.Path))} and every value with a doubt of its own or a usual one; mend: {near}");
            }
        }

        problems = wrong;
        return chosen;
    }
}
