using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Integration;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Dynamics;

/// <summary>The smooth pieces that parts are on, their borders and what follows (docs/model.md, sections 2 and 3).</summary>
public class ModeTests
{
    private static readonly OneSidedContact Stop = new(1000, 50);

    [Theory]
    [InlineData(ContactMode.Apart, 0, 1, ContactMode.Pressing)] // touches while closing: the damping force jumps
    [InlineData(ContactMode.Apart, 1e-9, -1, ContactMode.Clipped)] // located behind the border while opening: cannot pull
    [InlineData(ContactMode.Pressing, 0.01, -0.3, ContactMode.Clipped)] // spring and damper together would pull
    [InlineData(ContactMode.Pressing, 0, -0.3, ContactMode.Apart)]
    [InlineData(ContactMode.Pressing, -1e-9, 0, ContactMode.Apart)]
    [InlineData(ContactMode.Clipped, 0.01, -0.1, ContactMode.Pressing)] // slows down before it is out
    [InlineData(ContactMode.Clipped, 0, -0.3, ContactMode.Apart)]
    public void Contact_WhenItsGuardFires_GoesOverTo(ContactMode from, double depth, double rate, ContactMode to) =>
        Assert.Equal(to, Stop.Next(from, depth, rate));

    [Fact]
    public void Contact_InTheModeThatHolds_IsTheClippedLawAndLosesWhatItDoesNotStore() =>
        Gen.Select(Gen.Double[-0.02, 0.05], Gen.Double[-2, 2]).Sample((depth, rate) =>
        {
            double law = depth > 0 ? Math.Max(0, (1000 * depth) + (50 * rate)) : 0;
            ContactMode mode = depth <= 0 ? ContactMode.Apart : law > 0 ? ContactMode.Pressing : ContactMode.Clipped;
            Assert.True(Stop.Guard(mode, depth, rate) >= 0);
            Assert.Equal(law, Stop.Force(mode, depth, rate), 1e-12);

            // Power in = growth of what is stored + lost; a penetration that opens without force loses what it holds.
            double growth = depth > 0 ? 1000 * depth * rate : 0;
            Assert.Equal(law * rate, growth + Stop.Lost(mode, depth, rate), 1e-9);
            Assert.True(Stop.Lost(mode, depth, rate) >= 0);
        });

    [Fact]
    public void Table_HoldingItsEnds_IsItsTableInTheSegmentFoundAndALineBeyond()
    {
        var table = new Table([1, 2, 4], [10, 30, 20]);
        var line = PiecewiseLinear.Holding(table);
        Assert.Equal(4, line.Count);
        foreach (double x in new[] { -5, 1, 1.5, 2, 3, 4, 9 })
        {
            int segment = line.Find(x);
            Assert.Equal(table.At(x), line.At(segment, x), 1e-13);
            Assert.True(line.Guard(segment, x) >= 0);
        }

        // At a border the piece above; a held segment goes straight on, and its guard says by how much.
        Assert.Equal(2, line.Find(2));
        Assert.Equal(50, line.At(1, 3), 1e-13);
        Assert.Equal(-1, line.Guard(1, 3));
        Assert.Equal(2, line.Neighbour(1, 2));
        Assert.Equal(0, line.Neighbour(1, 1));
        Assert.Equal(2, line.Neighbour(3, 4));
        Assert.Equal(4, line.End(2));
        Assert.Equal(double.PositiveInfinity, line.End(3));
    }

    [Fact]
    public void Table_OfOnePoint_IsThatEverywhere()
    {
        var line = PiecewiseLinear.Holding(Table.Constant(7));
        Assert.Equal(1, line.Count);
        Assert.Equal(7, line.At(line.Find(-1e9), -1e9));
        Assert.Equal(double.PositiveInfinity, line.Guard(0, 3));
    }

    [Fact]
    public void Damper_BeyondItsTables_GoesOnWithTheLastSlope()
    {
        var tables = new DamperTables { Extension = new Table([0, 0.1, 0.3], [0, 100, 200]), Compression = new Table([0, 0.2], [0, 300]) };
        var line = PiecewiseLinear.Damper(tables);
        double At(double v) => line.At(line.Find(v), v);
        Assert.Equal(50, At(0.05), 1e-12);
        Assert.Equal(150, At(0.2), 1e-12);
        Assert.Equal(400, At(0.7), 1e-12);
        Assert.Equal(-150, At(-0.1), 1e-12);
        Assert.Equal(-1500, At(-1), 1e-12);
        Assert.Equal(0, At(0), 1e-12);
        Assert.Equal(double.PositiveInfinity, line.End(line.Count - 1));
    }

