using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.SideViews;

/// <summary>Puts a scene together from what was entered.</summary>
/// <param name="entries">What was entered.</param>
/// <param name="frame">Where the points are now.</param>
internal sealed class SceneBuilder(SideViewEntries entries, SetUpFrame frame)
{
    private const string Spring = "rear.spring", Damper = "rear.damper", Linkage = "rear.linkage";
    private static readonly string[] FourLinkBars = ["lower", "upper"];

    /// <summary>The car as measured.</summary>
    public SideViewScene Measured()
    {
        double? ahead = entries is { Wheelbase: { } wheelbase, FrontScale: { } front, RearScale: { } rear } ? wheelbase * front / (front + rear) : null;
        return Parts() with
        {
            Wheelbase = entries.Wheelbase,
            RearWheel = entries.RearLoadedRadius is { } height ? new SceneWheel(new Point(0, height), height) : null,
            FrontWheel = entries is { FrontLoadedRadius: { } other, Wheelbase: { } at } ? new SceneWheel(new Point(at, other), other) : null,
            CentreOfGravity = entries.CentreOfGravityHeight is { } up && ahead is { } place ? new Point(place, up) : null,
            Line = MeasuredLine(),
        };
    }

    /// <summary>The standing car.</summary>
    /// <param name="car">The standing car.</param>
    public SideViewScene Standing(StandingCar car)
    {
        var standing = car.Standing;
        return Parts() with
        {
            Wheelbase = standing.Wheelbase,
            RearWheel = new SceneWheel(new Point(0, standing.RearWheelHeight), car.Model.RearTire.FreeRadius),
            FrontWheel = new SceneWheel(new Point(standing.Wheelbase, standing.FrontWheelHeight), car.Model.FrontTire.FreeRadius),
            CentreOfGravity = new Point(standing.Wheelbase * standing.FrontLoad / (standing.FrontLoad + standing.RearLoad), standing.CentreOfGravityHeight),
            Line = car.Line,
            IsStanding = true,
        };
    }

    private SideViewScene Parts()
    {
        // The axle end of a ladder bar is the axle itself.
        Point? axle = entries.RearLoadedRadius is { } height ? frame.Housing(new Point(0, height)) : null;
        SceneBar[] bars = Find(Linkage + ".pivot") is { } pivot
            ? [new SceneBar("ladder bar", axle, frame.Body(pivot))]
            : [.. FourLinkBars.Select(name => new SceneBar($"{name} bar", Moved($"{Linkage}.{name}.axle"), Moved($"{Linkage}.{name}.body"))).Where(bar => bar.Axle is not null || bar.Body is not null)];
        return new SideViewScene
        {
            CentreOfGravityDoubt = entries.Doubts.TryGetValue("car.cg_height", out Doubt doubt) ? doubt.HalfWidth : 0,
            Bars = bars,
            Holes = [.. entries.Points.Where(point => point.Hole.Length > 0).Select(point => new SceneHole(point.Path, point.Hole, Moved(point), point.IsInUse))],
            Units = Units(),
            WheelieBar = Moved("rear.wheelie_bar.wheel"),
            Ballast = [.. entries.Points.Where(point => point.Path.StartsWith("car.ballast[", StringComparison.Ordinal)).Select(Moved)],
            Entered = entries.Points,
        };
    }

    private SceneUnit[] Units()
    {
        Point? springAxle = Moved(Spring + ".axle"), springBody = Moved(Spring + ".body");
        Point? damperAxle = Moved(Damper + ".axle") ?? springAxle, damperBody = Moved(Damper + ".body") ?? springBody;
        bool together = damperAxle == springAxle && damperBody == springBody;
        var units = new List<SceneUnit>();
        if (springAxle is { } from && springBody is { } to)
        {
            units.Add(new SceneUnit(together ? "spring and damper" : "spring", from, to));
        }

        if (!together && damperAxle is { } one && damperBody is { } other)
        {
            units.Add(new SceneUnit("damper", one, other));
        }

        return [.. units];
    }

    private StaticLine? MeasuredLine()
    {
        if (entries is not { Linkage: { } linkage, CentreOfGravityHeight: { } height, Wheelbase: { } wheelbase })
        {
            return null;
        }

        var view = SideView.AsMeasured(linkage, entries.RearLoadedRadius, height, wheelbase);
        return view.CanBeAssembled ? view.Line : null;
    }

    private Point? Find(string path) => entries.Points.FirstOrDefault(point => point.Path == path && point.IsInUse)?.At;

    private Point? Moved(string path) => entries.Points.FirstOrDefault(point => point.Path == path && point.IsInUse) is { } point ? Moved(point) : null;

    private Point Moved(EnteredPoint point) => IsOnHousing(point.Path) ? frame.Housing(point.At) : frame.Body(point.At);

    private static bool IsOnHousing(string path) =>
        path.EndsWith(".axle", StringComparison.Ordinal) || path.StartsWith("rear.wheelie_bar.", StringComparison.Ordinal);
}
