using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Next;

namespace LaunchSim.Passes.After;

/// <summary>What is to be said between two passes.</summary>
public sealed record AfterResult
{
    /// <summary>The pass.</summary>
    public required PassFile Pass { get; init; }

    /// <summary>What was predicted of it.</summary>
    public required LaunchOutcome Predicted { get; init; }

    /// <summary>What was seen beside what was predicted.</summary>
    public required IReadOnlyList<SeenComparison> Seen { get; init; }

    /// <summary>What the pass says of the car; null when it says nothing or was not asked.</summary>
    public required FitResult? Fit { get; init; }

    /// <summary>The car as it ran, with what the pass said of it.</summary>
    public required Scenario Learned { get; init; }

    /// <summary>What could be changed.</summary>
    public required NextResult Next { get; init; }

    /// <summary>The change that helps most surely; null when none helps.</summary>
    public required NextChange? Change { get; init; }

    /// <summary>In what share of the plausible cars it helps.</summary>
    public required HelpShare? Help { get; init; }

    /// <summary>How many plausible cars.</summary>
    public required int Cars { get; init; }

    /// <summary>What the video has to show if it worked.</summary>
    public required IReadOnlyList<VideoSign> Signs { get; init; }
}
