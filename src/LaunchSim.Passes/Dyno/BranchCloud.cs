namespace LaunchSim.Passes.Dyno;

/// <summary>The force at one speed out of one run.</summary>
/// <param name="Mean">Of both branches, N.</param>
/// <param name="HalfDifference">Half of speeding up less slowing down, N; not a number where they cannot be told apart.</param>
/// <param name="Scatter">One standard deviation of single points about their branch, N; not a number where there are too few.</param>
internal readonly record struct BranchValue(double Mean, double HalfDifference, double Scatter);

/// <summary>The points of one side of one run by speed, speeding up and slowing down apart.</summary>
internal sealed class BranchCloud
{
    // For a line with scatter about it.
    private const int FewestPoints = 4;

    private readonly List<(double Speed, double Force)>[] _branches;

    public BranchCloud(DamperMeasurement measurement, int sign)
    {
        // One branch where rows are no strokes.
        _branches = measurement.IsLoop ? [[], []] : [[]];
        IReadOnlyList<double> velocities = measurement.Velocities;
        for (int i = 0; i < velocities.Count; i++)
        {
            if (velocities[i] * sign <= 0)
            {
                continue;
            }

            double before = Math.Abs(velocities[Math.Max(0, i - 1)]), after = Math.Abs(velocities[Math.Min(velocities.Count - 1, i + 1)]);
            _branches[_branches.Length > 1 && after < before ? 1 : 0].Add((velocities[i] * sign, measurement.Resistance(i)));
        }

        _branches = [.. _branches.Where(branch => branch.Count > 0)];
        foreach (List<(double Speed, double Force)> branch in _branches)
        {
            branch.Sort((a, b) => a.Speed.CompareTo(b.Speed));
        }
    }

    public int Count => _branches.Sum(branch => branch.Count);

    /// <summary>How fast it went, m/s; as far as both branches reach.</summary>
    public double Fastest => _branches.Length == 0 ? 0 : _branches.Min(branch => branch[^1].Speed);

    /// <summary>The force at a speed, from the points no farther than a window from it.</summary>
    public BranchValue At(double speed, double window)
    {
        (double Value, double Scatter)[] found = [.. _branches.Select(branch => Line(branch, speed, window))];
        double[] scatters = [.. found.Select(one => one.Scatter).Where(scatter => !double.IsNaN(scatter))];
        return new BranchValue(
            found.Average(one => one.Value),
            found.Length == 2 ? (found[0].Value - found[1].Value) / 2 : double.NaN,
            scatters.Length == 0 ? double.NaN : Math.Sqrt(scatters.Average(scatter => scatter * scatter)));
    }

    private static (double Value, double Scatter) Line(List<(double Speed, double Force)> branch, double speed, double window)
    {
        List<(double Speed, double Force)> near = [.. branch.Where(point => Math.Abs(point.Speed - speed) <= window)];
        bool isAround = near.Count >= FewestPoints && near[0].Speed <= speed && near[^1].Speed >= speed && near[^1].Speed > near[0].Speed;
        if (!isAround)
        {
            return (Between(branch, speed), double.NaN);
        }

        double x = near.Average(point => point.Speed - speed), y = near.Average(point => point.Force);
        double slope = near.Sum(point => (point.Speed - speed - x) * (point.Force - y)) / near.Sum(point => (point.Speed - speed - x) * (point.Speed - speed - x));
        double squares = near.Sum(point => Math.Pow(point.Force - y - (slope * (point.Speed - speed - x)), 2));
        return (y - (slope * x), Math.Sqrt(squares / (near.Count - 2)));
    }

    /// <summary>Between the neighbours; from a standstill on nothing is the lower one.</summary>
    private static double Between(List<(double Speed, double Force)> branch, double speed)
    {
        int above = branch.FindIndex(point => point.Speed >= speed);
        if (above < 0)
        {
            return branch[^1].Force;
        }

        (double Speed, double Force) low = above == 0 ? (0, 0) : branch[above - 1], high = branch[above];
        return high.Speed == low.Speed ? high.Force : low.Force + ((high.Force - low.Force) * (speed - low.Speed) / (high.Speed - low.Speed));
    }
}
