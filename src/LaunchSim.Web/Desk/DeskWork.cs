using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;

namespace LaunchSim.Web.Desk;

/// <summary>What all connections of a desk share: threads, the turn of studies, and what launches become.</summary>
/// <param name="settings">What is served.</param>
/// <param name="folder">The folder.</param>
/// <param name="log">The log.</param>
/// <param name="documents">What launches become.</param>
internal sealed class DeskWork(DeskSettings settings, DeskFolder folder, DeskLog log, IDeskDocuments documents) : IDisposable
{
    /// <summary>What is served.</summary>
    public DeskSettings Settings { get; } = settings;

    /// <summary>The folder.</summary>
    public DeskFolder Folder { get; } = folder;

    /// <summary>The log.</summary>
    public DeskLog Log { get; } = log;

    /// <summary>What launches become.</summary>
    public IDeskDocuments Documents { get; } = documents;

    /// <summary>Where single launches are solved.</summary>
    public LaunchThreads Threads { get; } = new(Environment.ProcessorCount);

    /// <summary>The turn of studies: one at a time over all connections, each on several threads.</summary>
    public SemaphoreSlim StudyTurn { get; } = new(1);

    /// <summary>On how many threads a study runs: a core is left for whoever moves something meanwhile.</summary>
    public static int StudyThreads { get; } = Math.Max(1, Environment.ProcessorCount - 1);

    /// <summary>How many studies are in work.</summary>
    public int Studies => 1 - StudyTurn.CurrentCount;

    /// <summary>The units of a scenario.</summary>
    /// <param name="scenario">The scenario.</param>
    public static Readout ReadoutOf(Scenario scenario) => new(scenario.UnitSystem);

    /// <summary>Solves a launch as <c>launchsim run</c> does.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="cancellation">Asked once a step.</param>
    public static LaunchOutcome Solve(Scenario scenario, CancellationToken cancellation) => LaunchOutcome.Of(scenario, cancellation);

    /// <inheritdoc/>
    public void Dispose()
    {
        Threads.Dispose();
        StudyTurn.Dispose();
    }
}
