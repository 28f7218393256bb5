using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>Axle torque from a table against time, times the power share.</summary>
/// <param name="driveline">The tables.</param>
public readonly struct AxleTorqueDriveline(AxleTorque driveline) : IDriveline
{
    private readonly PiecewiseLinear _torque = PiecewiseLinear.Holding(driveline.Torque);
    private readonly PiecewiseLinear _share = PiecewiseLinear.Holding(driveline.PowerShare);

    /// <inheritdoc/>
    public bool HasEngine => false;

    /// <inheritdoc/>
    public double PerFinalDrive => double.NaN;

    /// <inheritdoc/>
    public double TorqueAtMost(double time) => driveline.Torque.At(time) * driveline.PowerShare.At(time);

    /// <inheritdoc/>
    public void At(in Modes modes, in DrivelineInput input, out DrivelineOutput output)
    {
        output.AxleTorque = _torque.At(modes.TorqueSegment, input.Time) * _share.At(modes.ShareSegment, input.Time);
        output.EngineAcceleration = 0;
        output.EngineSpeed = double.NaN;
        output.CouplingTorque = double.NaN;
        output.EngineGuard = double.PositiveInfinity;
        output.ShiftGuard = double.PositiveInfinity;
        output.CouplingGuard = double.PositiveInfinity;
        output.SecondCouplingGuard = double.PositiveInfinity;
    }

    /// <inheritdoc/>
    public double Release(ref Modes modes)
    {
        modes.TorqueSegment = _torque.Find(0);
        modes.ShareSegment = _share.Find(0);
        return 0;
    }

    /// <inheritdoc/>
    public bool OnGuard(int guard, ref Modes modes, in DrivelineInput input, ref double engineSpeed) => true;

    /// <inheritdoc/>
    public double NextBreak(in Modes modes, double time) =>
        Math.Min(_torque.End(modes.TorqueSegment), _share.End(modes.ShareSegment));

    /// <inheritdoc/>
    public void OnBreak(ref Modes modes, in DrivelineInput input, ref double engineSpeed)
    {
        modes.TorqueSegment = _torque.Find(input.Time);
        modes.ShareSegment = _share.Find(input.Time);
    }
}
