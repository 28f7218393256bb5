using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Checked values → the car in SI. Only asked when nothing is missing and nothing was refused.</summary>
internal sealed class CarBuilder(BoundValues values)
{
    public Car Car() => new()
    {
        Chassis = Chassis(),
        Front = Front(),
        Rear = Rear(),
        Driveline = Driveline(),
        TrackGrip = values.Find("track.distance") is null
            ? Table.Constant(values.Number("track.grip", 1))
            : values.Table("track.distance", "track.grip"),
    };

    public GeometryPart Geometry() => new()
    {
        Wheelbase = values.Number("car.wheelbase"),
        FrontScale = values.Number("car.scales.front"),
        RearScale = values.Number("car.scales.rear"),
        CentreOfGravityHeight = values.Number("car.cg_height"),
        Linkage = Linkage(),
        RearLoadedRadius = values.FindNumber("rear.tire.loaded_radius"),
        PinionAngle = values.FindNumber("rear.linkage.pinion_angle"),
    };

    public RunSettings Run() => new()
    {
        Duration = values.FindNumber("run.duration"),
        Sample = values.Number("run.sample", 1e-3),
        Tolerance = values.Number("run.tolerance", 1e-8),
        Marks = values.Find("run.marks") is null ? [] : values.Row("run.marks"),
        Rollout = values.Number("run.rollout", 0),
    };

    private Chassis Chassis() => new()
    {
        Wheelbase = values.Number("car.wheelbase"),
        FrontScale = values.Number("car.scales.front"),
        RearScale = values.Number("car.scales.rear"),
        CentreOfGravityHeight = values.Number("car.cg_height"),
        PitchInertia = values.Number("car.pitch_inertia"),
        Aero = !values.HasSection("car.aero") ? null : new Aero
        {
            DragArea = values.Number("car.aero.drag_area"),
            Height = values.Number("car.aero.height"),
            AirDensity = values.Number("car.aero.air_density"),
        },
        FrontRideHeight = values.Number("car.ride_height.front", 0),
        RearRideHeight = values.Number("car.ride_height.rear", 0),
        Ballast = Ballast(),
    };

    private Ballast[] Ballast()
    {
        var ballast = new Ballast[values.CountOf("car.ballast")];
        for (int i = 0; i < ballast.Length; i++)
        {
            ballast[i] = new Ballast { Mass = values.Number($"car.ballast[{i}].mass"), At = values.Point($"car.ballast[{i}].at") };
        }

        return ballast;
    }

    private FrontEnd Front() => new()
    {
        UnsprungMass = values.Number("front.unsprung"),
        SpringRate = values.Number("front.spring.rate"),
        SpringMotionRatio = values.Number("front.spring.motion_ratio"),
        DamperMotionRatio = values.Number("front.damper.motion_ratio"),
        Damper = new DamperTables { Extension = DamperSide("front.damper.extension"), Compression = DamperSide("front.damper.compression") },
        DamperTravel = Travel("front.damper.travel"),
        Tire = Tire("front.tire"),
        SpinInertia = values.Number("front.tire.spin_inertia"),
    };

    private RearEnd Rear() => new()
    {
        UnsprungMass = values.Number("rear.unsprung"),
        HousingInertia = values.Number("rear.housing_inertia"),
        Linkage = Linkage(),
        SpringRate = values.Number("rear.spring.rate"),
        SpringAxleMount = values.Point("rear.spring.axle"),
        SpringBodyMount = values.Point("rear.spring.body"),
        DamperAxleMount = values.Point(values.Find("rear.damper.axle") is null ? "rear.spring.axle" : "rear.damper.axle"),
        DamperBodyMount = values.Point(values.Find("rear.damper.body") is null ? "rear.spring.body" : "rear.damper.body"),
        Damper = new DamperTables { Extension = DamperSide("rear.damper.extension"), Compression = DamperSide("rear.damper.compression") },
        DamperTravel = Travel("rear.damper.travel"),
        Tire = Tire("rear.tire"),
        Carcass = new Carcass
        {
            TorsionalRate = values.Number("rear.tire.carcass.torsional_rate"),
            TorsionalDamping = values.Number("rear.tire.carcass.torsional_damping"),
            RimInertia = values.Number("rear.tire.carcass.rim_inertia"),
            BeltInertia = values.Number("rear.tire.carcass.belt_inertia"),
        },
        WheelieBar = !values.HasSection("rear.wheelie_bar") ? null : new WheelieBar
        {
            Wheel = values.Point("rear.wheelie_bar.wheel"),
            Rate = values.Number("rear.wheelie_bar.rate"),
            Damping = values.Number("rear.wheelie_bar.damping"),
        },
        PinionAngle = values.FindNumber("rear.linkage.pinion_angle"),
    };

