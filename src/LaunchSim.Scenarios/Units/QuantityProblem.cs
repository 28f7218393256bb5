namespace LaunchSim.Scenarios.Units;

/// <summary>Why a text is not a quantity.</summary>
/// <param name="At">Where in the text, in characters from 0.</param>
/// <param name="Found">What was found there, in words that follow 'found'.</param>
/// <param name="Mend">What to write instead, in words.</param>
internal sealed record QuantityProblem(int At, string Found, string Mend);