    [Theory]
    [InlineData(TravelBranch.Rolling, 5, 6, TravelBranch.Moving)]
    [InlineData(TravelBranch.Moving, 6, 5, TravelBranch.Rolling)]
    [InlineData(TravelBranch.Rolling, -5, 2, TravelBranch.RollingBack)]
    [InlineData(TravelBranch.Moving, 1, -4, TravelBranch.MovingBack)]
    [InlineData(TravelBranch.MovingBack, -7, -6, TravelBranch.RollingBack)]
    public void TravellingSpeed_WhenAnotherLeads_IsTheLargestOther(TravelBranch from, double rolling, double speed, TravelBranch to) =>
        Assert.Equal(to, TireForce.NextBranch(from, rolling, speed));

    [Fact]
    public void TravellingSpeed_AtStandstill_GivesEachBranchItsTurn()
    {
        var seen = new HashSet<TravelBranch>();
        TravelBranch branch = TravelBranch.Rolling;
        for (int i = 0; i < 4; i++)
        {
            seen.Add(branch);
            branch = TireForce.NextBranch(branch, 0, 0);
        }

        Assert.Equal(4, seen.Count);
    }

    [Fact]
    public void Tire_UnderALoadThatLeavesLittleGrip_StandsOnItsFloor()
    {
        Car car = DoorCar.Create();
        Tire entered = car.Rear.Tire with { LoadSensitivity = 0.5, Pressure = null };
        var tire = new TireForce(entered, car.Chassis.RearScale);
        TireResult Pressed(double load, bool floor) =>
            tire.At(ContactMode.Pressing, TravelBranch.Rolling, floor, tire.FreeRadius - (load / tire.VerticalRate), 0, 10, 40, 0.002);

        // Load share L on the reference: μ/μ0 = 1 − n·(L − 1), 0.2 from L = 2.6 on.
        double reference = 2 * entered.ReferenceLoad;
        Assert.Equal(entered.Grip * 0.5 * 2 * reference, Pressed(2 * reference, false).Limit, 1e-8);
        Assert.True(Pressed(2.5 * reference, false).FloorGuard > 0);
        Assert.True(Pressed(2.7 * reference, false).FloorGuard < 0);
        Assert.True(Pressed(2.7 * reference, true).FloorGuard > 0);
        Assert.Equal(entered.Grip * 0.2 * 2.7 * reference, Pressed(2.7 * reference, true).Limit, 1e-8);
        Assert.Equal(Pressed(2.6 * reference, false).Limit, Pressed(2.6 * reference, true).Limit, 1e-6);
    }

    [Fact]
    public void Tire_InTheAir_HasNoForceItsFreeRadiusAndItsSlipGoesOn()
    {
        var tire = new TireForce(DoorCar.Create().Rear.Tire, DoorCar.Create().Chassis.RearScale);
        TireResult at = tire.At(ContactMode.Apart, TravelBranch.Rolling, false, tire.FreeRadius + 0.01, 0.3, 10, 40, 0.005);
        Assert.Equal(0, at.Load);
        Assert.Equal(0, at.Thrust);
        Assert.Equal(0, at.SpinTorque);
        Assert.Equal(0, at.Lost);
        Assert.Equal(tire.FreeRadius, at.Radius);
        double rolling = 40 * tire.FreeRadius;
        Assert.Equal(rolling - 10 - (rolling * 0.005 / DoorCar.Create().Rear.Tire.RelaxationLength), at.DeflectionRate, 1e-12);
    }

    private static EngineDriveline Engine(double shiftAt, double launch, double shiftTime = 0.05, double capacity = 300) => new()
    {
        Engine = new Engine { Torque = Table.Constant(200), Inertia = 0.25, LaunchSpeed = launch },
        Coupling = new Clutch { Capacity = Table.Constant(capacity) },
        Ratios = [2, 1],
        ShiftAt = [shiftAt],
        ShiftTime = shiftTime,
        FinalDrive = 3,
    };

    private static EngineLine<ClutchCoupling> Line(EngineDriveline engine) => new(engine, new ClutchCoupling((Clutch)engine.Coupling));

    [Theory]
    [InlineData(399, true)]
    [InlineData(400, false)] // at exactly the shift speed it is not armed
    [InlineData(450, false)]
    public void Shift_AtRelease_IsArmedOnlyBelowItsSpeed(double launch, bool armed)
    {
        Modes modes = default;
        Line(Engine(400, launch)).Release(ref modes);
        Assert.Equal(armed, modes.ShiftArmed);
    }

