using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Studies.Comparing;

/// <summary>Where two launches part first.</summary>
/// <param name="Time">When, s, to the millisecond.</param>
/// <param name="IsRear">Whether it is the rear's travel that parts; else the front's.</param>
/// <param name="Before">The gap at that end in the first launch, m: separation, or the front's travel in extension.</param>
/// <param name="After">In the other one.</param>
/// <param name="IsOpening">Whether that end opens there, both launches taken together.</param>
public sealed record Parting(double Time, bool IsRear, double Before, double After, bool IsOpening)
{
    /// <summary>So far apart the two have to be, m: 1/16 in, what a tape shows.</summary>
    public const double Apart = 0.0254 / 16;

    private const double Step = 1e-3;

    /// <summary>Where two launches part first, gap against gap; null when they never do.</summary>
    /// <param name="first">The one.</param>
    /// <param name="other">The other.</param>
    public static Parting? Of(LaunchSolution first, LaunchSolution other)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(other);
        double end = Math.Min(first.Duration, other.Duration);
        for (int i = 0; i * Step <= end && first.Steps > 0 && other.Steps > 0; i++)
        {
            double time = i * Step;
            first.At(time, out Observation one);
            other.At(time, out Observation two);
            double rear = Math.Abs(two.Separation - one.Separation), front = Math.Abs(two.FrontTravel - one.FrontTravel);
            if (Math.Max(rear, front) >= Apart)
            {
                return rear >= front
                    ? new Parting(time, true, one.Separation, two.Separation, one.SeparationRate + two.SeparationRate > 0)
                    : new Parting(time, false, -one.FrontTravel, -two.FrontTravel, one.FrontDamperSpeed + two.FrontDamperSpeed > 0);
            }
        }

        return null;
    }
}
