using System.Diagnostics;

namespace LaunchSim.Studies.Grids;

/// <summary>How many launches of a grid are run in a second on this machine, from a few that are run for it.</summary>
public static class GridRate
{
    // A program that has just started is slow at first, s; and so long it is looked at.
    private const double WarmUp = 0.5, Look = 0.5;

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

        _ = Each(WarmUp);
        double each = Each(Look);
        return Math.Min(threads, Environment.ProcessorCount) / each / (plan.HoldsGrip ? 2 : 1);

        double Each(double least)
        {
            long start = Stopwatch.GetTimestamp();
            int launches = 0;
            do
            {
                _ = worker.Run(plan.Study.Scenario.Car!, figures, cancellation);
                launches++;
            }
            while (Stopwatch.GetElapsedTime(start).TotalSeconds < least);
            return Stopwatch.GetElapsedTime(start).TotalSeconds / launches;
        }
    }
}
