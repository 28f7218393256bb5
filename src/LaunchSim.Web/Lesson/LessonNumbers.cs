using LaunchSim.Dynamics;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson;

/// <summary>All that the chapters tell numbers of: the launches, the car, and the drawing's statics for it.</summary>
internal sealed class LessonNumbers
{
    // The thrust that the reader begins with stands on a whole number of these.
    private const double RoundThrust = 50;

    private readonly double _thrust;

    /// <summary>Reads the launches.</summary>
    /// <param name="runs">The launches.</param>
    /// <param name="readout">The units.</param>
    /// <param name="cancellation">Asked while the torques that the tyres hold are looked for.</param>
    public LessonNumbers(LessonRuns runs, Readout readout, CancellationToken cancellation)
    {
        (Runs, Readout) = (runs, readout);
        Below = Numbers(runs.Below, "A");
        At = Numbers(runs.At, "B");
        Above = Numbers(runs.Above, "C");
        Soft = Numbers(runs.Soft, "D");
        Stiff = Numbers(runs.Stiff, "E");
        OutOfStep = runs.OutOfStep == runs.Stiff ? Stiff : Soft;
        Clicks = [.. runs.Clicks.Select(click => click.Key switch
        {
            "above" => Above,
            "soft" => Soft,
            "stiff" => Stiff,
            _ => new CaseNumbers(click, readout),
        })];
        runs.Above.Run.Solution.At(runs.Above.Run.Solution.Duration, out Observation last);
        _thrust = RoundThrust * readout.Force.Factor * Math.Round(last.RearThrust / readout.Force.Factor / RoundThrust);

        CaseNumbers Numbers(LessonCase one, string letter) => new(one, readout, letter, one.HeldTorque(cancellation));
    }

    /// <summary>The launches.</summary>
    public LessonRuns Runs { get; }

    /// <summary>The units.</summary>
    public Readout Readout { get; }

    /// <summary>The launch below 100 %.</summary>
    public CaseNumbers Below { get; }

    /// <summary>The launch at 100 %.</summary>
    public CaseNumbers At { get; }

    /// <summary>The launch above 100 %, both ends nearest to together.</summary>
    public CaseNumbers Above { get; }

    /// <summary>The same with the softest rear extension.</summary>
    public CaseNumbers Soft { get; }

    /// <summary>The same with the stiffest.</summary>
    public CaseNumbers Stiff { get; }

    /// <summary>Those that are shown moving, in the order of their letters.</summary>
    public IReadOnlyList<CaseNumbers> Moving => [Below, At, Above, Soft, Stiff];

    /// <summary>Of both the one whose ends come up farther from together.</summary>
    public CaseNumbers OutOfStep { get; }

    /// <summary>Above 100 % with every click.</summary>
    public IReadOnlyList<CaseNumbers> Clicks { get; }

    /// <summary>How many launches are told of.</summary>
    public Shown Launches => new("lesson.launches", "launches that the lesson tells of", Runs.Clicks.Count + 2, new Scale("", 1, 0));

    /// <summary>Half a tenth of a second.</summary>
    public Shown HalfTenth { get; } = Instant("half_tenth_s", 0.05);

    /// <summary>A tenth of a second.</summary>
    public Shown Tenth { get; } = Instant("tenth_s", 0.1);

    /// <summary>When the runs end.</summary>
    public Shown End => Above["run_end_s"];

    /// <summary>The car's weight.</summary>
    public Shown Weight => Car("weight_n", "weight", Standing.FrontLoad + Standing.RearLoad, Readout.Force);

    /// <summary>Its standing rear load.</summary>
    public Shown RearLoad => Car("rear_load_n", "standing load of the rear tyres", Standing.RearLoad, Readout.Force);

    /// <summary>Its standing front load.</summary>
    public Shown FrontLoad => Car("front_load_n", "standing load of the front tyres", Standing.FrontLoad, Readout.Force);

    /// <summary>Its wheelbase.</summary>
    public Shown Wheelbase => Car("wheelbase_m", "wheelbase", Standing.Wheelbase, Readout.Place.With(0));

    /// <summary>Height of its centre of gravity.</summary>
    public Shown CentreOfGravity => Car("cg_height_m", "height of the centre of gravity", Standing.CentreOfGravityHeight, Readout.Place.With(0));

    /// <summary>How far its centre of gravity is ahead of the rear axle, m.</summary>
    public double CentreOfGravityAhead => Standing.Wheelbase * Standing.FrontLoad / (Standing.FrontLoad + Standing.RearLoad);

    /// <summary>The torque that all launches are given.</summary>
    public Shown Torque => Above["axle_torque_largest_nm"];

    /// <summary>When it is all there.</summary>
    public Shown TorqueTime => Above["axle_torque_largest_time_s"].With(2);

    /// <summary>The thrust that the reader begins with.</summary>
    public Shown Thrust => Car("drawn_thrust_n", "thrust that the drawing begins with", _thrust, Readout.Force);

    /// <summary>Standing car of the launches.</summary>
    public Standing Standing => Runs.Above.Run.Solution.Car.Standing;

    /// <summary>How stiff its ends are.</summary>
    public WheelRates Rates => WheelRates.Of(Runs.Above.Run.Solution.Car);

    /// <summary>The drawing's statics of a launch's car, with the thrust that the reader begins with.</summary>
    /// <param name="of">The launch.</param>
    public AxleStatics Statics(CaseNumbers of) => new(of.Case.Run.Solution.Car.Line.Slope, Standing.CentreOfGravityHeight, Standing.Wheelbase, _thrust);

    /// <summary>A number of the drawing's statics.</summary>
    /// <param name="key">What it is called.</param>
    /// <param name="meaning">What it is.</param>
    /// <param name="value">Its value in SI.</param>
    /// <param name="scale">Its unit.</param>
    public static Shown Drawn(string key, string meaning, double value, Scale scale) => new("drawing." + key, $"the drawing: {meaning}", value, scale);

    private static Shown Instant(string key, double value) => new("lesson." + key, "an instant after release", value, Readout.Time.With(value < 0.1 ? 2 : 1));

    private static Shown Car(string key, string meaning, double value, Scale scale) => new("car." + key, $"the lesson's car: {meaning}", value, scale);
}
