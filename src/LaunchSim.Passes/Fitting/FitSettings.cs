namespace LaunchSim.Passes.Fitting;

/// <summary>How a fit is run.</summary>
public sealed record FitSettings
{
    /// <summary>How many starts: the file's values, and cars drawn from its doubts.</summary>
    public int Starts { get; init; } = 4;

    /// <summary>How often it is looked further, about the best place so far, while the data are off by more than they scatter.</summary>
    public int Rounds { get; init; } = 3;

    /// <summary>Seed of the drawn starts.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>How many threads.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;

    /// <summary>
    /// A number is told by the data when what is not known of it shrinks below this share of what was not known before; otherwise
    /// it is named and held where the file has it.
    /// </summary>
    public double ToldBelow { get; init; } = 0.85;
}
