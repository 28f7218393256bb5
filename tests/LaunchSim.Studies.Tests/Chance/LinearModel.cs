using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Tests.Chance;

/// <summary>A sum of normal inputs, each counting 0.6 times the one before, from the seventh on not at all: shares are the squared factors.</summary>
internal static class LinearModel
{
    public static double Value(double[] u)
    {
        double sum = 0, factor = 1;
        for (int j = 0; j < Math.Min(6, u.Length); j++, factor *= 0.6)
        {
            sum += factor * NormalQuantile.Of(u[j]);
        }

        return sum;
    }

    public static double[] Shares(int inputs)
    {
        double[] squares = [.. Enumerable.Range(0, inputs).Select(j => j < 6 ? Math.Pow(0.36, j) : 0)];
        return [.. squares.Select(square => square / squares.Sum())];
    }
}
