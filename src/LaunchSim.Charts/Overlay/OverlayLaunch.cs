using LaunchSim.Reports;

namespace LaunchSim.Charts.Overlay;

/// <summary>One of several launches that are drawn over one another.</summary>
/// <param name="Name">What stands at its curves: a letter, or little more.</param>
/// <param name="Run">The launch; not read by another thread while a picture is drawn.</param>
public sealed record OverlayLaunch(string Name, LaunchOutcome Run);
