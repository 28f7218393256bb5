using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Studies.Comparing;

/// <summary>Which dampers move which way.</summary>
public enum DamperMotion
{
    /// <summary>The rear ones get longer: extension.</summary>
    RearOpening,

    /// <summary>The rear ones get shorter: compression.</summary>
    RearClosing,

    /// <summary>The front ones get longer.</summary>
    FrontOpening,

    /// <summary>The front ones get shorter.</summary>
    FrontClosing,
}

/// <summary>What the dampers of one end do while they move one way, both sides together, by their tables and without their stops.</summary>
/// <param name="Impulse">∫ |force| dt, N·s.</param>
/// <param name="Energy">∫ |force · speed| dt, J.</param>
public readonly record struct DamperWork(double Impulse, double Energy)
{
    /// <summary>What all dampers do in a stretch of a launch, in the order of <see cref="DamperMotion"/>.</summary>
    /// <param name="solution">The launch.</param>
    /// <param name="from">Where it begins, s.</param>
    /// <param name="until">Where it ends, s.</param>
    public static DamperWork[] Of(LaunchSolution solution, double from, double until)
    {
        ArgumentNullException.ThrowIfNull(solution);
        var work = new DamperWork[4];
        Quadrature.Over(solution, from, until, (in Observation seen, double weight) =>
        {
            Add(seen.RearDamperSpeed, seen.RearDamperForce, DamperMotion.RearOpening, DamperMotion.RearClosing, weight);
            Add(seen.FrontDamperSpeed, seen.FrontDamperForce, DamperMotion.FrontOpening, DamperMotion.FrontClosing, weight);
        });
        return work;

        void Add(double speed, double force, DamperMotion opening, DamperMotion closing, double weight)
        {
            ref DamperWork own = ref work[(int)(speed > 0 ? opening : closing)];
            double both = 2 * Math.Abs(force) * weight;
            own = new DamperWork(own.Impulse + both, own.Energy + (both * Math.Abs(speed)));
        }
    }
}

/// <summary>What the dampers of one end do while they move one way, in two launches.</summary>
/// <param name="Motion">Which dampers, which way.</param>
/// <param name="From">Where the stretch of time begins, s.</param>
/// <param name="Until">Where it ends, s.</param>
/// <param name="Before">In the first launch.</param>
/// <param name="After">In the other one.</param>
public sealed record DamperChange(DamperMotion Motion, double From, double Until, DamperWork Before, DamperWork After)
{
    /// <summary>Change of the force on the mean over the whole stretch of time, both sides, N.</summary>
    public double MeanForce => (After.Impulse - Before.Impulse) / (Until - From);

    /// <summary>Change of the energy taken, both sides, J.</summary>
    public double Energy => After.Energy - Before.Energy;
}
