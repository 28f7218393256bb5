namespace LaunchSim.Passes.After;

/// <summary>What a video or the beams have to show if a change did what was expected of it.</summary>
/// <param name="Key">Which fact, such as <c>rear_open</c>.</param>
/// <param name="Words">What is looked at, such as <c>rear gap fully open</c>.</param>
/// <param name="Bound">The time, s, that it has to keep; not a number for what must not happen any more.</param>
/// <param name="IsEarlier">Whether it has to come no later than that; otherwise no earlier.</param>
/// <param name="Now">When it is now, s: as seen of the pass, otherwise in the middle of the plausible cars; not a number where it does not happen.</param>
/// <param name="Share">In what share of the plausible cars it moves that way by what can be seen.</param>
/// <param name="IsLag">Whether it is the front's time after the rear's and none since release.</param>
/// <param name="Within">How near two instants may lie, s, and have to be told apart to see it.</param>
public sealed record VideoSign(string Key, string Words, double Bound, bool IsEarlier, double Now, double Share, bool IsLag, double Within);
