using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Doubtful;

/// <summary>
/// A tyre whose grip or peak slip is not well known is still the same rubber: its slip stiffness follows grip over peak
/// slip, so that the slip curve keeps its shape. Without that, half of the doubtful tyres would have curves that fold back.
/// </summary>
public static class KeptTireShape
{
    private static readonly string[] Tires = ["front.tire", "rear.tire"];

    /// <summary>Moves the slip stiffness with grip and peak slip, where edits move these.</summary>
    /// <param name="scenario">The scenario that the edits are for.</param>
    /// <param name="edits">
    /// The edits; receives the stiffness, in the place of its own edit if it has one: what that moves it by is kept.
    /// </param>
    public static void Keep(Scenario scenario, List<ScenarioEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(edits);
        foreach (string tire in Tires)
        {
            double share = Share(scenario, edits, tire + ".grip") / Share(scenario, edits, tire + ".peak_slip");
            string path = tire + ".slip_stiffness";
            int own = edits.FindIndex(edit => edit.Path == path);
            if (share == 1 || (own >= 0 ? edits[own].Quantity : scenario.Find(path)) is not { } stiffness)
            {
                continue;
            }

            ScenarioPath target = own >= 0 ? edits[own].Target : ScenarioPath.Resolve(path, out _)!;
            var kept = new ScenarioEdit(target, new Quantity([stiffness.Numbers[0] * share], stiffness.Unit));
            if (own >= 0)
            {
                edits[own] = kept;
            }
            else
            {
                edits.Add(kept);
            }
        }
    }

    private static double Share(Scenario scenario, List<ScenarioEdit> edits, string path) =>
        edits.Find(edit => edit.Path == path)?.Quantity is { } drawn && scenario.Find(path) is { } entered ? drawn.Si() / entered.Si() : 1;
}
