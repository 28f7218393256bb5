using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.SideViews;

/// <summary>
/// What there is to draw of a car from the side, in SI: ahead of the rear wheel centre and above the ground, m. What is
/// not known is null or left out, so that part files and files with errors can be drawn too.
/// </summary>
public sealed record SideViewScene
{
    /// <summary>Wheelbase, m; null when it is not known.</summary>
    public double? Wheelbase { get; init; }

    /// <summary>The rear wheel; null when its height is not known.</summary>
    public SceneWheel? RearWheel { get; init; }

    /// <summary>The front wheel; null when its height is not known.</summary>
    public SceneWheel? FrontWheel { get; init; }

    /// <summary>The whole car's centre of gravity; null when it is not known.</summary>
    public Point? CentreOfGravity { get; init; }

    /// <summary>How far the height of the centre of gravity may be off, nineteen times in twenty, m; 0 when no doubt was entered.</summary>
    public double CentreOfGravityDoubt { get; init; }

    /// <summary>The bars of the linkage.</summary>
    public IReadOnlyList<SceneBar> Bars { get; init; } = [];

    /// <summary>The holes of the linkage's brackets and of spring and damper mounts.</summary>
    public IReadOnlyList<SceneHole> Holes { get; init; } = [];

    /// <summary>Springs and dampers.</summary>
    public IReadOnlyList<SceneUnit> Units { get; init; } = [];

    /// <summary>Lowest point of the wheelie bar's wheel; null when there is none.</summary>
    public Point? WheelieBar { get; init; }

    /// <summary>Where ballast sits.</summary>
    public IReadOnlyList<Point> Ballast { get; init; } = [];

    /// <summary>Percent, instant centre and bar angles; null when they cannot be worked out.</summary>
    public StaticLine? Line { get; init; }

    /// <summary>All points as they were entered.</summary>
    public IReadOnlyList<EnteredPoint> Entered { get; init; } = [];

    /// <summary>Whether it is the standing car with its settings; otherwise the car as measured.</summary>
    public bool IsStanding { get; init; }

    /// <summary>A scenario's side view: the standing car where all of it is known, otherwise the car as measured.</summary>
    /// <param name="scenario">The scenario.</param>
    public static SideViewScene Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Car is { } car && StandingCar.TryFind(car, out StandingCar? standing, out _)
            ? Of(scenario, standing!)
            : AsEntered(scenario.SideView);
    }

    /// <summary>The side view of a scenario's standing car.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="standing">Its standing car.</param>
    public static SideViewScene Of(Scenario scenario, StandingCar standing)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(standing);
        return new SceneBuilder(scenario.SideView, SetUpFrame.Of(standing)).Standing(standing);
    }

    /// <summary>The side view as measured, as far as it is known.</summary>
    /// <param name="entries">What was read of the side view.</param>
    public static SideViewScene AsEntered(SideViewEntries entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        return new SceneBuilder(entries, SetUpFrame.AsMeasured).Measured();
    }
}

/// <summary>A wheel with its tyre.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">The tyre's radius, m: the free one where it is known, so that the ground flattens it; otherwise the loaded one.</param>
public sealed record SceneWheel(Point Centre, double Radius);

/// <summary>A bar.</summary>
/// <param name="Name">What it is called in the trade: <c>lower bar</c>, <c>upper bar</c>, <c>ladder bar</c>.</param>
/// <param name="Axle">Its end on the axle housing; null when it is not known.</param>
/// <param name="Body">Its end on the body; null when it is not known.</param>
public sealed record SceneBar(string Name, Point? Axle, Point? Body);

/// <summary>A hole of a bracket.</summary>
/// <param name="Bracket">The bracket's path, such as <c>rear.linkage.upper.body</c>.</param>
/// <param name="Name">The hole's name.</param>
/// <param name="At">Where it is.</param>
/// <param name="IsInUse">Whether it is the one in use.</param>
public sealed record SceneHole(string Bracket, string Name, Point At, bool IsInUse)
{
    /// <summary>Whether it is one of the linkage, not of a spring or damper.</summary>
    public bool IsOfLinkage => Bracket.StartsWith("rear.linkage.", StringComparison.Ordinal);
}

/// <summary>A spring, a damper, or both on the same mounts.</summary>
/// <param name="Name">What it is: <c>spring</c>, <c>damper</c>, <c>spring and damper</c>.</param>
/// <param name="Axle">Its mount on the axle housing.</param>
/// <param name="Body">Its mount on the body.</param>
public sealed record SceneUnit(string Name, Point Axle, Point Body);
