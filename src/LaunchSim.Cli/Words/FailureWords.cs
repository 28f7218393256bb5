using LaunchSim.Cli.Output;
using LaunchSim.Launch;

namespace LaunchSim.Cli.Words;

/// <summary>A launch that stopped, in one sentence: when, where, what to look at.</summary>
internal static class FailureWords
{
    public static string Of(LaunchFailure failure) =>
        $"The run stopped at {Readout.Time.With(4).Text(failure.Time)}, {failure.Part}: {failure.Found}. Look at {failure.LookAt}.";
}
