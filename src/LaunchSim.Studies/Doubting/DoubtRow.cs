using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Doubting;

/// <summary>What one plausible car did.</summary>
/// <param name="Car">Its number, from 0.</param>
/// <param name="Redrawn">How often it was drawn again.</param>
/// <param name="Refusal">Why its first draw was impossible; null when it was not.</param>
/// <param name="Figures">The figures in the plan's order; not a number where it has none.</param>
/// <param name="Score">Its score; none when its launch did not come to its end.</param>
/// <param name="Sentences">Keys of the sentences that are said of it, each once.</param>
/// <param name="Trouble">Why its launch did not come to its end, or that it was given up; null when all is well.</param>
public sealed record DoubtRow(long Car, int Redrawn, string? Refusal, double[] Figures, AimScore Score, IReadOnlyList<string> Sentences, string? Trouble)
{
    /// <summary>Whether no possible car could be drawn.</summary>
    public bool IsGivenUp => Redrawn >= PlausibleCars.MostDraws;
}
