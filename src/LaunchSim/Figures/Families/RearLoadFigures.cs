using LaunchSim.Dynamics;

namespace LaunchSim.Figures.Families;

/// <summary>What the launch does to the rear tyres' load: the hit, what it is made of, the low point after it, the unrest.</summary>
internal sealed class RearLoadFigures : IFigureFamily
{
    private const double HitWindow = 0.3;
    private const int UnrestFrom = 50, HalfWidth = 50;

    private static readonly FigureDefinition
        Hit = new("hit_n", "Hit", FigureUnit.Force, "largest rear tyre load in the first 0.3 s, axle"),
        HitTime = new("hit_time_s", "Hit at", FigureUnit.Time, "when that is"),
        Links = new("hit_via_links_n", "Hit via the links", FigureUnit.Force, "change of the rear tyre load since standing that comes via the links, at the hit, axle"),
        Springs = new("hit_via_springs_n", "Hit via the springs", FigureUnit.Force, "the same via the springs"),
        Dampers = new("hit_via_dampers_n", "Hit via the dampers", FigureUnit.Force, "the same via dampers and stops"),
        Other = new("hit_via_other_n", "Hit via other", FigureUnit.Force, "the same via wheelie bar and the axle's own inertia"),
        Lowest = new("lowest_rear_load_after_hit_n", "Lowest rear load after the hit", FigureUnit.Force, "lowest rear tyre load from the hit to the end of the run, axle"),
        LowestTime = new("lowest_rear_load_after_hit_time_s", "Lowest rear load after the hit, at", FigureUnit.Time, "when that is"),
        Unrest = new("load_unrest_n", "Load unrest", FigureUnit.Force,
            "root mean square, from 0.05 s to the end, of the rear tyre load less its centred mean over 0.1 s, axle");

    public string Title => "Rear tyre load";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Hit, HitTime, Links, Springs, Dampers, Other, Lowest, LowestTime, Unrest];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        if (launch.Nodes == 0)
        {
            foreach (FigureDefinition figure in Definitions)
            {
                figures.None(figure, NoFigure.NoRun);
            }

            return;
        }

        if (figures.Wants(Hit, HitTime, Links, Springs, Dampers, Other, Lowest, LowestTime))
        {
            ReadHit(launch, figures);
        }

        if (figures.Wants(Unrest))
        {
            figures.Set(Unrest, LoadUnrest(launch), NoFigure.TooShort);
        }
    }

    private static void ReadHit(LaunchReading launch, FigureWriter figures)
    {
        Extremum hit = launch.Largest(Signal.RearLoad, 0, HitWindow);
        figures.Set(Hit, hit.Value);
        figures.Set(HitTime, hit.Time);
        if (figures.Wants(Links, Springs, Dampers, Other))
        {
            launch.Solution.At(hit.Step, hit.Time, out Observation seen);
            figures.Set(Links, seen.LoadViaLinks);
            figures.Set(Springs, seen.LoadViaSprings);
            figures.Set(Dampers, seen.LoadViaDampers);
            figures.Set(Other, seen.LoadViaOther);
        }

        if (figures.Wants(Lowest, LowestTime))
        {
            Extremum lowest = launch.SmallestAfter(Signal.RearLoad, hit);
            figures.Set(Lowest, lowest.Value);
            figures.Set(LowestTime, lowest.Time);
        }
    }

    /// <summary>
    /// Over whole milliseconds: the mean is that of the 101 samples around each, fewer where the run begins or ends.
    /// </summary>
    private static double LoadUnrest(LaunchReading launch)
    {
        ReadOnlySpan<double> load = launch.Column(Signal.RearLoad);
        ReadOnlySpan<int> nodes = launch.GridNodes;
        int rows = nodes.Length;
        double sum = 0, squares = 0;
        int low = 0, high = 0;
        for (int row = UnrestFrom; row < rows; row++)
        {
            for (; high < rows && high <= row + HalfWidth; high++)
            {
                sum += load[nodes[high]];
            }

            for (; low < row - HalfWidth; low++)
            {
                sum -= load[nodes[low]];
            }

            double unrest = load[nodes[row]] - (sum / (high - low));
            squares += unrest * unrest;
        }

        return rows > UnrestFrom ? Math.Sqrt(squares / (rows - UnrestFrom)) : double.NaN;
    }
}
