using System.Diagnostics;

namespace LaunchSim.Studies.Grids;

/// <summary>How many launches of a grid are run in a second on this machine, from a few that are run for it.</summary>
public static class GridRate
{
    private const int Launches = 3;

    /// <summary>Launches a second.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="threads">How many threads it would be run with; no more than there are cores count.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static double Of(GridPlan plan, int threads, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var worker = new Running.LaunchWorker(plan.Figures, plan.Settings);
        double[] figures = new double[plan.Figures.Count];

        // The first launch is that of a program that has just started.
        _ = worker.Run(plan.Study.Scenario, [], figures, cancellation);
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < Launches; i++)
        {
            _ = worker.Run(plan.Study.Scenario, [], figures, cancellation);
        }

        double each = Stopwatch.GetElapsedTime(start).TotalSeconds / Launches;
        return Math.Min(threads, Environment.ProcessorCount) / each / (plan.HoldsGrip ? 2 : 1);
    }
}
