using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Grids;

/// <summary>Runs the set-ups of a grid on all cores; the rows come in order whatever the number of threads.</summary>
public static class GridRunner
{
    private const int BlockSize = 16;

    /// <summary>Runs the set-ups of a range.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="from">The first set-up.</param>
    /// <param name="to">The one after the last.</param>
    /// <param name="threads">How many threads, at least one.</param>
    /// <param name="take">Receives rows in order, on the calling thread.</param>
    /// <param name="cancellation">Ends it; what was handed over is whole.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static void Run(GridPlan plan, long from, long to, int threads, Action<IReadOnlyList<GridRow>> take, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(take);
        OrderedBlocks.Run(from, to, threads, BlockSize, () => new LaunchWorker(plan.Figures, plan.Settings), (worker, setUp) => One(plan, worker, setUp, cancellation), (_, rows) => take(rows), cancellation);
    }

    /// <summary>Runs set-ups by their numbers; the rows stand in the order of the numbers given.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="setUps">Numbers of set-ups.</param>
    /// <param name="threads">How many threads, at least one.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static IReadOnlyList<GridRow> Run(GridPlan plan, IReadOnlyList<long> setUps, int threads, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(setUps);
        var rows = new List<GridRow>(setUps.Count);
        OrderedBlocks.Run(0, setUps.Count, threads, 1, () => new LaunchWorker(plan.Figures, plan.Settings), (worker, i) => One(plan, worker, setUps[(int)i], cancellation), (_, done) => rows.AddRange(done), cancellation);
        return rows;
    }

    /// <summary>Runs the scenario as it stands; the row's number is −1.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static GridRow Present(GridPlan plan, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        double[] figures = new double[plan.Figures.Count];
        using var worker = new LaunchWorker(plan.Figures, plan.Settings);
        string? trouble = worker.Run(plan.Study.Scenario.Car!, figures, cancellation);
        AimScore score = trouble is null ? plan.Aims.Score(figures.AsSpan(0, plan.Aims.Keys.Count)) : AimScore.None;
        return new GridRow(-1, figures, score, score, trouble);
    }

    private static GridRow One(GridPlan plan, LaunchWorker worker, long setUp, CancellationToken cancellation)
    {
        double[] figures = new double[plan.Figures.Count];
        Array.Fill(figures, double.NaN);
        Scenario scenario = plan.Study.Scenario;
        if (LaunchWorker.Edited(scenario, plan.Grid.Edits(setUp), out string? trouble) is not { } car)
        {
            return new GridRow(setUp, figures, AimScore.None, AimScore.None, trouble);
        }

        trouble = worker.Run(car, figures, cancellation);
        int aims = plan.Aims.Keys.Count;
        AimScore score = trouble is null ? plan.Aims.Score(figures.AsSpan(0, aims)) : AimScore.None;
        if (trouble is not null || !plan.HoldsGrip || !GripHeld.Matters(scenario.Car!, car))
        {
            return new GridRow(setUp, figures, score, score, trouble);
        }

        double[] again = new double[figures.Length];
        trouble = worker.RunHeld(scenario.Car!, car, again, cancellation);
        return new GridRow(setUp, figures, trouble is null ? plan.Aims.Score(again.AsSpan(0, aims)) : AimScore.None, score, trouble, again);
    }
}
