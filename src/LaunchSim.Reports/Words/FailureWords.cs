using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>A launch that stopped, in one sentence: when, where, what to look at.</summary>
public static class FailureWords
{
    /// <summary>The sentence.</summary>
    /// <param name="failure">Why the launch stopped.</param>
    public static string Of(LaunchFailure failure) =>
        $"The run stopped at {Readout.Time.With(4).Text(failure.Time)}, {failure.Part}: {failure.Found}. Look at {failure.LookAt}.";
}
