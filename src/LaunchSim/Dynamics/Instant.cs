using LaunchSim.Geometry;

namespace LaunchSim.Dynamics;

/// <summary>
/// Everything that the equations of motion compute at one instant on the way to the accelerations; forces of both sides
/// together, vectors in the body's axes unless said otherwise.
/// </summary>
public struct Instant
{
    /// <summary>The linkage's pose.</summary>
    public LinkagePose Pose;

    /// <summary>Cosine and sine of the body's pitch θ.</summary>
    public double Cos, Sin;

    /// <summary>The rear tyres.</summary>
    public TireResult RearTire;

    /// <summary>The front tyres.</summary>
    public TireResult FrontTire;

    /// <summary>Heights of the wheel centres over the ground, m.</summary>
    public double RearHeight, FrontHeight;

    /// <summary>Places of the wheel centres along the track X, m.</summary>
    public double RearX, FrontX;

    /// <summary>Horizontal speeds of the wheel centres, m/s.</summary>
    public double RearSpeed, FrontSpeed;

    /// <summary>Grip multipliers γ under the tyres.</summary>
    public double RearTrackGrip, FrontTrackGrip;

    /// <summary>Rear springs: force, N, and unit vector from body mount to axle mount.</summary>
    public double SpringForce, SpringX, SpringZ;

    /// <summary>Rear spring force before it is kept from pulling, N.</summary>
    public double SpringLine;

    /// <summary>Rear dampers: length, m, speed, m/s, tables' resistance, N, and unit vector from body to axle mount.</summary>
    public double DamperLength, DamperSpeed, DamperResistance, DamperX, DamperZ;

    /// <summary>Rear stops: force at the top (pulls the ends together) and at the bottom (pushes them apart), N.</summary>
    public double TopForce, BottomForce;

    /// <summary>Front springs' force before it is kept from pulling, and as it acts, N.</summary>
    public double FrontSpringLine, FrontSpringForce;

    /// <summary>Front dampers: extension from the measured ride height, m, speed, m/s, tables' resistance, N; stops, N.</summary>
    public double FrontExtension, FrontDamperSpeed, FrontDamperResistance, FrontTopForce, FrontBottomForce;

    /// <summary>Wheelie bar: penetration, m, its rate, m/s, force, N, its point from the axle centre, m.</summary>
    public double BarDepth, BarRate, BarForce, BarX, BarZ;

    /// <summary>Carcass torque T_c, N·m.</summary>
    public double CarcassTorque;

    /// <summary>The driveline.</summary>
    public DrivelineOutput Driveline;

    /// <summary>Accelerations: x'', z'' of the sprung CG in the ground frame, θ'', λ'', s''.</summary>
    public double XAcceleration, ZAcceleration, PitchAcceleration, LinkageAcceleration, FrontTravelAcceleration;

    /// <summary>Acceleration of the axle centre, body axes, m/s².</summary>
    public double AxleAccelerationX, AxleAccelerationZ;

    /// <summary>Angular acceleration of the housing φ'', rad/s².</summary>
    public double HousingAcceleration;

    /// <summary>Angular speed of the housing φ', rad/s.</summary>
    public double HousingSpeed;
}
