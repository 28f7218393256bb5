using System.Globalization;
using LaunchSim.Dynamics;
using LaunchSim.Integration;

namespace LaunchSim.Launch;

/// <summary>Why a launch did not come to its end.</summary>
/// <param name="Time">How far it came, s.</param>
/// <param name="Part">The part of the car at which it stopped, in the trade's words.</param>
/// <param name="Found">What happened there, a sentence without a full stop.</param>
/// <param name="LookAt">What to look at, likewise.</param>
public sealed record LaunchFailure(double Time, string Part, string Found, string LookAt)
{
    /// <summary>
    /// Most steps of a launch, accepted or not, unless a runner is told otherwise. The example car takes 770 for its 1.8 s, and none of the shipped cars more than
    /// 90,000 for a whole minute at the finest tolerance. What takes more has numbers in it that no car has, and would fill
    /// seconds and gigabytes before it said so.
    /// </summary>
    public const int MostSteps = 120_000;

    // A launch that stops this near to a singular position was stopped by it (squared sine of the angle).
    private const double NearSingular = 1e-3;

    // How many steps before the end are looked through for the part that keeps changing.
    private const int LastSteps = 200;

    private static readonly (string Part, Func<Modes, int> State)[] Parts =
    [
        ("rear damper stops", m => ((int)m.RearTop * 4) + (int)m.RearBottom),
        ("front damper stops", m => ((int)m.FrontTop * 4) + (int)m.FrontBottom),
        ("wheelie bar", m => (int)m.WheelieBar),
        ("rear tyres", m => ((int)m.RearTire * 8) + ((int)m.RearTravel * 2) + (m.RearOnFloor ? 1 : 0)),
        ("front tyres", m => ((int)m.FrontTire * 8) + ((int)m.FrontTravel * 2) + (m.FrontOnFloor ? 1 : 0)),
        ("rear dampers", m => m.RearDamper),
        ("front dampers", m => m.FrontDamper),
        ("rear springs", m => m.RearSpringLoose ? 1 : 0),
        ("front springs", m => m.FrontSpringLoose ? 1 : 0),
        ("clutch", m => ((int)m.Clutch * 2) + (m.Driving ? 1 : 0)),
        ("converter", m => m.ConverterSegment),
        ("engine", m => m.EngineSegment),
    ];

    /// <summary>Why a launch stopped; null when it came to its end or was cancelled.</summary>
    /// <param name="solution">The launch.</param>
    public static LaunchFailure? Of(LaunchSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        LaunchEnd end = solution.End;
        if (end.Completed || end.Status == RunStatus.Cancelled)
        {
            return null;
        }

        if (NearSingularPosition(solution))
        {
            return new(end.Time, "rear linkage", "the upper bar and the axle housing come into one line, where the bars no longer hold the axle",
                "the bars' points, and the dampers' travel, which should end the movement before");
        }

        if (end.Status == RunStatus.StoppedByEvent)
        {
            return new(end.Time, "engine", "the engine came to a stop", "launch speed, engine torque and the converter's capacity factor");
        }

        string part = MostChanging(solution) ?? "car";
        return end.Status switch
        {
            RunStatus.Chattering => new(end.Time, part, "it changes to and fro at one instant without getting on", $"the numbers entered for the {part}"),
            RunStatus.TooManySteps => new(end.Time, part, string.Create(CultureInfo.InvariantCulture, $"the motion is too quick to be followed in {solution.MostSteps:N0} steps"), $"rates and dampings of the {part} that are far too high, masses and inertias that are far too low, and the run's tolerance"),
            _ => new(end.Time, part, "the steps became too small to get on", $"rates and dampings of the {part} that are far too high, and masses and inertias that are far too low"),
        };
    }

    private static bool NearSingularPosition(LaunchSolution solution)
    {
        if (solution.Steps == 0)
        {
            return false;
        }

        Span<double> state = stackalloc double[StateLayout.Count];
        solution.StateAt(solution.Steps - 1, solution.Duration, state);
        return !(solution.Car.Map.Margin(state[StateLayout.Linkage]) > NearSingular);
    }

    private static string? MostChanging(LaunchSolution solution)
    {
        int[] changes = new int[Parts.Length];
        for (int step = Math.Max(1, solution.Steps - LastSteps); step < solution.Steps; step++)
        {
            Modes before = solution.Modes(step - 1), after = solution.Modes(step);
            for (int i = 0; i < changes.Length; i++)
            {
                changes[i] += Parts[i].State(before) != Parts[i].State(after) ? 1 : 0;
            }
        }

        int most = Array.IndexOf(changes, changes.Max());
        return changes[most] > 0 ? Parts[most].Part : null;
    }
}
