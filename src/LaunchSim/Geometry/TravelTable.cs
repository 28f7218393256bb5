namespace LaunchSim.Geometry;

/// <summary>The static line with the body moved straight up or down.</summary>
/// <param name="BodyUp">How much higher the body is than standing, m; negative is lower.</param>
/// <param name="Line">The static line there, with the height of the centre of gravity and the wheelbase of the standing car.</param>
/// <param name="PinionChange">Change of the housing's angle since standing, rad, pinion nose up positive.</param>
public sealed record TravelRow(double BodyUp, StaticLine Line, double PinionChange);

/// <summary>
/// Percent and instant centre through the travel: the body moved straight up and down at standing pitch, the rear wheel
/// centre kept at its standing height.
/// </summary>
public static class TravelTable
{
    /// <summary>The rows that the linkage reaches, lowest body first.</summary>
    /// <param name="view">The side view; its rear wheel height must be the car's own.</param>
    /// <param name="step">Distance between rows, m; above 0.</param>
    /// <param name="down">Rows below standing.</param>
    /// <param name="up">Rows above standing.</param>
    /// <param name="within">Whether a position is within the dampers' travel; null when that is not known.</param>
    public static IReadOnlyList<TravelRow> Of(SideView view, double step, int down, int up, Func<LinkagePose, bool>? within = null)
    {
        ArgumentNullException.ThrowIfNull(view);
        List<TravelRow> rows = Way(view, -step, down, within);
        rows.Reverse();
        rows.Add(Row(view, view.Lambda, 0));
        rows.AddRange(Way(view, step, up, within));
        return rows;
    }

    private static List<TravelRow> Way(SideView view, double step, int count, Func<LinkagePose, bool>? within)
    {
        var rows = new List<TravelRow>();
        double lambda = view.Lambda;
        for (int i = 1; i <= count; i++)
        {
            lambda = Solve(view, lambda, i * step);
            if (!double.IsFinite(lambda) || !(view with { Lambda = lambda }).CanBeAssembled)
            {
                break;
            }

            view.Map.Pose(lambda, out LinkagePose pose);
            if (within is not null && !within(pose))
            {
                break;
            }

            rows.Add(Row(view, lambda, i * step));
        }

        return rows;
    }

    private static TravelRow Row(SideView view, double lambda, double bodyUp)
    {
        view.Map.Pose(view.Lambda, out LinkagePose standing);
        view.Map.Pose(lambda, out LinkagePose pose);
        return new TravelRow(bodyUp, (view with { Lambda = lambda }).Line, pose.Angle - standing.Angle);
    }

    /// <summary>The λ at which the body is higher by so much, found from a near one; not a number when there is none.</summary>
    private static double Solve(SideView view, double lambda, double bodyUp)
    {
        (double sin, double cos) = Math.SinCos(view.Pitch);
        view.Map.Pose(view.Lambda, out LinkagePose standing);
        double wanted = (sin * standing.X) + (cos * standing.Z) - bodyUp;
        for (int i = 0; i < 50; i++)
        {
            view.Map.Pose(lambda, out LinkagePose pose);
            double step = (wanted - (sin * pose.X) - (cos * pose.Z)) / ((sin * pose.X1) + (cos * pose.Z1));
            if (!double.IsFinite(step))
            {
                return double.NaN;
            }

            lambda += Math.Clamp(step, -0.2, 0.2);
            if (Math.Abs(step) < 1e-13)
            {
                return lambda;
            }
        }

        return double.NaN;
    }
}
