using System.Buffers;
using System.Text.Json;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Comparing;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Desk;

/// <summary>
/// The launches of one connection: the newest set-up that was asked for is solved, the answers come in the order of their
/// numbers. A set-up may be pinned; what is solved from then on is held against it.
/// </summary>
/// <param name="file">The file.</param>
/// <param name="work">What all connections share.</param>
/// <param name="line">Where answers go.</param>
/// <param name="stop">Ends the connection.</param>
internal sealed class LiveSolver(DeskFile file, DeskWork work, LiveLine line, CancellationToken stop) : IDisposable
{
    private const string Present = "this set-up", PinnedName = "the pinned set-up";

    // One buffer for all answers: each is some hundred kilobytes, and there are fifty a second.
    private readonly ArrayBufferWriter<byte> _answer = new(1 << 18);
    private LaunchSolution? _earlier;
    private Pinned? _pinned;

    /// <summary>Answers that were asked for as <c>solve</c>.</summary>
    /// <param name="ask">What was asked for.</param>
    /// <param name="cancellation">Set when a newer one came.</param>
    public async Task SolveAsync(SolveAsk ask, CancellationToken cancellation)
    {
        DeskState state = file.Current;
        Pinned? pinned = Volatile.Read(ref _pinned);
        _answer.ResetWrittenCount();
        _ = await work.Threads.Run(token => Solve(ask, state, pinned, token), cancellation).ConfigureAwait(false);

        // What is solved is told: only then is the next one begun.
        await line.SendAsync(_answer.WrittenMemory, stop).ConfigureAwait(false);
    }

    /// <summary>Pins a set-up, or takes the pinned one away, and tells its launch.</summary>
    /// <param name="ask">What was asked for.</param>
    /// <param name="cancellation">Set when a newer one came.</param>
    public async Task PinAsync(PinAsk ask, CancellationToken cancellation)
    {
        if (ask.Edits is not { } edits)
        {
            Volatile.Write(ref _pinned, null);
            await line.TellAsync("pinned", ask.Number, json => json.WriteNull("document"), stop).ConfigureAwait(false);
            return;
        }

        DeskState state = file.Current;
        DeskSetUp setUp = DeskSetUp.Of(state, edits);
        if (setUp.Scenario is not { } scenario)
        {
            await RefuseAsync(ask.Number, setUp.Errors).ConfigureAwait(false);
            return;
        }

        Readout readout = state.Readout;
        LaunchOutcome run = await work.Threads.Run(token => LaunchOutcome.Of(scenario, token), cancellation).ConfigureAwait(false);
        ComparedSetUp? compared = AimTable.Of(run, PinnedName)?.SetUp;
        Volatile.Write(ref _pinned, compared is null ? null : new Pinned(compared));
        await line.TellAsync("pinned", ask.Number, json =>
        {
            json.WriteNumber("version", state.Version);
            Document(json, run, readout);
        }, stop).ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public void Dispose() => _answer.Clear();

    private bool Solve(SolveAsk ask, DeskState state, Pinned? pinned, CancellationToken cancellation)
    {
        DeskSetUp setUp = DeskSetUp.Of(state, ask.Edits);
        using Utf8JsonWriter json = DeskJson.Writer(_answer);
        if (setUp.Scenario is not { } scenario)
        {
            LiveLine.Begin(json, "refused", ask.Number);
            json.WriteNumber("version", state.Version);
            json.Findings("errors", setUp.Errors);
            json.WriteEndObject();
            return false;
        }

        Readout readout = state.Readout;
        LaunchOutcome run = LaunchOutcome.Of(scenario, _earlier, cancellation);
        _earlier = run.Solution;
        LiveLine.Begin(json, "launch", ask.Number);
        json.WriteNumber("version", state.Version);
        json.WriteBoolean("present", state.IsPresent);
        Document(json, run, readout);
        if (AimTable.Of(run, Present) is { } table)
        {
            AimTable.Write(json, table.Aims, table.SetUp, Comparable(pinned, table.SetUp), readout);
        }

        json.WriteEndObject();
        return true;
    }

    // Set-ups of a file that has changed since may be held against other aims.
    private static ComparedSetUp? Comparable(Pinned? pinned, ComparedSetUp now) =>
        pinned?.SetUp is { } setUp && setUp.Parts.Select(part => part.Aim).SequenceEqual(now.Parts.Select(part => part.Aim)) ? setUp : null;

    private void Document(Utf8JsonWriter json, LaunchOutcome run, Readout readout)
    {
        json.WritePropertyName("document");
        LaunchDocument.Write(json, [new DocumentedLaunch(run, run.Scenario.Name)], readout, work.Settings.Program);
    }

    private Task RefuseAsync(long number, IReadOnlyList<Diagnostic> errors) => line.TellAsync("refused", number, json => json.Findings("errors", errors), stop);

    private sealed record Pinned(ComparedSetUp SetUp);
}
