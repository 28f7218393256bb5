namespace LaunchSim.Studies.Chance;

/// <summary>How much of an output's variance one input decides by itself: the first-order share, Var(E[y|u])/Var(y).</summary>
/// <param name="Share">
/// 0 to 1 but for the draws' noise, which may take a share of next to nothing below 0; not a number where there is nothing to
/// share.
/// </param>
/// <param name="StandardError">How far the share is off in the root mean square over draws; 0 or more, or not a number.</param>
public readonly record struct VarianceShare(double Share, double StandardError);
