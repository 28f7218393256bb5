using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>
/// Torque converter: pump torque (ω_e/K(ν))², turbine torque R(ν) times that, ν = ω_in/ω_e. K and R are linear in ν and
/// hold their first values below the first ν. From the last ν to 1 the pump torque over ω_e² falls in a straight line to
/// 0 with R at its last value, never above 1/ν; above 1 both torques are 0.
/// </summary>
public readonly struct ConverterCoupling : ICoupling
{
    private readonly Segment[] _segments;

    /// <summary>Prepares the converter.</summary>
    /// <param name="converter">The tables.</param>
    public ConverterCoupling(Converter converter)
    {
        ArgumentNullException.ThrowIfNull(converter);
        double[] nu = converter.CapacityFactor.X.ToArray().Union(converter.TorqueRatio.X.ToArray()).Order().ToArray();
        double[] k = nu.Select(converter.CapacityFactor.At).ToArray();
        double[] r = nu.Select(converter.TorqueRatio.At).ToArray();
        int last = nu.Length - 1;
        var segments = new List<Segment> { new(double.NegativeInfinity, nu[0], Law.Table, nu[0], k[0], 0, r[0], 0) };
        for (int i = 1; i <= last; i++)
        {
            double width = nu[i] - nu[i - 1];
            segments.Add(new Segment(
                nu[i - 1], nu[i], Law.Table, nu[i - 1], k[i - 1], (k[i] - k[i - 1]) / width, r[i - 1], (r[i] - r[i - 1]) / width));
        }

        // Pump torque per ω_e² on the way to equal speeds, as a straight line from its last value to 0 at ν = 1.
        double atLast = 1 / (k[last] * k[last]), slope = -atLast / (1 - nu[last]);
        double limit = Math.Min(1, 1 / r[last]);
        if (limit > nu[last])
        {
            segments.Add(new Segment(nu[last], limit, Law.Fall, nu[last], atLast, slope, r[last], 0));
        }

        if (limit < 1)
        {
            segments.Add(new Segment(Math.Max(limit, nu[last]), 1, Law.FallAtUnityPower, nu[last], atLast, slope, 0, 0));
        }

        segments.Add(new Segment(1, double.PositiveInfinity, Law.None, 0, 0, 0, 0, 0));
        _segments = segments.ToArray();
    }

    private enum Law
    {
        Table,
        Fall,
        FallAtUnityPower,
        None,
    }

    /// <inheritdoc/>
    public bool Locked(in Modes modes) => false;

    /// <inheritdoc/>
    public void At(in Modes modes, in CouplingInput input, ref DrivelineOutput output)
    {
        double nu = input.InputSpeed / input.EngineSpeed;
        ref readonly Segment s = ref _segments[modes.ConverterSegment];
        output.CouplingGuard = Math.Min(nu - s.From, s.To - nu);
        output.SecondCouplingGuard = input.EngineSpeed;
        (double pump, double turbine) = s.Torques(nu, input.EngineSpeed);
        output.CouplingTorque = turbine;
        output.AxleTorque = turbine * input.FactorDriving;
        output.EngineAcceleration = (input.EngineTorque - pump) / input.EngineInertia;
    }

    /// <summary>Pump and turbine torque at two speeds, N·m.</summary>
    /// <param name="engineSpeed">ω_e, rad/s, above 0.</param>
    /// <param name="inputSpeed">ω_in, rad/s.</param>
    public (double Pump, double Turbine) Torques(double engineSpeed, double inputSpeed)
    {
        double nu = inputSpeed / engineSpeed;
        return _segments[Find(nu)].Torques(nu, engineSpeed);
    }

    /// <inheritdoc/>
    public void Engage(ref Modes modes, double time, double engineSpeed, double inputSpeed) =>
        modes.ConverterSegment = Find(inputSpeed / engineSpeed);

    /// <inheritdoc/>
    public bool OnGuard(bool second, ref Modes modes, in CouplingInput input)
    {
        if (second)
        {
            return false;
        }

        double nu = input.InputSpeed / input.EngineSpeed;
        ref readonly Segment s = ref _segments[modes.ConverterSegment];
        int next = nu - s.From < s.To - nu ? modes.ConverterSegment - 1 : modes.ConverterSegment + 1;
        modes.ConverterSegment = Math.Clamp(next, 0, _segments.Length - 1);
        return true;
    }

    /// <inheritdoc/>
    public double NextBreak(in Modes modes) => double.PositiveInfinity;

    /// <inheritdoc/>
    public void OnBreak(ref Modes modes, double time)
    {
    }

    private int Find(double nu)
    {
        int i = 0;
        while (i < _segments.Length - 1 && nu >= _segments[i].To)
        {
            i++;
        }

        return i;
    }

    private readonly struct Segment(
        double from, double to, Law law, double start, double capacity, double capacitySlope, double ratio, double ratioSlope)
    {
        public readonly double From = from, To = to;

        public (double Pump, double Turbine) Torques(double nu, double engineSpeed)
        {
            switch (law)
            {
                case Law.Table:
                    double perFactor = engineSpeed / (capacity + (capacitySlope * (nu - start)));
                    double pump = perFactor * perFactor;
                    return (pump, pump * (ratio + (ratioSlope * (nu - start))));
                case Law.Fall:
                    double falling = engineSpeed * engineSpeed * (capacity + (capacitySlope * (nu - start)));
                    return (falling, falling * ratio);
                case Law.FallAtUnityPower:
                    double power = engineSpeed * engineSpeed * (capacity + (capacitySlope * (nu - start)));
                    return (power, power / nu);
                default:
                    return (0, 0);
            }
        }
    }
}
