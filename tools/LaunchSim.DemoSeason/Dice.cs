using LaunchSim.Studies.Chance;

namespace LaunchSim.DemoSeason;

/// <summary>Seeded chance: the same draws for the same seed.</summary>
internal sealed class Dice(ulong seed)
{
    private readonly SplitMix64 _random = new(seed);

    /// <summary>Between 0 and 1.</summary>
    public double Uniform() => _random.NextUniform();

    /// <summary>Normal, of mean 0 and standard deviation 1.</summary>
    public double Normal() => NormalQuantile.Of(Math.Clamp(Uniform(), 1e-12, 1 - 1e-12));

    /// <summary>A whole number from 0 to below a count.</summary>
    public int Below(int count) => Math.Min(count - 1, (int)(Uniform() * count));
}