    public Linkage Linkage() => values.Word("rear.linkage.type") == "ladder-bar"
        ? new LadderBar { Pivot = values.Point("rear.linkage.pivot") }
        : new FourLink
        {
            LowerAxle = values.Point("rear.linkage.lower.axle"),
            LowerBody = values.Point("rear.linkage.lower.body"),
            UpperAxle = values.Point("rear.linkage.upper.axle"),
            UpperBody = values.Point("rear.linkage.upper.body"),
        };

    private Table DamperSide(string side)
    {
        double[] speed = values.Row(side + ".speed");
        if (values.Find(side + ".clicks") is not { Clicks: { } rows })
        {
            return new Table(speed, values.Row(side + ".force"));
        }

        double set = values.Number(side + ".set");
        int above = 0;
        while (rows[above].Key < set)
        {
            above++;
        }

        double[] upper = rows[above].Value.Quantity!.AllSi();
        if (rows[above].Key == set)
        {
            return new Table(speed, upper);
        }

        double[] lower = rows[above - 1].Value.Quantity!.AllSi();
        double share = (set - rows[above - 1].Key) / (rows[above].Key - rows[above - 1].Key);
        for (int i = 0; i < upper.Length; i++)
        {
            upper[i] = lower[i] + (share * (upper[i] - lower[i]));
        }

        return new Table(speed, upper);
    }

    private DamperTravel Travel(string at) => new()
    {
        Extend = values.Number(at + ".extend"),
        Compress = values.Number(at + ".compress"),
        StopRate = values.Number(at + ".stop_rate"),
        StopDamping = values.Number(at + ".stop_damping"),
    };

    private Tire Tire(string at) => new()
    {
        LoadedRadius = values.Number(at + ".loaded_radius"),
        VerticalRate = values.Number(at + ".vertical_rate"),
        VerticalDamping = values.Number(at + ".vertical_damping"),
        Grip = values.Number(at + ".grip"),
        SlipStiffness = values.Number(at + ".slip_stiffness"),
        PeakSlip = values.Number(at + ".peak_slip"),
        SlidingRatio = values.Number(at + ".sliding_ratio"),
        LoadSensitivity = values.Number(at + ".load_sensitivity"),
        ReferenceLoad = values.Number(at + ".reference_load"),
        RelaxationLength = values.Number(at + ".relaxation_length"),
        RollingResistance = values.Number(at + ".rolling_resistance"),
        Pressure = !values.HasSection(at + ".pressure") ? null : new TirePressure
        {
            Measured = values.Number(at + ".pressure.measured"),
            Set = values.Number(at + ".pressure.set"),
            VerticalRateSlope = values.Number(at + ".pressure.vertical"),
            TorsionalRateSlope = values.Number(at + ".pressure.torsional", 0),
            GripSlope = values.Number(at + ".pressure.grip"),
        },
    };

    private Driveline Driveline()
    {
        Table share = values.HasSection("driveline.power") ? values.Table("driveline.power.time", "driveline.power.share") : Table.Constant(1);
        if (values.Word("driveline.type") == "axle-torque")
        {
            return new AxleTorque { PowerShare = share, Torque = values.Table("driveline.time", "driveline.torque") };
        }

        double[] ratios = values.Row("driveline.gears.ratios");
        return new EngineDriveline
        {
            PowerShare = share,
            Engine = new Engine
            {
                Torque = values.Table("driveline.engine.speed", "driveline.engine.torque"),
                Inertia = values.Number("driveline.engine.inertia"),
                LaunchSpeed = values.Number("driveline.engine.launch_speed"),
            },
            Coupling = values.HasSection("driveline.clutch")
                ? new Clutch { Capacity = values.Table("driveline.clutch.time", "driveline.clutch.capacity") }
                : new Converter
                {
                    CapacityFactor = values.Table("driveline.converter.speed_ratio", "driveline.converter.capacity_factor"),
                    TorqueRatio = values.Table("driveline.converter.speed_ratio", "driveline.converter.torque_ratio"),
                },
            Ratios = ratios,
            ShiftAt = ShiftAt(ratios.Length - 1),
            ShiftTime = values.Number("driveline.gears.shift_time", 0),
            FinalDrive = values.Number("driveline.final_drive"),
            Efficiency = values.Number("driveline.efficiency", 1),
        };
    }

    private double[] ShiftAt(int shifts)
    {
        if (shifts == 0)
        {
            return [];
        }

        double[] given = values.Row("driveline.gears.shift_at");
        return given.Length == shifts ? given : [.. Enumerable.Repeat(given[0], shifts)];
    }
}
