using LaunchSim.Charts.SideViews;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.Measure;

/// <summary>Some car to point at: its proportions are drawn to be told apart, not to be copied.</summary>
internal static class SchematicCar
{
    /// <summary>Wheelbase, m.</summary>
    public const double Wheelbase = 2.6;

    /// <summary>The points of the rear end by the scenario keys that take them.</summary>
    public static IReadOnlyDictionary<string, Point> Points { get; } = new Dictionary<string, Point>
    {
        ["rear.linkage.lower.axle"] = new(0.05, 0.20),
        ["rear.linkage.lower.body"] = new(0.56, 0.25),
        ["rear.linkage.upper.axle"] = new(0.08, 0.47),
        ["rear.linkage.upper.body"] = new(0.40, 0.41),
        ["rear.linkage.pivot"] = new(0.56, 0.24),
        ["rear.spring.axle"] = new(-0.10, 0.22),
        ["rear.spring.body"] = new(-0.06, 0.68),
        ["rear.damper.axle"] = new(-0.21, 0.16),
        ["rear.damper.body"] = new(-0.17, 0.74),
        ["rear.wheelie_bar.wheel"] = new(-1.05, 0.07),
    };

    /// <summary>What is shown of it when only the rear end is drawn.</summary>
    public static SideViewWindow Rear { get; } = new(-0.36, 0, 0.66, 0.80);

    /// <summary>The car.</summary>
    /// <param name="linkage">Its linkage.</param>
    public static SideViewScene Scene(LinkageKind linkage)
    {
        var axle = new Point(0, 0.33);
        return new SideViewScene
        {
            Wheelbase = Wheelbase,
            RearWheel = new SceneWheel(axle, 0.345),
            FrontWheel = new SceneWheel(new Point(Wheelbase, 0.31), 0.32),
            CentreOfGravity = new Point(1.35, 0.54),
            WheelieBar = Points["rear.wheelie_bar.wheel"],
            Bars = linkage == LinkageKind.LadderBar
                ? [new SceneBar("ladder bar", axle, Points["rear.linkage.pivot"])]
                :
                [
                    new SceneBar("lower bar", Points["rear.linkage.lower.axle"], Points["rear.linkage.lower.body"]),
                    new SceneBar("upper bar", Points["rear.linkage.upper.axle"], Points["rear.linkage.upper.body"]),
                ],
            Units =
            [
                new SceneUnit("spring", Points["rear.spring.axle"], Points["rear.spring.body"]),
                new SceneUnit("damper", Points["rear.damper.axle"], Points["rear.damper.body"]),
            ],
        };
    }
}
