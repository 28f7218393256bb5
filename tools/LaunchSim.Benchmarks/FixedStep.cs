using System.Text.Json.Nodes;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;

namespace LaunchSim.Benchmarks;

/// <summary>
/// The same right-hand side under MathNet.Numerics' fixed-step RK4, from event to event with the modes that hold there,
/// with the step at which it is as accurate as our launch at 1e-6: the ratio of times and of evaluations.
/// </summary>
internal static class FixedStep
{
    public static int Run(string file)
    {
        if (Cars.Read(file) is not { } car)
        {
            return 2;
        }

        LaunchSolution reference = LaunchRunner.Create(car, 1e-12).Solve(Cars.OneSecond);
        List<(double Start, double End, Modes Modes)> pieces = Pieces(reference);
        var exact = new double[StateLayout.Count];
        reference.StateAt(reference.Steps - 1, reference.Duration, exact);

        LaunchRunner ours = LaunchRunner.Create(car, 1e-6);
        LaunchEnd end = ours.Run(Cars.OneSecond);
        double error = Error(ours.State, exact);
        double ourTime = Quick.Median(() => ours.Run(Cars.OneSecond));

        LaunchRunner rates = LaunchRunner.Create(car, 1e-6);
        double coarse = 1e-6, fine = 1e-2;
        for (int i = 0; i < 40; i++)
        {
            double step = Math.Sqrt(coarse * fine);
            (coarse, fine) = Error(Rk4(rates, pieces, step, out _), exact) > error ? (coarse, step) : (step, fine);
        }

        double[] last = Rk4(rates, pieces, coarse, out int evaluations);
        double time = Quick.Median(() => Rk4(rates, pieces, coarse, out _));
        Console.WriteLine(new JsonObject
        {
            ["error"] = error,
            ["error_fixed_step"] = Error(last, exact),
            ["step_fixed_s"] = coarse,
            ["evaluations"] = end.Statistics.Evaluations,
            ["evaluations_fixed_step"] = evaluations,
            ["launch_ms"] = Math.Round(ourTime, 4),
            ["launch_ms_fixed_step"] = Math.Round(time, 4),
            ["ratio"] = Math.Round(time / ourTime, 2),
        }.ToJsonString());
        return 0;
    }

    private static List<(double Start, double End, Modes Modes)> Pieces(LaunchSolution solution)
    {
        var pieces = new List<(double, double, Modes)>();
        for (int i = 0; i < solution.Steps; i++)
        {
            (double start, double end) = solution.Step(i);
            Modes modes = solution.Modes(i);
            if (pieces.Count > 0 && pieces[^1].Item3.Equals(modes))
            {
                pieces[^1] = (pieces[^1].Item1, end, modes);
            }
            else
            {
                pieces.Add((start, end, modes));
            }
        }

        return pieces;
    }

    private static double[] Rk4(LaunchRunner runner, List<(double Start, double End, Modes Modes)> pieces, double step, out int evaluations)
    {
        int count = 0;
        var state = new double[StateLayout.Count];
        var rates = new double[StateLayout.Count];
        runner.Release(state);

        // Time is carried as a state: MathNet.Numerics 5.0's RK4 misplaces its second stage in time.
        Vector<double> y = Vector<double>.Build.DenseOfEnumerable(state.Append(0.0));
        foreach ((double start, double end, Modes modes) in pieces)
        {
            int steps = Math.Max(1, (int)Math.Ceiling((end - start) / step));
            Vector<double>[] course = RungeKutta.FourthOrder(y, start, end, steps + 1, (_, at) =>
            {
                count++;
                double[] now = at.ToArray();
                runner.Rates(now[^1], now, modes, rates);
                return Vector<double>.Build.DenseOfEnumerable(rates.Append(1.0));
            });
            y = course[^1];
        }

        evaluations = count;
        return y.ToArray();
    }

    private static double Error(ReadOnlySpan<double> state, double[] exact)
    {
        double[] scales = StateLayout.Scales(1e5);
        double sum = 0;
        for (int i = 0; i < StateLayout.Count; i++)
        {
            double share = (state[i] - exact[i]) / scales[i];
            sum += share * share;
        }

        return Math.Sqrt(sum / StateLayout.Count);
    }
}
