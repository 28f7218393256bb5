namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>How sure a proposal is.</summary>
public enum Certainty
{
    /// <summary>Name and unit say so, and the numbers do not contradict.</summary>
    Sure,

    /// <summary>Something of it was told from the numbers: look it through.</summary>
    Likely,

    /// <summary>It cannot be told.</summary>
    Open,
}

/// <summary>One column of a log and what it may be.</summary>
/// <param name="Number">Which column, from 1.</param>
/// <param name="Name">Its name.</param>
/// <param name="Range">Its numbers from lowest to highest, as words.</param>
/// <param name="Quantity">The quantity proposed, or <c>time</c> or <c>frame</c>; null for none.</param>
/// <param name="Unit">The unit proposed; null for none.</param>
/// <param name="Certainty">How sure that is.</param>
/// <param name="Why">Why, or what is open, in a few words.</param>
public sealed record ProposedColumn(int Number, string Name, string Range, string? Quantity, string? Unit, Certainty Certainty, string Why);
