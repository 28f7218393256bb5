using System.Numerics;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Vehicle;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace LaunchSim.Tests.Dynamics;

/// <summary>The product's own rates about the standing car as a matrix, by central differences with Richardson's step.</summary>
internal static class Linearised
{
    /// <summary>The matrix over chosen states.</summary>
    public static Matrix<double> At(Car car, params int[] states)
    {
        LaunchRunner runner = LaunchRunner.Create(StandingCar.Find(car), 1e-8);
        var y = new double[StateLayout.Count];
        Modes modes = runner.Release(y);
        Matrix<double> a = DenseMatrix.Create(states.Length, states.Length, 0);
        for (int column = 0; column < states.Length; column++)
        {
            double[] coarse = Slope(runner, y, modes, states[column], 2e-4), fine = Slope(runner, y, modes, states[column], 1e-4);
            for (int row = 0; row < states.Length; row++)
            {
                a[row, column] = ((4 * fine[states[row]]) - coarse[states[row]]) / 3;
            }
        }

        return a;
    }

    /// <summary>Eigenvalues, by rising size.</summary>
    public static Complex[] Roots(Matrix<double> a) => [.. a.Evd().EigenValues.OrderBy(root => root.Magnitude)];

    private static double[] Slope(LaunchRunner runner, double[] y, Modes modes, int state, double step)
    {
        var above = new double[StateLayout.Count];
        var below = new double[StateLayout.Count];
        double[] at = [.. y];
        at[state] = y[state] + step;
        double up = at[state];
        runner.Rates(0, at, modes, above);
        at[state] = y[state] - step;
        double down = at[state];
        runner.Rates(0, at, modes, below);
        return above.Zip(below, (a, b) => (a - b) / (up - down)).ToArray();
    }
}
