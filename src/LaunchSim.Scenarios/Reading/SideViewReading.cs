using LaunchSim.Scenarios.Schema;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Values → what they say of the side view, however many of them were refused.</summary>
internal static class SideViewReading
{
    private static readonly string[] Always = ["car.wheelbase", "car.scales.front", "car.scales.rear", "car.cg_height", "rear.linkage.type"];
    private static readonly string[] FourLink = ["rear.linkage.lower.axle", "rear.linkage.lower.body", "rear.linkage.upper.axle", "rear.linkage.upper.body"];
    private static readonly string[] LadderBar = ["rear.linkage.pivot"];

    public static SideViewEntries Of(BoundValues values)
    {
        var points = new List<EnteredPoint>();
        foreach (Bound bound in values.All)
        {
            if (bound.Holes is { } holes)
            {
                points.AddRange(holes.Select(hole => new EnteredPoint(bound.Path, hole.Key, hole.Key == bound.Use, hole.Value.Point(), Written(hole.Value))));
            }
            else if (bound.Key.Kind is PointKind)
            {
                points.Add(new EnteredPoint(bound.Path, "", true, bound.Point(), Written(bound)));
            }
        }

        string[] needed = values.Find("rear.linkage.type")?.Text switch
        {
            "four-link" => FourLink,
            "ladder-bar" => LadderBar,
            _ => [],
        };
        string[] notRead = [.. Always.Concat(needed).Where(path => values.Find(path) is null)];
        return new SideViewEntries
        {
            Name = values.Find("name")?.Text.Trim() ?? "",
            UnitSystem = ScenarioParts.UnitSystem(values),
            Wheelbase = values.FindNumber("car.wheelbase"),
            FrontScale = values.FindNumber("car.scales.front"),
            RearScale = values.FindNumber("car.scales.rear"),
            CentreOfGravityHeight = values.FindNumber("car.cg_height"),
            FrontLoadedRadius = values.FindNumber("front.tire.loaded_radius"),
            RearLoadedRadius = values.FindNumber("rear.tire.loaded_radius"),
            Linkage = needed.Length > 0 && !needed.Intersect(notRead).Any() ? new CarBuilder(values).Linkage() : null,
            Points = points,
            Doubts = ScenarioParts.Doubts(values),
            NotRead = notRead,
        };
    }

    private static string Written(Bound bound) => bound.Node is ScalarNode scalar ? scalar.Text.Trim()
        : bound.Up is { } up ? $"{bound.Quantity} ahead, {up} up"
        : $"{bound.Quantity}";
}
