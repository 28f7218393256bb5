namespace LaunchSim.Studies.Chance;

/// <summary>What a set of draws says of one output.</summary>
/// <param name="Draws">How many draws have a value.</param>
/// <param name="Missing">How many have none and were left out; all else is of the others alone.</param>
/// <param name="Mean">The mean, in the output's unit; not a number without draws.</param>
/// <param name="Variance">The unbiased variance, in the output's unit squared; not a number for fewer than two draws.</param>
/// <param name="Inputs">
/// Input by input its share. Their sum is 1 where the inputs' effects add up; what is missing is decided by inputs together.
/// </param>
public sealed record OutputShares(int Draws, int Missing, double Mean, double Variance, IReadOnlyList<VarianceShare> Inputs);
