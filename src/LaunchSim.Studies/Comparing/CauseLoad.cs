using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Studies.Comparing;

/// <summary>A way on which load comes to the rear tyres, or is taken from them.</summary>
public enum LoadPath
{
    /// <summary>What they carry standing.</summary>
    Standing,

    /// <summary>The links, or the ladder bars.</summary>
    Links,

    /// <summary>The springs.</summary>
    Springs,

    /// <summary>The dampers with their stops.</summary>
    Dampers,

    /// <summary>The wheelie bar and the axle's own inertia.</summary>
    Other,
}

/// <summary>The rear tyres' load by path, N, axle: standing and the changes since then add up to the load.</summary>
/// <param name="Standing">The standing car's.</param>
/// <param name="Links">What the links add.</param>
/// <param name="Springs">What the springs add.</param>
/// <param name="Dampers">What dampers and stops add.</param>
/// <param name="Other">What wheelie bar and inertia add.</param>
/// <param name="Stops">Force on the rear dampers' stops, both sides, not negative: whether they have a share in it.</param>
public readonly record struct LoadShares(double Standing, double Links, double Springs, double Dampers, double Other, double Stops)
{
    /// <summary>The load.</summary>
    public double Load => Standing + Links + Springs + Dampers + Other;

    /// <summary>One path's share.</summary>
    /// <param name="path">The path.</param>
    public double this[LoadPath path] => path switch
    {
        LoadPath.Standing => Standing,
        LoadPath.Links => Links,
        LoadPath.Springs => Springs,
        LoadPath.Dampers => Dampers,
        _ => Other,
    };

    /// <summary>The shares at one instant.</summary>
    /// <param name="standing">The standing car's load, N.</param>
    /// <param name="seen">The launch at that instant.</param>
    public static LoadShares Of(double standing, in Observation seen) =>
        new(standing, seen.LoadViaLinks, seen.LoadViaSprings, seen.LoadViaDampers, seen.LoadViaOther, 2 * (seen.RearTopForce + seen.RearBottomForce));

    /// <summary>The shares at the instant of a figure. At a jump the side that has the figure's load.</summary>
    /// <param name="solution">The launch.</param>
    /// <param name="time">The figure's instant, s.</param>
    /// <param name="load">The figure's load, N.</param>
    public static LoadShares At(LaunchSolution solution, double time, double load)
    {
        ArgumentNullException.ThrowIfNull(solution);
        double standing = solution.Car.Standing.RearLoad;
        int step = solution.Find(time);
        solution.At(step, time, out Observation after);
        if (step > 0 && solution.Step(step - 1).End >= time)
        {
            solution.At(step - 1, time, out Observation before);
            if (Math.Abs(before.RearLoad - load) < Math.Abs(after.RearLoad - load))
            {
                return Of(standing, before);
            }
        }

        return Of(standing, after);
    }

    /// <summary>The shares on the mean from the release to an instant.</summary>
    /// <param name="solution">The launch.</param>
    /// <param name="until">The instant, s, above 0.</param>
    public static LoadShares Mean(LaunchSolution solution, double until)
    {
        ArgumentNullException.ThrowIfNull(solution);
        double links = 0, springs = 0, dampers = 0, other = 0, stops = 0;
        Quadrature.Over(solution, 0, until, (in Observation seen, double weight) =>
        {
            double share = weight / until;
            links += share * seen.LoadViaLinks;
            springs += share * seen.LoadViaSprings;
            dampers += share * seen.LoadViaDampers;
            other += share * seen.LoadViaOther;
            stops += share * 2 * (seen.RearTopForce + seen.RearBottomForce);
        });
        return new LoadShares(solution.Car.Standing.RearLoad, links, springs, dampers, other, stops);
    }
}

/// <summary>When in a launch the rear tyres' loads are compared.</summary>
public enum LoadMoment
{
    /// <summary>At each launch's own hit.</summary>
    Hit,

    /// <summary>On the mean from the release on.</summary>
    First,

    /// <summary>At each launch's own low point after the hit.</summary>
    LowPoint,
}

/// <summary>The rear tyres' load in two launches at one of its moments.</summary>
/// <param name="Moment">When.</param>
/// <param name="Before">In the first launch.</param>
/// <param name="After">In the other one.</param>
public sealed record LoadChange(LoadMoment Moment, LoadShares Before, LoadShares After)
{
    private static readonly LoadPath[] Paths = Enum.GetValues<LoadPath>();

    /// <summary>How much more the tyres carry in the other launch, N.</summary>
    public double Change => After.Load - Before.Load;

    /// <summary>The path that goes with the change and changes most: the reason for it.</summary>
    public LoadPath Reason => Paths.MaxBy(path => Math.Sign(Change) * Of(path));

    /// <summary>The path that goes most against the change.</summary>
    public LoadPath Against => Paths.MinBy(path => Math.Sign(Change) * Of(path));

    /// <summary>How much more comes on a path in the other launch, N.</summary>
    /// <param name="path">The path.</param>
    public double Of(LoadPath path) => After[path] - Before[path];
}
