using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson;

/// <summary>The numbers of one launch as the lesson tells them.</summary>
internal sealed class CaseNumbers
{
    private readonly Readout _readout;
    private readonly double _heldTorque;

    /// <summary>Reads a launch.</summary>
    /// <param name="of">The launch.</param>
    /// <param name="readout">The units.</param>
    /// <param name="letter">Its letter in drawings and charts; empty when it is in none.</param>
    /// <param name="heldTorque">The largest torque that its tyres hold, N·m; not a number where nobody asks.</param>
    public CaseNumbers(LessonCase of, Readout readout, string letter = "", double heldTorque = double.NaN) =>
        (Case, _readout, Letter, _heldTorque) = (of, readout, new Word(letter), heldTorque);

    /// <summary>Its letter in drawings and charts.</summary>
    public Word Letter { get; }

    /// <summary>The launch.</summary>
    public LessonCase Case { get; }

    /// <summary>A figure that the launch has.</summary>
    /// <param name="key">Its key.</param>
    /// <exception cref="InvalidOperationException">It has no value in this launch.</exception>
    public Shown this[string key]
    {
        get
        {
            Figure figure = Case.Run.Figures.Get(key);
            Scale scale = figure.Definition.Unit == FigureUnit.Time && key.EndsWith("_lag_s", StringComparison.Ordinal) ? Readout.Lag : FigureFormat.ScaleOf(figure.Definition, _readout);
            return new(Key(key), Meaning(figure.Definition.Name), figure.Value ?? throw new InvalidOperationException($"{Case.Key}: {key}: {figure.Reason}"), scale);
        }
    }

    /// <summary>Whether the launch has a figure.</summary>
    /// <param name="key">Its key.</param>
    public bool Has(string key) => Case.Run.Figures[key] is not null;

    /// <summary>Percent of the standing car.</summary>
    public Shown Percent => this["standing_anti_squat_percent"];

    /// <summary>Height of the upper bar's bracket.</summary>
    public Shown Bracket => Of("bracket_m", "height of the upper bar's bracket", ((LaunchSim.Vehicle.FourLink)Case.Car.Scenario.Car!.Rear.Linkage).UpperBody.Up, _readout.Place);

    /// <summary>The click of the rear extension.</summary>
    public Shown Click => Of("click", "click of the rear extension", Case.Click, new Scale("", 1, 0));

    /// <summary>Least grip to spare.</summary>
    public Shown Spare => Of("grip_margin_lowest_ratio", "least grip to spare", 100 * this["grip_margin_lowest_ratio"].Value, Readout.Percent);

    /// <summary>The largest torque that its tyres hold.</summary>
    public Shown HeldTorque => Of("held_torque_nm", "the largest axle torque, reached as quickly and then held, with which the rear tyres never slip beyond their peak", _heldTorque, _readout.Torque);

    /// <summary>What the drawing says that the rear tyres gain for this launch's thrust at its end.</summary>
    public Shown DrawnTransfer
    {
        get
        {
            Case.Run.Solution.At(Case.Run.Solution.Duration, out Observation last);
            Standing standing = Case.Run.Solution.Car.Standing;
            return Of("end.drawn_transfer_n", "thrust at the end of the run, times height of the centre of gravity over wheelbase", last.RearThrust * standing.CentreOfGravityHeight / standing.Wheelbase, _readout.Force);
        }
    }

    /// <summary>What the rear tyres have gained at the end of the run.</summary>
    public Shown EndGain
    {
        get
        {
            Case.Run.Solution.At(Case.Run.Solution.Duration, out Observation last);
            return Of("end.load_gain_n", "what the rear tyres carry beyond the standing car's load at the end of the run", last.RearLoad - Case.Run.Solution.Car.Standing.RearLoad, _readout.Force);
        }
    }

    /// <summary>What the bars press at the end of the run beyond what the tyres have gained.</summary>
    public Shown EndOver
    {
        get
        {
            Case.Run.Solution.At(Case.Run.Solution.Duration, out Observation last);
            return Of("end.over_n", "what the bars press beyond what the rear tyres have gained, at the end of the run", last.LoadViaLinks - EndGain.Value, _readout.Force);
        }
    }

    /// <summary>How far the rear springs open when they are relieved of that.</summary>
    /// <param name="rates">How stiff they are.</param>
    public Shown EndGap(WheelRates rates) => Of("end.over_m", "what is over at the end of the run, over the rate of the rear springs at the wheels", EndOver.Value / rates.Rear, _readout.Travel);

    /// <summary>How far the whole car's centre of gravity has come up at the end of the run.</summary>
    public Shown CentreRise => Of("end.cg_rise_m", "rise of the whole car's centre of gravity at the end of the run", Case.CentreRise(Case.Run.Solution.Duration), _readout.Travel);

