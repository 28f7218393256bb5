using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>What a coupling sees of engine and gearbox at one instant.</summary>
public struct CouplingInput
{
    /// <summary>Time since release, s.</summary>
    public double Time;

    /// <summary>Engine speed ω_e and gearbox input speed ω_in, rad/s.</summary>
    public double EngineSpeed, InputSpeed;

    /// <summary>Engine torque T_e, N·m, and inertia J_e, kg·m².</summary>
    public double EngineTorque, EngineInertia;

    /// <summary>ω_in' with no torque through the coupling, rad/s².</summary>
    public double FreeAcceleration;

    /// <summary>Axle torque per N·m out of the coupling, while it drives (T_c above 0) and while it is driven.</summary>
    public double FactorDriving, FactorDriven;

    /// <summary>What one N·m through the coupling adds to ω_in', driving and driven, rad/s² per N·m.</summary>
    public double ComplianceDriving, ComplianceDriven;
}

/// <summary>Clutch or converter between engine and gearbox. Implement it as a read-only struct.</summary>
public interface ICoupling
{
    /// <summary>Torque out T_c, axle torque, ω_e' and the two guards.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="input">What the coupling sees.</param>
    /// <param name="output">Receives what it does.</param>
    void At(in Modes modes, in CouplingInput input, ref DrivelineOutput output);

    /// <summary>Whether engine and gearbox turn as one.</summary>
    /// <param name="modes">The modes.</param>
    bool Locked(in Modes modes);

    /// <summary>Sets the modes for given speeds: at release and when a gear has gone in.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="time">Time since release, s.</param>
    /// <param name="engineSpeed">ω_e, rad/s.</param>
    /// <param name="inputSpeed">ω_in, rad/s.</param>
    void Engage(ref Modes modes, double time, double engineSpeed, double inputSpeed);

    /// <summary>Changes the modes after one of its two guards fired; false when the launch cannot go on.</summary>
    /// <param name="second">Which guard.</param>
    /// <param name="modes">The modes.</param>
    /// <param name="input">What the coupling sees.</param>
    bool OnGuard(bool second, ref Modes modes, in CouplingInput input);

    /// <summary>The next declared instant after t, s.</summary>
    /// <param name="modes">The modes.</param>
    double NextBreak(in Modes modes);

    /// <summary>Brings segments against time up to an instant.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="time">Time since release, s.</param>
    void OnBreak(ref Modes modes, double time);
}

