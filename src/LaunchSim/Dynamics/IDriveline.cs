namespace LaunchSim.Dynamics;

/// <summary>What the driveline sees of the car at one instant.</summary>
public struct DrivelineInput
{
    /// <summary>Time since release, s.</summary>
    public double Time;

    /// <summary>Speed of the rims against the housing ω + φ', rad/s.</summary>
    public double ShaftSpeed;

    /// <summary>Engine speed state ω_e, rad/s.</summary>
    public double EngineSpeed;

    /// <summary>(ω + φ')' without any axle torque, rad/s².</summary>
    public double FreeAcceleration;

    /// <summary>What one N·m of axle torque adds to (ω + φ')', rad/s² per N·m: how a locked clutch feels the car.</summary>
    public double Compliance;
}

/// <summary>What the driveline does at one instant.</summary>
public struct DrivelineOutput
{
    /// <summary>Axle torque T_axle, N·m, both shafts, forward positive.</summary>
    public double AxleTorque;

    /// <summary>ω_e', rad/s².</summary>
    public double EngineAcceleration;

    /// <summary>Engine speed, rad/s; that of the gearbox while a clutch is locked.</summary>
    public double EngineSpeed;

    /// <summary>Torque out of clutch or turbine T_c, N·m.</summary>
    public double CouplingTorque;

    /// <summary>Guards: engine table, shift speed, and two of the coupling; infinite when not armed.</summary>
    public double EngineGuard, ShiftGuard, CouplingGuard, SecondCouplingGuard;
}

/// <summary>
/// A driveline: axle torque from time, speeds and, for a locked clutch, the car's own inertia. Implement it as a
/// read-only struct, and register it in <c>Launch/LaunchRunner.cs</c>.
/// </summary>
public interface IDriveline
{
    /// <summary>Whether there is an engine whose speed is worth a column.</summary>
    bool HasEngine { get; }

    /// <summary>Driveshaft torque over axle torque: 1 over the final drive; not a number when that is not known.</summary>
    double PerFinalDrive { get; }

    /// <summary>
    /// About the largest axle torque that the driveline could give at a time, N·m: what the launch's energy is judged by
    /// beforehand, nothing else.
    /// </summary>
    /// <param name="time">Time since release, s.</param>
    double TorqueAtMost(double time);

    /// <summary>The axle torque and the guards.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="input">What the driveline sees.</param>
    /// <param name="output">Receives what it does.</param>
    void At(in Modes modes, in DrivelineInput input, out DrivelineOutput output);

    /// <summary>Sets the modes and the engine's speed for t = 0.</summary>
    /// <param name="modes">The modes.</param>
    double Release(ref Modes modes);

    /// <summary>Changes the modes after one of the four guards fired, in the order in which the output names them.</summary>
    /// <param name="guard">0 to 3.</param>
    /// <param name="modes">The modes.</param>
    /// <param name="input">What the driveline sees there.</param>
    /// <param name="engineSpeed">The engine speed state, rad/s; may be set.</param>
    /// <returns>False when the launch cannot go on.</returns>
    bool OnGuard(int guard, ref Modes modes, in DrivelineInput input, ref double engineSpeed);

    /// <summary>The next declared instant after t, s.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="time">Time since release, s.</param>
    double NextBreak(in Modes modes, double time);

    /// <summary>Changes the modes at a declared instant.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="input">What the driveline sees there.</param>
    /// <param name="engineSpeed">The engine speed state, rad/s; may be set.</param>
    void OnBreak(ref Modes modes, in DrivelineInput input, ref double engineSpeed);
}