    /// <summary>What that rise is worth in load: thrust times rise over wheelbase.</summary>
    public Shown RiseShare
    {
        get
        {
            Case.Run.Solution.At(Case.Run.Solution.Duration, out Observation last);
            return Of("end.cg_rise_load_n", "thrust at the end of the run, times the rise of the centre of gravity over wheelbase", last.RearThrust * CentreRise.Value / Case.Run.Solution.Car.Standing.Wheelbase, _readout.Force);
        }
    }

    /// <summary>Rear tyre load at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown Load(Shown at) => Seen("rear_tire_load_n", "load of the rear tyres", at, _readout.Force, (in Observation seen) => seen.RearLoad);

    /// <summary>Thrust at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown Thrust(Shown at) => Seen("rear_tire_thrust_n", "thrust of the rear tyres", at, _readout.Force, (in Observation seen) => seen.RearThrust);

    /// <summary>Separation at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown Gap(Shown at) => Seen("separation_m", "separation", at, _readout.Travel, (in Observation seen) => seen.Separation);

    /// <summary>What comes to the rear tyres via the dampers at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown ViaDampers(Shown at) => Seen("load_via_dampers_n", "change of the rear tyres' load via the dampers", at, _readout.Force, (in Observation seen) => seen.LoadViaDampers);

    /// <summary>What comes to the rear tyres via the springs at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown ViaSprings(Shown at) => Seen("load_via_springs_n", "change of the rear tyres' load via the springs", at, _readout.Force, (in Observation seen) => seen.LoadViaSprings);

    /// <summary>What comes to the rear tyres via the bars at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown ViaBars(Shown at) => Seen("load_via_links_n", "change of the rear tyres' load via the bars", at, _readout.Force, (in Observation seen) => seen.LoadViaLinks);

    /// <summary>Pitch at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown Pitch(Shown at) => Seen("pitch_nose_up_rad", "pitch since standing, nose up", at, Readout.Angle, (in Observation seen) => seen.Pitch);

    /// <summary>Rise of an end of the body at an instant.</summary>
    /// <param name="end"><c>rear</c> or <c>front</c>.</param>
    /// <param name="at">When.</param>
    public Shown Rise(string end, Shown at) => end == "rear"
        ? Seen("rear_rise_m", "rise of the body at the rear", at, _readout.Travel, (in Observation seen) => seen.RearRise)
        : Seen("front_rise_m", "rise of the body at the front", at, _readout.Travel, (in Observation seen) => seen.FrontRise);

    /// <summary>Percent at an instant.</summary>
    /// <param name="at">When.</param>
    public Shown PercentAt(Shown at) => Seen("anti_squat_percent", "percent anti-squat", at, Readout.Percent, (in Observation seen) => seen.AntiSquatPercent);

    /// <summary>Mean gain of the rear tyre load from release to an instant.</summary>
    /// <param name="until">To when.</param>
    public Shown MeanGain(Shown until) => Of($"mean_load_gain_n@0..{until.Text}", $"mean of what the rear tyres carry beyond the standing car's load, first {until.Text}", Case.MeanLoadGain(until.Value), _readout.Force);

    /// <summary>The deepest that the body's rear end is under where it stood.</summary>
    public Shown RearFall
    {
        get
        {
            double lowest = 0;
            for (double time = 0; time <= Case.Run.Solution.Duration; time += LaunchReading.Grid)
            {
                Case.Run.Solution.At(time, out Observation seen);
                lowest = Math.Min(lowest, seen.RearRise);
            }

            return Of("rear_fall_m", "how far the body's rear end comes down", -lowest, _readout.Travel);
        }
    }

    /// <summary>What the bars press on the axle at an instant, and what of it the drawing knows.</summary>
    /// <param name="at">When.</param>
    public (Shown Engine, Shown Drawing, Shown Wheels, Shown AxleMass, Shown Other) Push(Shown at)
    {
        var push = BarsPush.At(Case.Run.Solution, at.Value);
        return (
            Part("engine", "what the bars press on the axle", push.Engine),
            Part("drawing", "thrust times the slope of that instant", push.Drawing),
            Part("wheels", "axle torque that is not thrust times the wheel centre's height, over the instant centre's distance", push.Wheels),
            Part("axle_mass", "the axle's own mass carried along, about the instant centre", push.AxleMass),
            Part("rest", "the housing's own turning, and springs and dampers that do not stand over the axle", push.Rest));

        Shown Part(string name, string meaning, double value) => Of($"bars_push.{name}_n@{at.Text}", $"{meaning}, at {at.Text}", value, _readout.Force);
    }

    private Shown Of(string key, string meaning, double value, Scale scale) => new(Key(key), Meaning(meaning), value, scale);

    private Shown Seen(string key, string meaning, Shown at, Scale scale, Reading read)
    {
        Case.Run.Solution.At(at.Value, out Observation seen);
        return Of($"{key}@{at.Text}", $"{meaning} at {at.Text}", read(seen), scale);
    }

    private string Key(string key) => $"{Case.Key}.{key}";

    private string Meaning(string what) => $"{Case.Run.Scenario.Name}, {Case.Key}: {what}";

    private delegate double Reading(in Observation seen);
}
