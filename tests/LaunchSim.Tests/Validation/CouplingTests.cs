using LaunchSim.Dynamics;
using LaunchSim.Integration;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Validation;

/// <summary>Rows 17 and 18: the product's clutch and converter against closed forms and published tables.</summary>
public class CouplingTests
{
    private const double PoundFoot = 1.3558179483314004, Rpm = Math.PI / 30;

    [Theory]
    [InlineData(400, 50, 0.317880794701987, 245.695364238411, 38145.6953642384, 339.655172413793)]
    [InlineData(0, 0, 0.137931034482759, 168.965517241379, 16551.724137931, 0)]
    public void Clutch_SlippingToLock_IsTheClosedForm(double engine, double load, double time, double speed, double heat, double torque)
    {
        // Row 17: E = I1·I2·Δω²/2(I1+I2) and its like with torques: Shigley, ch. 16, from memory; numbers computed for this
        // project. Engine line, clutch and guards are the product's; the load is one free inertia. Linear in time: 1e-9.
        var line = new EngineLine<ClutchCoupling>(
            new EngineDriveline
            {
                Engine = new Engine { Torque = Table.Constant(engine), Inertia = 0.25, LaunchSpeed = 500 },
                Coupling = new Clutch { Capacity = Table.Constant(600) },
                Ratios = [1],
                ShiftAt = [],
                ShiftTime = 0,
                FinalDrive = 1,
            },
            new ClutchCoupling(new Clutch { Capacity = Table.Constant(600) }));
        var run = new Integrator<Bench>(new Bench(line, 1.2, load), new IntegratorOptions { Tolerance = 1e-11 });
        var nothing = default(NoObserver);
        double engineSpeed = run.System.Release();
        Assert.Equal(RunStatus.Completed, run.Run(0, [engineSpeed, 100, 0], 1, ref nothing));
        Assert.Equal(ClutchMode.Locked, run.System.Modes.Clutch);
        Assert.Equal(time, run.System.LockedAt, 1e-9);
        Assert.Equal(speed, run.System.LockedSpeed, 1e-9 * 500);
        Assert.Equal(heat, run.State[2], 1e-9 * heat);
        Assert.Equal(torque, run.System.Output.CouplingTorque, 1e-9 * 600);
        Assert.Equal(run.State[1], run.State[0], 1e-9);
    }

    [Theory]
    [InlineData(2000, 0, 211.677353918352, 472.463853945763)]
    [InlineData(2000, 0.5, 203.017053979108, 317.518672423325)]
    [InlineData(2500, 0.55, 306.418975072125, 455.491806444714)]
    public void Converter_OfThePublishedTable_HasTheComputedTorques(double rpm, double ratio, double pump, double turbine)
    {
        // Row 18: a published example of unverified origin, computed for this project. 1e-9 relative.
        (double p, double t) = Converter().Torques(rpm * Rpm, ratio * rpm * Rpm);
        Assert.Equal(1, p / PoundFoot / pump, 1e-9);
        Assert.Equal(1, t / PoundFoot / turbine, 1e-9);
    }

    [Fact]
    public void Converter_StalledAtTwoHundredFiftyPoundFeet_TurnsAsComputed()
    {
        (double pump, _) = Converter().Torques(2173.51579725745 * Rpm, 0);
        Assert.Equal(1, pump / PoundFoot / 250, 1e-9);
    }

    [Fact]
    public void Converter_BeyondItsTable_FallsInALineToNothingAndNeverGivesPower()
    {
        ConverterCoupling converter = Converter();
        (double last, double lastTurbine) = converter.Torques(200, 0.94 * 200);
        Assert.Equal(1.002, lastTurbine / last, 1e-12);
        foreach (double share in new[] { 0.25, 0.5, 0.75 })
        {
            double nu = 0.94 + (share * 0.06);
            (double pump, double turbine) = converter.Torques(200, nu * 200);
            Assert.Equal((1 - share) * last, pump, 1e-10 * last);
            Assert.Equal(Math.Min(1.002, 1 / nu) * pump, turbine, 1e-10 * last);
            Assert.True(turbine * nu <= pump * (1 + 1e-12));
        }

        // The driven side faster, standing, or turning back.
        Assert.Equal((0, 0), converter.Torques(200, 200));
        Assert.Equal((0, 0), converter.Torques(200, 300));
        Assert.Equal(converter.Torques(200, 0), converter.Torques(200, -50));
    }

