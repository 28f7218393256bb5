namespace LaunchSim.Integration.Tests;

internal static class Linear
{
    /// <summary>Solves n rows of n coefficients and one right side by elimination with row pivots; overwrites the rows.</summary>
    public static void Solve(double[,] rows, double[] solution)
    {
        int n = solution.Length;
        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < n; i++)
            {
                if (Math.Abs(rows[i, k]) > Math.Abs(rows[pivot, k]))
                {
                    pivot = i;
                }
            }

            for (int j = k; j <= n && pivot != k; j++)
            {
                (rows[k, j], rows[pivot, j]) = (rows[pivot, j], rows[k, j]);
            }

            for (int i = k + 1; i < n; i++)
            {
                double factor = rows[i, k] / rows[k, k];
                for (int j = k; factor != 0 && j <= n; j++)
                {
                    rows[i, j] -= factor * rows[k, j];
                }
            }
        }

        for (int k = n - 1; k >= 0; k--)
        {
            double sum = rows[k, n];
            for (int j = k + 1; j < n; j++)
            {
                sum -= rows[k, j] * solution[j];
            }

            solution[k] = sum / rows[k, k];
        }
    }
}
