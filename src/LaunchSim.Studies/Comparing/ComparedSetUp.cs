using LaunchSim.Reports;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Comparing;

/// <summary>One of several set-ups that are compared: its launch, and how that does by the aims.</summary>
public sealed record ComparedSetUp
{
    /// <summary>What it is called in tables and at curves: A, B, C …</summary>
    public required string Letter { get; init; }

    /// <summary>Its launch.</summary>
    public required LaunchOutcome Run { get; init; }

    /// <summary>How each aim is met, in the order of the aims.</summary>
    public required IReadOnlyList<AimPart> Parts { get; init; }

    /// <summary>How far it is from what is wanted; none when the launch stopped.</summary>
    public required AimScore Score { get; init; }

    /// <summary>The letter of a place: A to Z, then AA, AB and so on.</summary>
    /// <param name="place">The place, from 0.</param>
    public static string LetterOf(int place)
    {
        const int Letters = 26;
        string letter = ((char)('A' + (place % Letters))).ToString();
        return place < Letters ? letter : LetterOf((place / Letters) - 1) + letter;
    }
}
