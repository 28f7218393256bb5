using LaunchSim.Geometry;

namespace LaunchSim.Launch;

/// <summary>Looks for singular positions of the linkage inside the damper's travel.</summary>
internal static class LinkageRange
{
    /// <summary>Margin (squared sine of the angle between upper bar and housing) below which a position counts as singular.</summary>
    public const double LeastMargin = 1e-6;

    private const double Step = 0.002;
    private const double Farthest = 1.6;

    /// <summary>
    /// Turns the linkage both ways from the measured position until the damper reaches its stop, and reports a singular
    /// position met before. Where the damper itself comes to a dead centre its stop cannot be reached; the search ends there.
    /// </summary>
    public static void Check(ILinkageMap map, TwoPointUnit damper, double shortest, double longest, List<StandingProblem> problems)
    {
        foreach (int way in (ReadOnlySpan<int>)[1, -1])
        {
            double before = double.NaN;
            for (int i = 0; i * Step <= Farthest; i++)
            {
                double lambda = way * i * Step;
                map.Pose(lambda, out LinkagePose pose);
                damper.At(pose, out double length, out double arm, out _, out _);
                if (!(map.Margin(lambda) > LeastMargin) || !double.IsFinite(length))
                {
                    problems.Add(new(
                        "rear.linkage",
                        $"The linkage meets a singular position inside the damper's travel, with the lower bar turned by {lambda * 180 / Math.PI:0.#}°.",
                        "Check the bars' points and the damper's travel."));
                    return;
                }

                if (length >= longest || length <= shortest || (i > 0 && arm * before <= 0))
                {
                    break;
                }

                before = arm;
            }
        }
    }
}
