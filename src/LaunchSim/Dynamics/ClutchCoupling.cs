using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>
/// Friction clutch. Slipping, it carries its capacity; at equal speeds it locks if the torque that keeps the speeds
/// equal, solved together with the equations of motion, is within ±capacity, and lets go when it leaves that.
/// </summary>
/// <param name="clutch">The capacity table.</param>
public readonly struct ClutchCoupling(Clutch clutch) : ICoupling
{
    private readonly PiecewiseLinear _capacity = PiecewiseLinear.Holding(clutch.Capacity);

    /// <inheritdoc/>
    public bool Locked(in Modes modes) => modes.Clutch == ClutchMode.Locked;

    /// <inheritdoc/>
    public void At(in Modes modes, in CouplingInput input, ref DrivelineOutput output)
    {
        double capacity = _capacity.At(modes.CapacitySegment, input.Time);
        output.SecondCouplingGuard = double.PositiveInfinity;
        double torque;
        switch (modes.Clutch)
        {
            case ClutchMode.SlipsForward:
                torque = capacity;
                output.AxleTorque = capacity * input.FactorDriving;
                output.CouplingGuard = input.EngineSpeed - input.InputSpeed;
                break;
            case ClutchMode.SlipsBack:
                torque = -capacity;
                output.AxleTorque = -capacity * input.FactorDriven;
                output.CouplingGuard = input.InputSpeed - input.EngineSpeed;
                break;
            default:
                torque = Holding(input, modes.Driving);
                output.CouplingTorque = torque;
                output.CouplingGuard = capacity - Math.Abs(torque);
                output.SecondCouplingGuard = modes.Driving ? torque : -torque;
                output.AxleTorque = torque * (modes.Driving ? input.FactorDriving : input.FactorDriven);
                output.EngineAcceleration = input.FreeAcceleration
                    + (torque * (modes.Driving ? input.ComplianceDriving : input.ComplianceDriven));
                return;
        }

        output.CouplingTorque = torque;
        output.EngineAcceleration = (input.EngineTorque - torque) / input.EngineInertia;
    }

    /// <inheritdoc/>
    public void Engage(ref Modes modes, double time, double engineSpeed, double inputSpeed)
    {
        modes.CapacitySegment = _capacity.Find(time);
        modes.Clutch = engineSpeed >= inputSpeed ? ClutchMode.SlipsForward : ClutchMode.SlipsBack;
    }

    /// <inheritdoc/>
    public bool OnGuard(bool second, ref Modes modes, in CouplingInput input)
    {
        if (second)
        {
            modes.Driving = !modes.Driving;
            return true;
        }

        double holding = Holding(input, driving: true);
        bool driving = holding >= 0;
        if (!driving)
        {
            holding = Holding(input, driving: false);
        }

        if (modes.Clutch == ClutchMode.Locked)
        {
            modes.Clutch = holding >= 0 ? ClutchMode.SlipsForward : ClutchMode.SlipsBack;
        }
        else if (Math.Abs(holding) <= _capacity.At(modes.CapacitySegment, input.Time))
        {
            modes.Clutch = ClutchMode.Locked;
            modes.Driving = driving;
        }
        else
        {
            modes.Clutch = holding >= 0 ? ClutchMode.SlipsForward : ClutchMode.SlipsBack;
        }

        return true;
    }

    /// <inheritdoc/>
    public double NextBreak(in Modes modes) => _capacity.End(modes.CapacitySegment);

    /// <inheritdoc/>
    public void OnBreak(ref Modes modes, double time) => modes.CapacitySegment = _capacity.Find(time);

    /// <summary>The torque that keeps both speeds equal, N·m: T_c = (T_e − J_e·ω_in'(0))/(1 + J_e·compliance).</summary>
    private static double Holding(in CouplingInput input, bool driving) =>
        (input.EngineTorque - (input.EngineInertia * input.FreeAcceleration))
        / (1 + (input.EngineInertia * (driving ? input.ComplianceDriving : input.ComplianceDriven)));
}