    [Fact]
    public void Shift_NotArmed_ArmsBelowItsSpeedAndThenFiresOnTheWayUp()
    {
        EngineLine<ClutchCoupling> line = Line(Engine(400, 450));
        Modes modes = default;
        double speed = line.Release(ref modes);
        var input = new DrivelineInput { Time = 0.1, ShaftSpeed = 10, EngineSpeed = 399.9, Compliance = 0.5 };
        line.At(modes, input, out DrivelineOutput output);
        Assert.True(output.ShiftGuard < 0);
        line.OnGuard(1, ref modes, input, ref speed);
        Assert.True(modes.ShiftArmed);
        Assert.False(modes.Shifting);

        input.Time = 0.2;
        input.EngineSpeed = 400.1;
        line.At(modes, input, out output);
        Assert.True(output.ShiftGuard < 0);
        line.OnGuard(1, ref modes, input, ref speed);
        Assert.True(modes.Shifting);
        Assert.Equal(0.25, modes.ShiftEnd, 1e-15);

        // No torque and a constant engine speed for as long as it takes; then the next ratio, and no shift after the last.
        line.At(modes, input, out output);
        Assert.Equal(0, output.AxleTorque);
        Assert.Equal(0, output.EngineAcceleration);
        Assert.Equal(0.25, line.NextBreak(modes, 0.2), 1e-15);
        input.Time = 0.25;
        line.OnBreak(ref modes, input, ref speed);
        Assert.False(modes.Shifting);
        Assert.Equal(1, modes.Gear);
        Assert.Equal(ClutchMode.SlipsForward, modes.Clutch);
        line.At(modes, input, out output);
        Assert.Equal(double.PositiveInfinity, output.ShiftGuard);
        Assert.Equal(300 * 3, output.AxleTorque, 1e-12);
    }

    [Fact]
    public void Shift_ThatTakesNoTime_IsInTheNextGearAtOnce()
    {
        EngineLine<ClutchCoupling> line = Line(Engine(400, 300, shiftTime: 0));
        Modes modes = default;
        double speed = line.Release(ref modes);
        var input = new DrivelineInput { Time = 0.2, ShaftSpeed = 200, EngineSpeed = 400, Compliance = 0.5 };
        line.OnGuard(1, ref modes, input, ref speed);
        Assert.False(modes.Shifting);
        Assert.Equal(1, modes.Gear);
        Assert.Equal(ClutchMode.SlipsBack, modes.Clutch); // 400 against 600 rad/s
    }

    [Fact]
    public void Gear_EnteredAtEqualSpeeds_SlipsForward()
    {
        EngineLine<ClutchCoupling> line = Line(Engine(400, 300, shiftTime: 0));
        Modes modes = default;
        double speed = line.Release(ref modes);
        line.OnGuard(1, ref modes, new DrivelineInput { Time = 0.2, ShaftSpeed = 400.0 / 3, EngineSpeed = 400, Compliance = 0.5 }, ref speed);
        Assert.Equal(ClutchMode.SlipsForward, modes.Clutch);
    }

    [Theory]
    [InlineData(300, ClutchMode.Locked)]
    [InlineData(10, ClutchMode.SlipsForward)]
    public void Clutch_AtEqualSpeeds_LocksIfItCanHold(double capacity, ClutchMode expected)
    {
        EngineDriveline engine = Engine(1000, 300, capacity: capacity);
        EngineLine<ClutchCoupling> line = Line(engine);
        Modes modes = default;
        double speed = line.Release(ref modes);
        var input = new DrivelineInput { Time = 0.1, ShaftSpeed = 50, EngineSpeed = 300, Compliance = 0.5, FreeAcceleration = -20 };
        line.OnGuard(2, ref modes, input, ref speed);
        Assert.Equal(expected, modes.Clutch);
        if (expected != ClutchMode.Locked)
        {
            return;
        }

        // T_c = (T_e − J_e·ω_in'(0))/(1 + J_e·compliance): ratio 6, both counted at the gearbox's input.
        line.At(modes, input, out DrivelineOutput output);
        double held = (200 + (0.25 * 6 * 20)) / (1 + (0.25 * 36 * 0.5));
        Assert.Equal(held, output.CouplingTorque, 1e-10);
        Assert.Equal((6 * -20) + (36 * 0.5 * held), output.EngineAcceleration, 1e-9);
        Assert.Equal(200, (0.25 * output.EngineAcceleration) + output.CouplingTorque, 1e-10);
        Assert.True(modes.Driving);

        // Lets go when more than its capacity is asked for, forward with the sign of the torque.
        input.FreeAcceleration = -2000;
        line.At(modes, input, out output);
        Assert.True(output.CouplingGuard < 0);
        line.OnGuard(2, ref modes, input, ref speed);
        Assert.Equal(ClutchMode.SlipsForward, modes.Clutch);
    }

