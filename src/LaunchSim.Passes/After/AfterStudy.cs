using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Next;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.After;

/// <summary>Between two passes: what was expected, what came, what that says of the car, and the one change to make.</summary>
public static class AfterStudy
{
    /// <summary>How many plausible cars a change is tried on.</summary>
    public const int Cars = 300;

    private const double Tolerance = 1e-6;

    // Nobody waits for more between two passes.
    private const int Starts = 2;

    /// <summary>Works it out.</summary>
    /// <param name="pass">The pass.</param>
    /// <param name="predicted">Its prediction, solved with the pass's own settings.</param>
    /// <param name="logs">What was recorded of it.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static AfterResult Run(PassFile pass, LaunchOutcome predicted, IReadOnlyList<FitLog> logs, AimSet aims, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(pass);
        ArgumentNullException.ThrowIfNull(predicted);
        ArgumentNullException.ThrowIfNull(logs);
        ArgumentNullException.ThrowIfNull(aims);
        IReadOnlyList<SeenComparison> seen = SeenPrediction.Of(predicted.Solution, pass.Run, pass.Seen);
        FitResult? fit = predicted.Failure is null ? Fitted(pass, logs, cancellation) : null;
        var drawn = new DoubtSettings { Cars = Cars, Tolerance = Tolerance, Correlations = fit?.Together() };
        Scenario learned = fit is null ? pass.Scenario : Learned(pass.Scenario, fit);
        IReadOnlyList<Variation> settings = VariationReader.OfChoices(learned);
        bool isOffered = settings.Count == 0;
        settings = isOffered ? OfferedChoices.Of(learned) : settings;
        NextResult next = NextStudy.Run(learned, settings, isOffered, aims, Tolerance, Environment.ProcessorCount, null, cancellation);
        (NextChange? change, HelpShare? help) = Surest(next, learned, drawn, cancellation);
        return new AfterResult
        {
            Pass = pass,
            Predicted = predicted,
            Seen = seen,
            Fit = fit,
            Learned = learned,
            Next = next,
            Change = change,
            Help = help,
            Cars = Cars,
            Signs = change?.Scenario is { } changed ? VideoSigns.Of(learned, changed, Looked(pass.Run), pass.Seen, drawn, cancellation) : [],
        };
    }

    private static FitResult? Fitted(PassFile pass, IReadOnlyList<FitLog> logs, CancellationToken cancellation)
    {
        var model = FitModel.Of(FitParameters.Hardest(pass.Scenario), [new FitPass(pass.Name, pass.Scenario, pass.Run, logs, pass.Seen)]);
        if (model.ResidualCount == model.DataStart || model.Parameters.Count == 0)
        {
            return null;
        }

        FitResult fit = Fit.Run(model, new FitSettings { Starts = Starts, Rounds = 0 }, cancellation);
        return fit.Values.Any(value => value.IsTold) ? fit : null;
    }

    // A fit that cannot be written back, such as a value that the file's rules refuse, teaches nothing.
    private static Scenario Learned(Scenario scenario, FitResult fit) => scenario.With(FittedScenario.Changes(fit, scenario)).Scenario ?? scenario;

    /// <summary>Of the changes that help, the one that helps on most of the plausible cars.</summary>
    private static (NextChange? Change, HelpShare? Help) Surest(NextResult next, Scenario learned, DoubtSettings drawn, CancellationToken cancellation)
    {
        NextChange[] helping = [.. next.Singles.Where(next.Helps).Take(6)];
        if (!next.Score.Exists || helping.Length == 0)
        {
            return (null, null);
        }

        HelpResult help = HelpShares.Of(
            [learned, .. helping.Select(change => change.Scenario!)], next.Aims, drawn, holdsGrip: true, null, cancellation);
        int best = Enumerable.Range(0, helping.Length).OrderByDescending(i => help.Changes[i].Helps.Share - help.Changes[i].Hurts.Share).First();
        return (helping[best], help.Changes[best]);
    }

    private static RunSettings Looked(RunSettings run) => run with { Marks = [], Duration = Math.Min(run.Duration ?? RunSettings.DefaultDuration, 1) };
}
