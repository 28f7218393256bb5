using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>
/// The side view of one car at rest: its linkage and where it stands. Everything that is read off a drawing of the side
/// view comes from here, whether the whole car is known or only its linkage.
/// </summary>
public sealed record SideView
{
    // Margin (squared sine of the angle between upper bar and housing) below which a position counts as singular.
    private const double LeastMargin = 1e-6;

    // Percent, instant centre and bars of a car as measured do not depend on the wheel centre's height: only the contact
    // point and the linkage's points enter. Any height does for a car whose loaded radius is not known.
    private const double AnyWheelHeight = 0.3;

    /// <summary>The linkage as measured.</summary>
    public required Linkage Linkage { get; init; }

    /// <summary>The linkage's map.</summary>
    public required ILinkageMap Map { get; init; }

    /// <summary>Where the linkage stands, rad since measured.</summary>
    public double Lambda { get; init; }

    /// <summary>Pitch of the body since measured, rad, nose up positive.</summary>
    public double Pitch { get; init; }

    /// <summary>Height of the rear wheel centre over the ground, m.</summary>
    public required double RearWheelHeight { get; init; }

    /// <summary>Height h of the whole car's centre of gravity over the ground, m.</summary>
    public required double CentreOfGravityHeight { get; init; }

    /// <summary>Wheelbase L, m.</summary>
    public required double Wheelbase { get; init; }

    /// <summary>Percent, instant centre, bar angles and neutral line.</summary>
    public StaticLine Line => StaticLine.At(Map, Lambda, Pitch, RearWheelHeight, CentreOfGravityHeight, Wheelbase);

    /// <summary>The side view of a car as measured.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="rearWheelHeight">Height of the rear wheel centre over the floor, m; null when it is not known.</param>
    /// <param name="centreOfGravityHeight">Height h of the whole car's centre of gravity, m.</param>
    /// <param name="wheelbase">Wheelbase L, m.</param>
    public static SideView AsMeasured(Linkage linkage, double? rearWheelHeight, double centreOfGravityHeight, double wheelbase)
    {
        double height = rearWheelHeight ?? AnyWheelHeight;
        return new SideView
        {
            Linkage = linkage,
            Map = LinkageMaps.Create(linkage, new Point(0, height), new Point(0, 0)),
            RearWheelHeight = height,
            CentreOfGravityHeight = centreOfGravityHeight,
            Wheelbase = wheelbase,
        };
    }

    /// <summary>Whether the linkage can be put together where it stands, away from a singular position.</summary>
    public bool CanBeAssembled
    {
        get
        {
            Map.Pose(Lambda, out LinkagePose pose);
            return Map.Margin(Lambda) > LeastMargin && double.IsFinite(pose.Z1) && Map.Bars(Lambda).All(bar => bar.Length > 0);
        }
    }
}