    [Fact]
    public void Converter_AcrossAllItsBorders_IsContinuous()
    {
        ConverterCoupling converter = Converter();
        foreach (double nu in new[] { 0, 0.1, 0.5, 0.9, 0.94, 1 / 1.002, 1 })
        {
            (double below, double belowTurbine) = converter.Torques(300, 300 * (nu - 1e-9));
            (double above, double aboveTurbine) = converter.Torques(300, 300 * (nu + 1e-9));
            Assert.Equal(below, above, 1e-4);
            Assert.Equal(belowTurbine, aboveTurbine, 1e-4);
        }
    }

    private static ConverterCoupling Converter()
    {
        double[] nu = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.94];
        double[] k =
        [
            137.465208993806, 137.065019156852, 135.864449645989, 135.664354727512, 137.565256453045, 140.366585311725,
            145.268910814415, 152.872517716547, 162.977311099644, 197.693779455430, 244.515990379085,
        ];
        double[] r = [2.232, 2.075, 1.975, 1.846, 1.720, 1.564, 1.409, 1.254, 1.096, 0.999, 1.002];
        return new ConverterCoupling(new Converter
        {
            CapacityFactor = new Table(nu, k.Select(value => value * Rpm / Math.Sqrt(PoundFoot))),
            TorqueRatio = new Table(nu, r),
        });
    }

    /// <summary>An engine line on a test bench: one free inertia with a constant load in place of the car.</summary>
    private struct Bench(EngineLine<ClutchCoupling> line, double inertia, double load) : IEventSystem
    {
        public Modes Modes;
        public DrivelineOutput Output;

        public double LockedAt { get; private set; }

        public double LockedSpeed { get; private set; }

        public readonly int Dimension => 3;

        public readonly int EventCount => 4;

        public double Release() => line.Release(ref Modes);

        private readonly DrivelineInput Sees(double t, ReadOnlySpan<double> y) => new()
        {
            Time = t,
            ShaftSpeed = y[1],
            EngineSpeed = y[0],
            FreeAcceleration = -load / inertia,
            Compliance = 1 / inertia,
        };

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy)
        {
            line.At(Modes, Sees(t, y), out Output);
            dy[0] = Output.EngineAcceleration;
            dy[1] = (Output.AxleTorque - load) / inertia;
            dy[2] = Output.CouplingTorque * (y[0] - y[1]);
        }

        public readonly EventDirection Direction(int index) => EventDirection.Guard;

        public void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values)
        {
            Derivative(t, y, dy);
            EventValues(t, y, values);
        }

        public readonly void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) =>
            (values[0], values[1], values[2], values[3]) = (Output.EngineGuard, Output.ShiftGuard, Output.CouplingGuard, Output.SecondCouplingGuard);

        public double Invariant(ReadOnlySpan<double> y) => 0;

        public double EventValue(int index, double t, ReadOnlySpan<double> y)
        {
            line.At(Modes, Sees(t, y), out Output);
            Span<double> values = stackalloc double[4];
            EventValues(t, y, values);
            return values[index];
        }

        public EventAction OnEvent(int index, double t, Span<double> y)
        {
            (LockedAt, LockedSpeed) = (t, y[1]);
            line.OnGuard(index, ref Modes, Sees(t, y), ref y[0]);
            return EventAction.Restart;
        }

        public readonly double NextBreak(double t) => line.NextBreak(Modes, t);

        public EventAction OnBreak(double t, Span<double> y)
        {
            line.OnBreak(ref Modes, Sees(t, y), ref y[0]);
            return EventAction.Restart;
        }
    }
}