    [Fact]
    public void Clutch_DrivenBackward_LetsGoTheOtherWay()
    {
        EngineLine<ClutchCoupling> line = Line(Engine(1000, 300, capacity: 100) with { Efficiency = 0.9 });
        Modes modes = default;
        double speed = line.Release(ref modes);
        modes.Clutch = ClutchMode.Locked;
        modes.Driving = true;
        var input = new DrivelineInput { Time = 0.1, ShaftSpeed = 50, EngineSpeed = 300, Compliance = 0.5, FreeAcceleration = 1000 };
        line.At(modes, input, out DrivelineOutput output);
        Assert.True(output.SecondCouplingGuard < 0); // driven, not driving
        line.OnGuard(3, ref modes, input, ref speed);
        Assert.False(modes.Driving);
        line.OnGuard(2, ref modes, input, ref speed);
        Assert.Equal(ClutchMode.SlipsBack, modes.Clutch);
    }

    [Theory]
    [InlineData(100, 0.9, true)]
    [InlineData(-100, 0.9, true)]
    public void Efficiency_EitherWay_LosesPower(double shaft, double efficiency, bool loses)
    {
        EngineLine<ClutchCoupling> line = Line(Engine(5000, 900) with { Efficiency = efficiency });
        Modes modes = default;
        line.Release(ref modes);
        foreach (ClutchMode slip in new[] { ClutchMode.SlipsForward, ClutchMode.SlipsBack })
        {
            modes.Clutch = slip;
            line.At(modes, new DrivelineInput { ShaftSpeed = shaft, EngineSpeed = 900, Compliance = 0.5 }, out DrivelineOutput output);
            double into = output.CouplingTorque * 6 * shaft, outOf = output.AxleTorque * shaft;
            Assert.Equal(loses, outOf < into);
            Assert.Equal(efficiency, into > 0 ? outOf / into : into / outOf, 1e-12);
        }

        // Nothing jumps at standstill.
        line.At(modes, new DrivelineInput { ShaftSpeed = 0, EngineSpeed = 900, Compliance = 0.5 }, out DrivelineOutput still);
        Assert.Equal(6 * still.CouplingTorque, still.AxleTorque, 1e-12);
    }

    [Fact]
    public void Converter_WhoseSpeedRatioCrossesABorder_TakesTheNextSegment()
    {
        var table = new Table([0, 0.5, 0.9], [100, 110, 150]);
        var converter = new ConverterCoupling(new Converter { CapacityFactor = table, TorqueRatio = new Table([0, 0.5, 0.9], [2, 1.4, 1]) });
        Modes modes = default;
        converter.Engage(ref modes, 0, 300, 120);
        Assert.Equal(1, modes.ConverterSegment);
        DrivelineOutput output = default;
        var input = new CouplingInput { EngineSpeed = 300, InputSpeed = 151, EngineInertia = 0.3, FactorDriving = 1 };
        converter.At(modes, input, ref output);
        Assert.True(output.CouplingGuard < 0);
        Assert.True(converter.OnGuard(false, ref modes, input));
        Assert.Equal(2, modes.ConverterSegment);
        converter.At(modes, input, ref output);
        Assert.True(output.CouplingGuard > 0);
        Assert.Equal(converter.Torques(300, 151).Turbine, output.CouplingTorque, 1e-12);

        // An engine that comes to a stop ends the launch.
        Assert.False(converter.OnGuard(true, ref modes, input));
    }