/// <summary>
/// Engine, coupling, gears and final drive. T_axle = G·N·T_c·η^tanh(ω_in·sign(T_c)/(5 rad/s)): power always loses, and
/// nothing sticks or jumps at standstill.
/// </summary>
/// <typeparam name="TCoupling">Clutch or converter.</typeparam>
public readonly struct EngineLine<TCoupling> : IDriveline
    where TCoupling : struct, ICoupling
{
    private const double EfficiencyTransition = 5;

    // Beyond this tanh is ±1 to the last bit.
    private const double FullTanh = 20;

    private readonly TCoupling _coupling;
    private readonly PiecewiseLinear _torque, _share;
    private readonly double[] _ratios, _shiftAt;
    private readonly double _inertia, _launchSpeed, _shiftTime, _logEfficiency, _finalDrive, _largestTorque;
    private readonly Table _shareTable;

    /// <summary>Prepares the driveline.</summary>
    /// <param name="driveline">Engine, gears and final drive.</param>
    /// <param name="coupling">The coupling.</param>
    public EngineLine(EngineDriveline driveline, TCoupling coupling)
    {
        ArgumentNullException.ThrowIfNull(driveline);
        _coupling = coupling;
        _torque = PiecewiseLinear.Holding(driveline.Engine.Torque);
        _share = PiecewiseLinear.Holding(driveline.PowerShare);
        _ratios = driveline.Ratios.Select(r => r * driveline.FinalDrive).ToArray();
        _shiftAt = [.. driveline.ShiftAt];
        _inertia = driveline.Engine.Inertia;
        _launchSpeed = driveline.Engine.LaunchSpeed;
        _shiftTime = driveline.ShiftTime;
        _logEfficiency = Math.Log(driveline.Efficiency);
        _finalDrive = driveline.FinalDrive;
        _shareTable = driveline.PowerShare;
        foreach (double torque in driveline.Engine.Torque.Y)
        {
            _largestTorque = Math.Max(_largestTorque, torque);
        }
    }

    /// <inheritdoc/>
    public bool HasEngine => true;

    /// <inheritdoc/>
    public double PerFinalDrive => 1 / _finalDrive;

    /// <inheritdoc/>
    public double TorqueAtMost(double time) => _ratios[0] * _largestTorque * _shareTable.At(time);

    /// <inheritdoc/>
    public void At(in Modes modes, in DrivelineInput input, out DrivelineOutput output)
    {
        output = default;
        if (modes.Shifting)
        {
            output.EngineSpeed = input.EngineSpeed;
            output.EngineGuard = double.PositiveInfinity;
            output.ShiftGuard = double.PositiveInfinity;
            output.CouplingGuard = double.PositiveInfinity;
            output.SecondCouplingGuard = double.PositiveInfinity;
            return;
        }

        CouplingInput seen = Seen(modes, input);
        _coupling.At(modes, seen, ref output);
        output.EngineSpeed = seen.EngineSpeed;
        output.EngineGuard = _torque.Guard(modes.EngineSegment, seen.EngineSpeed);
        output.ShiftGuard = modes.Gear >= _shiftAt.Length
            ? double.PositiveInfinity
            : modes.ShiftArmed ? _shiftAt[modes.Gear] - seen.EngineSpeed : seen.EngineSpeed - _shiftAt[modes.Gear];
    }

    /// <inheritdoc/>
    public double Release(ref Modes modes)
    {
        modes.ShareSegment = _share.Find(0);
        modes.EngineSegment = _torque.Find(_launchSpeed);
        modes.Gear = 0;
        modes.Shifting = false;
        modes.ShiftArmed = _shiftAt.Length > 0 && _launchSpeed < _shiftAt[0];
        _coupling.Engage(ref modes, 0, _launchSpeed, 0);
        return _launchSpeed;
    }

    /// <inheritdoc/>
    public bool OnGuard(int guard, ref Modes modes, in DrivelineInput input, ref double engineSpeed)
    {
        CouplingInput seen = Seen(modes, input);
        engineSpeed = seen.EngineSpeed;
        switch (guard)
        {
            case 0:
                modes.EngineSegment = _torque.Neighbour(modes.EngineSegment, seen.EngineSpeed);
                return true;
            case 1:
                if (!modes.ShiftArmed)
                {
                    modes.ShiftArmed = true;
                    return true;
                }

                modes.Shifting = true;
                modes.ShiftEnd = input.Time + _shiftTime;
                if (_shiftTime == 0)
                {
                    NextGear(ref modes, input, engineSpeed);
                }

                return true;
            default:
                bool goesOn = _coupling.OnGuard(guard == 3, ref modes, seen);
                if (_coupling.Locked(modes))
                {
                    engineSpeed = seen.InputSpeed;
                }

                return goesOn;
        }
    }

    /// <inheritdoc/>
    public double NextBreak(in Modes modes, double time)
    {
        double next = Math.Min(_share.End(modes.ShareSegment), _coupling.NextBreak(modes));
        return modes.Shifting ? Math.Min(next, modes.ShiftEnd) : next;
    }

    /// <inheritdoc/>
    public void OnBreak(ref Modes modes, in DrivelineInput input, ref double engineSpeed)
    {
        modes.ShareSegment = _share.Find(input.Time);
        _coupling.OnBreak(ref modes, input.Time);
        if (modes.Shifting && input.Time >= modes.ShiftEnd)
        {
            NextGear(ref modes, input, engineSpeed);
        }
    }

    private void NextGear(ref Modes modes, in DrivelineInput input, double engineSpeed)
    {
        modes.Shifting = false;
        modes.Gear++;
        modes.ShiftArmed = modes.Gear < _shiftAt.Length && engineSpeed < _shiftAt[modes.Gear];
        _coupling.Engage(ref modes, input.Time, engineSpeed, _ratios[modes.Gear] * input.ShaftSpeed);
    }

    private CouplingInput Seen(in Modes modes, in DrivelineInput input)
    {
        double ratio = _ratios[modes.Gear];
        CouplingInput seen;
        seen.Time = input.Time;
        seen.InputSpeed = ratio * input.ShaftSpeed;
        seen.EngineSpeed = _coupling.Locked(modes) ? seen.InputSpeed : input.EngineSpeed;
        seen.EngineTorque = _torque.At(modes.EngineSegment, seen.EngineSpeed) * _share.At(modes.ShareSegment, input.Time);
        seen.EngineInertia = _inertia;
        double driving = ratio, driven = ratio;
        if (_logEfficiency != 0)
        {
            double x = seen.InputSpeed / EfficiencyTransition;
            double loss = Math.Exp(_logEfficiency * (x > FullTanh ? 1 : Math.Tanh(x)));
            driving = ratio * loss;
            driven = ratio / loss;
        }

        seen.FreeAcceleration = ratio * input.FreeAcceleration;
        seen.FactorDriving = driving;
        seen.FactorDriven = driven;
        seen.ComplianceDriving = ratio * input.Compliance * driving;
        seen.ComplianceDriven = ratio * input.Compliance * driven;
        return seen;
    }
}
