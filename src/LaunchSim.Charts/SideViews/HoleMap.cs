using LaunchSim.Geometry;
using LaunchSim.Reports;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.SideViews;

/// <summary>The choices of holes and the piece of the world that shows their instant centres.</summary>
internal sealed class HoleMap
{
    // In wheelbases: where an instant centre may lie to be shown.
    private const double Behind = 0.5, Ahead = 1.8, Below = 0.3, Above = 0.7;

    // Where there are many, a few far away must not shrink all others to a heap: times the middle one's distance.
    private const int Many = 12;
    private const double Farther = 2.2;

    /// <summary>Sorts a report's choices.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="scene">The scene.</param>
    public HoleMap(GeometryReport report, SideViewScene scene)
    {
        (Report, Scene) = (report, scene);
        Rows = [.. report.Holes.Where(row => row.Line is not null)];
        double wheelbase = report.View.Wheelbase;
        var near = new SideViewWindow(-Behind * wheelbase, -Below * wheelbase, Farthest(wheelbase), Above * wheelbase);
        Shown = [.. Rows.Where(row => Centre(row) is { } centre && near.Holds(centre))];

        SideViewWindow window = SideViewWindow.Rear(scene, hasUnits: false).With(new Point(0, 0), 0.02 * wheelbase) with { Bottom = 0 };
        foreach (HoleRow row in Shown)
        {
            SideViewWindow wider = window.With(Centre(row)!.Value, 0.03 * wheelbase);
            window = wider with { Bottom = Math.Min(0, wider.Bottom) };
        }

        Window = window;
    }

    /// <summary>What the side view tells.</summary>
    public GeometryReport Report { get; }

    /// <summary>The scene.</summary>
    public SideViewScene Scene { get; }

    /// <summary>The choices that can be put together, rising in percent.</summary>
    public IReadOnlyList<HoleRow> Rows { get; }

    /// <summary>Those whose instant centre is near enough to be shown.</summary>
    public IReadOnlyList<HoleRow> Shown { get; }

    /// <summary>What is shown.</summary>
    public SideViewWindow Window { get; }

    /// <summary>Those shown, in the order in which they are to be named: the present one, the lowest and the highest percent, then outwards from the present one.</summary>
    public IEnumerable<HoleRow> InOrder()
    {
        double now = Report.View.Line.Percent;
        HoleRow? low = Shown.Count > 0 ? Shown[0] : null, high = Shown.Count > 0 ? Shown[^1] : null;
        return Shown.OrderByDescending(row => row.Present).ThenByDescending(row => row == low || row == high).ThenBy(row => Math.Abs(row.Line!.Percent - now));
    }

    private double Farthest(double wheelbase)
    {
        double[] ahead = [.. Rows.Select(Centre).OfType<Point>().Select(point => point.Ahead).Where(ahead => ahead > 0).Order()];
        double now = Report.View.Line.InstantCentreAhead;
        return ahead.Length <= Many ? Ahead * wheelbase
            : Math.Min(Ahead * wheelbase, Math.Max(Farther * ahead[ahead.Length / 2], double.IsFinite(now) ? 1.1 * now : 0));
    }

    /// <summary>A choice's name: hole by hole.</summary>
    /// <param name="row">The choice.</param>
    public string Name(HoleRow row) => Report.Brackets.Count == 1 ? $"{PointWords.Bracket(Report.Brackets[0])} {row.Holes[0]}" : string.Join(" / ", row.Holes);

    /// <summary>A choice's instant centre, where it has one.</summary>
    /// <param name="row">The choice.</param>
    public static Point? Centre(HoleRow row) => row.Line is { } line && double.IsFinite(line.InstantCentreAhead) && double.IsFinite(line.InstantCentreUp)
        ? new Point(line.InstantCentreAhead, line.InstantCentreUp) : null;
}
