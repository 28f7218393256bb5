using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Units;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Doubting;

/// <summary>Draws, launches and reads plausible cars for one thread: the one place where a launch is read for this study.</summary>
/// <param name="plan">What is run.</param>
/// <param name="bands">Takes the traces' columns; null where nobody wants them.</param>
/// <param name="cancellation">Asked once a step.</param>
internal sealed class DoubtWorker(DoubtPlan plan, TraceBands? bands, CancellationToken cancellation)
{
    // The keys are all that is read of the sentences.
    private static readonly Readout AnyUnits = new(UnitSystem.Si);

    private readonly double[] _u = new double[plan.Numbers.Count];
    private readonly FigureSelection _quick = FigureSelection.Of(plan.Run.Marks.Count, Summary.QuickKeys(plan.Run.Marks.Count).Union(plan.Figures.Select(figure => figure.Key)));
    private LaunchSolution? _solution;

    /// <summary>Draws a car and launches it.</summary>
    /// <param name="number">The car's number.</param>
    public DoubtRow Run(long number)
    {
        PlausibleCar drawn = plan.Plausible.Draw(number, _u);
        double[] figures = new double[plan.Figures.Count];
        if (drawn.Cars is not [var car])
        {
            Array.Fill(figures, double.NaN);
            return new DoubtRow(number, drawn.Redrawn, drawn.Refusal, figures, AimScore.None, [], $"given up: impossible in {PlausibleCars.MostDraws} draws, {drawn.Refusal}");
        }

        LaunchSolution solution = Solve(car);
        using var reading = new LaunchReading(solution, plan.Run);
        (IReadOnlyList<string> sentences, string? trouble) = Read(reading, figures);
        bands?.Set(number, reading);
        return new DoubtRow(number, drawn.Redrawn, drawn.Refusal, figures, trouble is null ? plan.Score(figures) : AimScore.None, sentences, trouble);
    }

    /// <summary>Launches the file's own car.</summary>
    /// <param name="foremost">The sentence that matters most.</param>
    /// <param name="course">Its trace, to be disposed of.</param>
    public DoubtRow RunOwn(out string foremost, out LaunchReading course)
    {
        double[] figures = new double[plan.Figures.Count];
        LaunchSolution solution = Solve(StandingCar.Find(plan.Scenario.Car!));
        course = new LaunchReading(solution, plan.Run);
        (IReadOnlyList<string> sentences, string? trouble) = Read(course, figures);
        foremost = trouble is not null ? "run.stopped" : Summary.Foremost(Reports.LaunchOutcome.Read(plan.Scenario, solution), AnyUnits)[0].Key;
        return new DoubtRow(-1, 0, null, figures, trouble is null ? plan.Score(figures) : AimScore.None, sentences, trouble);
    }

    private LaunchSolution Solve(StandingCar car)
    {
        _solution = LaunchRunner.Create(car, plan.Run.Tolerance, LaunchWorker.MostSteps(plan.Run)).Solve(plan.Run, _solution, cancellation);
        cancellation.ThrowIfCancellationRequested();
        return _solution;
    }

    private (IReadOnlyList<string> Sentences, string? Trouble) Read(LaunchReading launch, double[] figures)
    {
        FigureSet all = Figures(launch);
        for (int i = 0; i < figures.Length; i++)
        {
            figures[i] = all[plan.Figures[i].Key] ?? double.NaN;
        }

        string? trouble = LaunchFailure.Of(launch.Solution) is { } failure ? $"{failure.Part}: {failure.Found}" : null;
        var keys = new List<string>(20);
        foreach (Sentence sentence in Summary.Of(all, AnyUnits))
        {
            if (!keys.Contains(sentence.Key))
            {
                keys.Add(sentence.Key);
            }
        }

        return (keys, trouble);
    }

    // Where a quick reading tells all that is asked for, the whole car is not observed.
    private FigureSet Figures(LaunchReading launch)
    {
        if (launch.Solution.Car.Car.Driveline is AxleTorque)
        {
            FigureSet quick = LaunchFigures.ReadFrom(launch, _quick);
            if (quick["slip_beyond_peak_first_s"] is null)
            {
                return quick;
            }
        }

        return LaunchFigures.ReadFrom(launch);
    }
}
