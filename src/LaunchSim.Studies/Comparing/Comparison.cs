using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Comparing;

/// <summary>
/// Several set-ups side by side: the first one is what the others are compared with. All are launched for one time, with the
/// marks, rollout and tolerance of the first, and held against the same aims: what is left between them is the set-up.
/// </summary>
public sealed class Comparison
{
    private Comparison(AimSet aims, RunSettings settings, IReadOnlyList<ComparedSetUp> setUps)
    {
        (Aims, Settings, SetUps) = (aims, settings, setUps);
        Written = WrittenDifference.Of([.. setUps.Select(setUp => setUp.Run.Scenario)]);
        Figures = FigureRow.Of([.. setUps.Select(setUp => setUp.Run.Figures)]);
        Differences = [.. setUps.Skip(1).Select(setUp => SetUpDifference.Of(setUps[0], setUp))];
    }

    /// <summary>What is wanted.</summary>
    public AimSet Aims { get; }

    /// <summary>How all were launched.</summary>
    public RunSettings Settings { get; }

    /// <summary>The set-ups, the first one first.</summary>
    public IReadOnlyList<ComparedSetUp> SetUps { get; }

    /// <summary>What is written differently in their files.</summary>
    public IReadOnlyList<WrittenDifference> Written { get; }

    /// <summary>All figures side by side.</summary>
    public IReadOnlyList<FigureRow> Figures { get; }

    /// <summary>The first against each of the others, in their order.</summary>
    public IReadOnlyList<SetUpDifference> Differences { get; }

    /// <summary>Whether a file asks for another run than the one that all got.</summary>
    public bool ChangesRuns => SetUps.Any(setUp => setUp.Run.Scenario.Run is var own
        && (own.Duration != Settings.Duration || own.Rollout != Settings.Rollout || !own.Marks.SequenceEqual(Settings.Marks)));

    /// <summary>Launches scenarios and compares them.</summary>
    /// <param name="scenarios">The scenarios, read for a run; two at the least.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="launched">Called after each launch, from any thread; or null.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static Comparison Of(IReadOnlyList<Scenario> scenarios, AimSet aims, Action? launched, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenarios);
        ArgumentNullException.ThrowIfNull(aims);
        ArgumentOutOfRangeException.ThrowIfLessThan(scenarios.Count, 2);
        RunSettings settings = SettingsFor(scenarios);
        var setUps = new ComparedSetUp[scenarios.Count];
        var options = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellation };
        _ = Parallel.For(0, setUps.Length, options, i =>
        {
            setUps[i] = SetUp(i, LaunchOutcome.Of(scenarios[i], settings, cancellation), aims);
            launched?.Invoke();
        });
        return new Comparison(aims, settings, setUps);
    }

    // Figures of a whole run can only be compared over the same time: the shortest that any file asks for.
    private static RunSettings SettingsFor(IReadOnlyList<Scenario> scenarios)
    {
        RunSettings first = scenarios[0].Run;
        double[] times = [.. scenarios.Select(scenario => scenario.Run).Where(run => run.Duration is not null || run.Marks.Count == 0).Select(run => run.Duration ?? RunSettings.DefaultDuration)];
        return first with { Duration = times.Length > 0 ? times.Min() : null, Tolerance = scenarios.Min(scenario => scenario.Run.Tolerance) };
    }

    private static ComparedSetUp SetUp(int place, LaunchOutcome run, AimSet aims)
    {
        double[] figures = [.. aims.Keys.Select(key => run.Figures[key] ?? double.NaN)];
        return new ComparedSetUp
        {
            Letter = ComparedSetUp.LetterOf(place),
            Run = run,
            Parts = aims.Parts(figures),
            Score = run.Failure is null ? aims.Score(figures) : AimScore.None,
        };
    }
}
