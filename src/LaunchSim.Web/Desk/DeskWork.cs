namespace LaunchSim.Web.Desk;

/// <summary>What all connections of a desk share: threads, and the turn of studies.</summary>
/// <param name="settings">What is served.</param>
/// <param name="folder">The folder.</param>
/// <param name="log">The log.</param>
internal sealed class DeskWork(DeskSettings settings, DeskFolder folder, DeskLog log) : IDisposable
{
    /// <summary>What is served.</summary>
    public DeskSettings Settings { get; } = settings;

    /// <summary>The folder.</summary>
    public DeskFolder Folder { get; } = folder;

    /// <summary>The log.</summary>
    public DeskLog Log { get; } = log;

    /// <summary>Where single launches are solved.</summary>
    public LaunchThreads Threads { get; } = new(Environment.ProcessorCount);

    /// <summary>The turn of studies: one at a time over all connections, each on several threads.</summary>
    public SemaphoreSlim StudyTurn { get; } = new(1);

    /// <summary>On how many threads a study runs: a core is left for whoever moves something meanwhile.</summary>
    public static int StudyThreads { get; } = Math.Max(1, Environment.ProcessorCount - 1);

    /// <summary>How many studies are in work.</summary>
    public int Studies => 1 - StudyTurn.CurrentCount;

    /// <inheritdoc/>
    public void Dispose()
    {
        Threads.Dispose();
        StudyTurn.Dispose();
    }
}
