using MathNet.Numerics.Distributions;

namespace LaunchSim.Studies.Chance;

/// <summary>The normal distribution's quantiles: how many standard deviations from the mean a probability lies.</summary>
public static class NormalQuantile
{
    /// <summary>The value below which a normal variable of mean 0 and standard deviation 1 stays with a probability.</summary>
    /// <param name="probability">Strictly between 0 and 1.</param>
    /// <returns>−38.5 to 8.3 over the doubles of that range; 0 at one half, rising.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is 0, 1, beyond them or not a number.</exception>
    /// <remarks>By MathNet.Numerics; a test holds it to the distribution's series and to printed values.</remarks>
    public static double Of(double probability)
    {
        if (!(probability > 0 && probability < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability strictly between 0 and 1 has a quantile.");
        }

        return Normal.InvCDF(0, 1, probability);
    }
}
