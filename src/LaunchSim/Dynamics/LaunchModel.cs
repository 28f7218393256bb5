using LaunchSim.Geometry;

namespace LaunchSim.Dynamics;

/// <summary>
/// The numbers of one standing car as the equations of motion need them: immutable, shared by any number of runs.
/// Body axes are those of the car as measured, with the origin at the sprung CG; units of both sides are added up.
/// Built by <c>Launch.StandingCar</c>.
/// </summary>
public sealed class LaunchModel
{
    /// <summary>Gravity, m/s² (NIST SP 811, exact).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Sprung mass m_s with ballast, kg.</summary>
    public required double SprungMass { get; init; }

    /// <summary>Pitch inertia I_s of the sprung body with ballast about its own CG, kg·m².</summary>
    public required double PitchInertia { get; init; }

    /// <summary>Rear unsprung mass m_r, kg.</summary>
    public required double RearMass { get; init; }

    /// <summary>Pitch inertia I_h of the housing about the axle centreline, kg·m².</summary>
    public required double HousingInertia { get; init; }

    /// <summary>Front unsprung mass m_f, kg.</summary>
    public required double FrontMass { get; init; }

    /// <summary>Spin inertias: rims J_rim, belts J_belt, front wheels J_f, kg·m².</summary>
    public required double RimInertia { get; init; }

    /// <summary>J_belt, kg·m².</summary>
    public required double BeltInertia { get; init; }

    /// <summary>J_f, kg·m².</summary>
    public required double FrontSpinInertia { get; init; }

    /// <summary>Front wheel centre at s = 0, body axes, m: forward.</summary>
    public required double FrontX { get; init; }

    /// <summary>Front wheel centre at s = 0, body axes, m: upward.</summary>
    public required double FrontZ { get; init; }

    /// <summary>Rear tyres.</summary>
    public required TireForce RearTire { get; init; }

    /// <summary>Front tyres.</summary>
    public required TireForce FrontTire { get; init; }

    /// <summary>Torsional rate of both carcasses, N·m/rad.</summary>
    public required double CarcassRate { get; init; }

    /// <summary>Torsional damping of both carcasses, N·m·s/rad.</summary>
    public required double CarcassDamping { get; init; }

    /// <summary>Rear spring between its mounts.</summary>
    public required TwoPointUnit Spring { get; init; }

    /// <summary>Rate of both rear springs, N/m.</summary>
    public required double SpringRate { get; init; }

    /// <summary>Force of both rear springs in the standing car, N.</summary>
    public required double SpringPreload { get; init; }

    /// <summary>Length of a rear spring in the standing car ℓ0, m.</summary>
    public required double SpringLength { get; init; }

    /// <summary>Rear damper between its mounts.</summary>
    public required TwoPointUnit Damper { get; init; }

    /// <summary>Length of a rear damper at which it tops out, m.</summary>
    public required double TopLength { get; init; }

    /// <summary>Length of a rear damper at which it bottoms, m.</summary>
    public required double BottomLength { get; init; }

    /// <summary>Both rear dampers' stops.</summary>
    public required OneSidedContact RearStop { get; init; }

    /// <summary>Rate of both front springs, N/m of spring.</summary>
    public required double FrontSpringRate { get; init; }

    /// <summary>Force of both front springs in the standing car, N.</summary>
    public required double FrontSpringPreload { get; init; }

    /// <summary>Front spring motion ratio.</summary>
    public required double FrontSpringRatio { get; init; }

    /// <summary>Front damper motion ratio m.</summary>
    public required double FrontDamperRatio { get; init; }

    /// <summary>Extension of a front damper from the measured ride height to its top stop, m.</summary>
    public required double FrontExtend { get; init; }

    /// <summary>Compression of a front damper from the measured ride height to its bottom stop, m.</summary>
    public required double FrontCompress { get; init; }

    /// <summary>Both front dampers' stops.</summary>
    public required OneSidedContact FrontStop { get; init; }

    /// <summary>Whether there is a wheelie bar.</summary>
    public required bool HasWheelieBar { get; init; }

    /// <summary>The bar's lowest point from the axle centre, measured car, m: forward.</summary>
    public required double BarX { get; init; }

    /// <summary>The bar's lowest point from the axle centre, measured car, m: upward.</summary>
    public required double BarZ { get; init; }

    /// <summary>The bar's contact with the ground.</summary>
    public required OneSidedContact Bar { get; init; }

    /// <summary>½·ρ·CdA, kg/m; 0 without drag.</summary>
    public required double HalfDrag { get; init; }

    /// <summary>Height h_a over the ground at which drag acts, m.</summary>
    public required double DragHeight { get; init; }

    /// <summary>Grip multiplier γ against distance.</summary>
    public required PiecewiseLinear TrackGrip { get; init; }

    /// <summary>The standing car: what rises, travels and loads are counted from.</summary>
    public required Standing Standing { get; init; }
}

/// <summary>The standing car in the model's coordinates, and its loads.</summary>
public sealed record Standing
{
    /// <summary>x of the sprung CG, m, with the rear-axle centreline above X = 0.</summary>
    public required double X { get; init; }

    /// <summary>z of the sprung CG over the ground, m.</summary>
    public required double Z { get; init; }

    /// <summary>Pitch θ since measured, rad.</summary>
    public required double Pitch { get; init; }

    /// <summary>λ since measured, rad.</summary>
    public required double Lambda { get; init; }

    /// <summary>Front travel s since measured, m.</summary>
    public required double FrontTravel { get; init; }

    /// <summary>Rear axle load on the ground, N.</summary>
    public required double RearLoad { get; init; }

    /// <summary>Front axle load on the ground, N.</summary>
    public required double FrontLoad { get; init; }

    /// <summary>Height h of the whole car's CG over the ground, m.</summary>
    public required double CentreOfGravityHeight { get; init; }

    /// <summary>Horizontal distance L of the wheel centres, m.</summary>
    public required double Wheelbase { get; init; }

    /// <summary>Height of the rear wheel centre, m.</summary>
    public required double RearWheelHeight { get; init; }

    /// <summary>Height of the front wheel centre, m.</summary>
    public required double FrontWheelHeight { get; init; }

    /// <summary>Rear wheel centre in the body's axes from the sprung CG, m: forward.</summary>
    public required double RearWheelX { get; init; }

    /// <summary>Rear wheel centre in the body's axes from the sprung CG, m: upward.</summary>
    public required double RearWheelZ { get; init; }

    /// <summary>Housing angle relative to the body since measured, rad.</summary>
    public required double HousingAngle { get; init; }

    /// <summary>Length of a rear damper, m.</summary>
    public required double DamperLength { get; init; }

    /// <summary>Upward force of the linkage on the housing, N.</summary>
    public required double LinkLift { get; init; }

    /// <summary>Upward force of the springs on the housing, N.</summary>
    public required double SpringLift { get; init; }
}
