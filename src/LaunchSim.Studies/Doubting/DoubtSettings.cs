using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Doubting;

/// <summary>How a study of doubts draws its cars and solves their launches.</summary>
public sealed record DoubtSettings
{
    /// <summary>Fewest cars that anything is said of.</summary>
    public const int FewestCars = 50;

    /// <summary>Most cars of one study.</summary>
    public const int MostCars = 1_000_000;

    /// <summary>Cars unless another number is asked for.</summary>
    public const int UsualCars = 2000;

    /// <summary>How many cars are drawn, 1 or more.</summary>
    public int Cars { get; init; } = UsualCars;

    /// <summary>Seed of the draw: the same gives the same cars for ever.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Whether numbers without a doubt of their own are drawn from the usual one; they are anyway when no doubt was entered.</summary>
    public bool WithTypical { get; init; }

    /// <summary>How the numbers' doubts hang together, by path, as after a fit; null when they do not.</summary>
    public NormalCorrelations? Correlations { get; init; }

    /// <summary>The solver's relative tolerance in all launches.</summary>
    public double Tolerance { get; init; } = 1e-6;

    /// <summary>How many threads run launches, 1 or more; results do not depend on it.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;
}