    [Fact]
    public void RandomStates_OfTheChecks_VisitEveryMode()
    {
        // What the checks over random states are worth: none of the pieces is left out.
        var seen = new HashSet<string>();
        RandomState.Any.Sample(
            r =>
            {
                Modes m = r.Seen.Modes;
                lock (seen)
                {
                    seen.UnionWith(
                    [
                        $"rear tyre {m.RearTire}", $"front tyre {m.FrontTire}", $"rear {m.RearTravel}", $"front {m.FrontTravel}",
                        $"rear top {m.RearTop}", $"rear bottom {m.RearBottom}", $"front top {m.FrontTop}", $"front bottom {m.FrontBottom}",
                        $"bar {m.WheelieBar}", $"rear loose {m.RearSpringLoose}", $"front loose {m.FrontSpringLoose}", $"{m.Clutch}",
                        $"rear floor {m.RearOnFloor}", $"{r.Car.Driveline.GetType().Name} {m.Gear}", r.Car.Rear.Linkage.GetType().Name,
                    ]);
                }
            },
            iter: 10000);
        string[] contacts = ["rear tyre", "front tyre", "rear top", "rear bottom", "front top", "front bottom", "bar"];
        foreach (string contact in contacts)
        {
            Assert.All(Enum.GetNames<ContactMode>(), mode => Assert.Contains($"{contact} {mode}", seen));
        }

        Assert.All(Enum.GetNames<TravelBranch>(), branch => Assert.Contains($"rear {branch}", seen));
        Assert.All(Enum.GetNames<TravelBranch>(), branch => Assert.Contains($"front {branch}", seen));
        Assert.All(Enum.GetNames<ClutchMode>(), clutch => Assert.Contains(clutch, seen));
        Assert.All(
            new[] { "rear loose True", "front loose True", "rear floor True", "rear floor False", "EngineDriveline 2", "FourLink", "LadderBar" },
            what => Assert.Contains(what, seen));
    }

    [Fact]
    public void Modes_AllAlongRandomLaunches_AreThoseOfTheTrueLaws() => RandomCar.Any.Sample(
        car =>
        {
            // The frozen modes of a launch, in the middle of each step, against maxima and clips taken afresh: the same
            // accelerations, so every switch came where it had to. 1e-6: a step's middle may lie a rounding beyond a border.
            LaunchSolution launch = LaunchRunner.Create(StandingCar.Find(car), 1e-8).Solve(new RunSettings { Duration = 1 });
            var absolute = new AbsoluteCar(car);
            LaunchRunner runner = LaunchRunner.Create(launch.Car, 1e-8);
            var y = new double[StateLayout.Count];
            var rates = new double[StateLayout.Count];
            for (int i = 0; i < launch.Steps; i += 7)
            {
                (double start, double end) = launch.Step(i);
                double t = 0.5 * (start + end);
                launch.StateAt(i, t, y);
                Modes modes = launch.Modes(i);
                if (modes.Shifting || end - start < 1e-9)
                {
                    continue;
                }

                runner.Rates(t, y, modes, rates);
                AbsoluteCar.Result seen = absolute.At(t, y, new AbsoluteCar.DrivelineState(true, modes.Gear, modes.Clutch, modes.Driving ? 1 : -1));
                double scale = 1 + seen.Accelerations.AbsoluteMaximum();
                Assert.InRange(Math.Abs(seen.Accelerations[0] - rates[StateLayout.XRate]), 0, 1e-6 * scale);
                Assert.InRange(Math.Abs(seen.Accelerations[1] - rates[StateLayout.ZRate]), 0, 1e-6 * scale);
                Assert.InRange(Math.Abs(seen.Linkage - rates[StateLayout.LinkageRate]), 0, 1e-6 * (scale + Math.Abs(seen.Linkage)));
                Assert.InRange(Math.Abs(seen.RearDeflection - rates[StateLayout.RearDeflection]), 0, 1e-6 * (1 + Math.Abs(seen.RearDeflection)));
                Assert.InRange(Math.Abs(seen.Engine - rates[StateLayout.EngineSpeed]), 0, 1e-6 * (100 + Math.Abs(seen.Engine)));
            }
        },
        iter: 60);

    [Fact]
    public void ConverterThatStalls_EndsTheLaunchAndSaysSo()
    {
        Car car = DoorCar.Create() with
        {
            Driveline = new EngineDriveline
            {
                Engine = new Engine { Torque = Table.Constant(-100), Inertia = 0.3, LaunchSpeed = 100 },
                Coupling = new Converter { CapacityFactor = new Table([0, 0.9], [15, 25]), TorqueRatio = new Table([0, 0.9], [2, 1]) },
                Ratios = [2],
                ShiftAt = [],
                ShiftTime = 0,
                FinalDrive = 3.7,
            },
        };
        LaunchEnd end = LaunchRunner.Create(StandingCar.Find(car), 1e-8).Run(new RunSettings { Duration = 1 });
        Assert.Equal(RunStatus.StoppedByEvent, end.Status);
        Assert.InRange(end.Time, 0.01, 0.5);
    }
}
