namespace LaunchSim.Passes.Aligning;

/// <summary>Where the release lies on a log's clock, and how sure that is.</summary>
/// <param name="Shift">The release on the log's own clock, s: time since release is the log's time less this.</param>
/// <param name="Sd">One standard deviation of it, s.</param>
/// <param name="Method">How it was found, in a few words, such as <c>onset of the driveshaft speed</c>.</param>
/// <param name="Words">The same with how sure it is, as a sentence.</param>
public sealed record Alignment(double Shift, double Sd, string Method, string Words);
