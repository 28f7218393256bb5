using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Reports;

namespace LaunchSim.Web.Lesson;

/// <summary>Every launch that the lesson speaks of, solved when it is made.</summary>
public sealed class LessonRuns
{
    /// <summary>The percents of the three cars that differ in nothing else.</summary>
    public const double BelowPercent = 70, AtPercent = 100, AbovePercent = 160;

    private LessonRuns(LessonCar car, IReadOnlyList<LessonCase> clicks, int inStep, LessonCase below, LessonCase at)
    {
        (Car, Clicks, Below, At, Above) = (car, clicks, below, at, clicks[inStep]);
        (Soft, Stiff) = (clicks[0], clicks[^1]);
    }

    /// <summary>The lesson's car as it is written.</summary>
    public LessonCar Car { get; }

    /// <summary>Below 100 %.</summary>
    public LessonCase Below { get; }

    /// <summary>At 100 %.</summary>
    public LessonCase At { get; }

    /// <summary>Above 100 %, with the click of the rear extension at which both ends come up nearest to together; <see cref="Below"/> and <see cref="At"/> have the same click.</summary>
    public LessonCase Above { get; }

    /// <summary>Above 100 % with the softest rear extension.</summary>
    public LessonCase Soft { get; }

    /// <summary>Above 100 % with the stiffest rear extension.</summary>
    public LessonCase Stiff { get; }

    /// <summary>Above 100 % with every click of the rear extension, from soft to stiff.</summary>
    public IReadOnlyList<LessonCase> Clicks { get; }

    /// <summary>Of the softest and the stiffest the one whose ends come up farther from together.</summary>
    public LessonCase OutOfStep => Math.Abs(Stiff.Lag) >= Math.Abs(Soft.Lag) ? Stiff : Soft;

    /// <summary>Solves them all.</summary>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static LessonRuns Solve(CancellationToken cancellation)
    {
        var car = LessonCar.Load();
        LessonCar above = car.WithPercent(AbovePercent);
        (int first, int last) = car.Clicks;
        LessonCase[] clicks = [.. Enumerable.Range(first, last - first + 1).Select(click => LessonCase.Solve("click" + Spelled(click), above.WithExtension(click), click, cancellation))];
        int inStep = Enumerable.Range(0, clicks.Length).MinBy(i => Math.Abs(clicks[i].Lag));
        int set = clicks[inStep].Click;
        clicks[inStep] = clicks[inStep] with { Key = "above" };
        clicks[0] = clicks[0] with { Key = "soft" };
        clicks[^1] = clicks[^1] with { Key = "stiff" };
        return new LessonRuns(
            car, clicks, inStep,
            LessonCase.Solve("below", car.WithPercent(BelowPercent).WithExtension(set), set, cancellation),
            LessonCase.Solve("at", car.WithPercent(AtPercent).WithExtension(set), set, cancellation));
    }

    private static string Spelled(int click) => click.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>One launch of the lesson's car.</summary>
/// <param name="Key">What the lesson calls it: <c>below</c>, <c>at</c>, <c>above</c>, <c>soft</c>, <c>stiff</c>, or its click.</param>
/// <param name="Car">The car.</param>
/// <param name="Click">The click of its rear extension.</param>
/// <param name="Run">Its launch.</param>
public sealed record LessonCase(string Key, LessonCar Car, int Click, LaunchOutcome Run)
{
    // A thousandth of what a torque gauge would show, N·m.
    private const double Fine = 1;

    private static readonly FigureSelection Slipping = FigureSelection.Of(0, ["slip_beyond_peak_time_s"]);

    /// <summary>Rise lag, s: positive when the front is late; endless when an end does not come up.</summary>
    public double Lag => Run.Figures["rise_lag_s"] ?? double.PositiveInfinity;

    /// <summary>The largest torque of both axle shafts, reached as quickly and then held, with which the rear tyres never slip beyond their peak, N·m.</summary>
    /// <param name="cancellation">Asked once a step.</param>
    public double HeldTorque(CancellationToken cancellation)
    {
        double holds = Run.Figures["axle_torque_largest_nm"]!.Value, slips = 2 * holds;
        if (!Holds(holds, cancellation) || Holds(slips, cancellation))
        {
            throw new InvalidOperationException("The lesson's car is to hold its own torque and to slip at twice as much.");
        }

        while (slips - holds > Fine)
        {
            double between = 0.5 * (holds + slips);
            (holds, slips) = Holds(between, cancellation) ? (between, slips) : (holds, between);
        }

        return holds;
    }

    /// <summary>Mean of what the rear tyres carry beyond the standing car's load, from release on, N.</summary>
    /// <param name="until">To this instant, s.</param>
    public double MeanLoadGain(double until)
    {
        const int Parts = 200;
        double standing = Run.Solution.Car.Standing.RearLoad, sum = 0;
        for (int i = 0; i <= Parts; i++)
        {
            Run.Solution.At(until * i / Parts, out Observation seen);
            sum += (i is 0 or Parts ? 0.5 : 1) * (seen.RearLoad - standing);
        }

        return sum / Parts;
    }

    /// <summary>How far the whole car's centre of gravity is above where it stood, m.</summary>
    /// <param name="time">When, s.</param>
    public double CentreRise(double time)
    {
        LaunchModel model = Run.Solution.Car.Model;
        Standing standing = model.Standing;
        Run.Solution.At(time, out Observation seen);
        (double sin, double cos) = Math.SinCos(seen.Pitch);
        double sprung = seen.RearRise + (sin * standing.X) + ((cos - 1) * (standing.Z - standing.RearWheelHeight));
        double rear = seen.RearWheelHeight - standing.RearWheelHeight, front = seen.FrontWheelHeight - standing.FrontWheelHeight;
        return ((model.SprungMass * sprung) + (model.RearMass * rear) + (model.FrontMass * front)) / (model.SprungMass + model.RearMass + model.FrontMass);
    }

    internal static LessonCase Solve(string key, LessonCar car, int click, CancellationToken cancellation)
    {
        var run = LaunchOutcome.Of(car.Scenario, cancellation);
        return run.Failure is null ? new LessonCase(key, car, click, run) : throw new InvalidOperationException($"The lesson's launch `{key}` did not come to its end.");
    }

    private bool Holds(double torque, CancellationToken cancellation)
    {
        LessonCar tried = Car.WithTorque(torque);
        LaunchSolution solution = LaunchSimulation.Solve(tried.Scenario.Car!, tried.Scenario.Run, cancellation);
        cancellation.ThrowIfCancellationRequested();
        using var launch = new LaunchReading(solution, tried.Scenario.Run);
        return LaunchFigures.ReadFrom(launch, Slipping)["slip_beyond_peak_time_s"] is 0;
    }
}
