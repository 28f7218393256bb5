using System.Text.Json;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Next;
using LaunchSim.Studies.Running;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Desk;

/// <summary>The studies of one connection: one at a time, with their progress, each on threads of its own.</summary>
/// <param name="file">The file.</param>
/// <param name="work">What all connections share.</param>
/// <param name="line">Where answers go.</param>
/// <param name="stop">Ends the connection.</param>
internal sealed class LiveStudies(DeskFile file, DeskWork work, LiveLine line, CancellationToken stop)
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(100);

    /// <summary>Does a study, and tells what came of it.</summary>
    /// <param name="ask">What was asked for.</param>
    /// <param name="cancellation">Set when it is no longer wanted.</param>
    public async Task StudyAsync(StudyAsk ask, CancellationToken cancellation)
    {
        try
        {
            DeskState state = file.Current;
            DeskSetUp setUp = DeskSetUp.Of(state, ask.Edits);
            if (setUp.Scenario is not { } scenario)
            {
                await line.TellAsync("refused", ask.Number, json => json.Findings("errors", setUp.Errors), stop).ConfigureAwait(false);
                return;
            }

            if (AimSet.Of(scenario.Aims, null, out string? problem) is not { } aims)
            {
                await RefuseAsync(ask.Number, problem!).ConfigureAwait(false);
                return;
            }

            await (ask is DoubtAsk doubt ? DoubtAsync(doubt, state, scenario, aims, cancellation) : NextAsync(ask, state, scenario, aims, cancellation)).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested && !stop.IsCancellationRequested)
        {
            await TellCancelledAsync(ask).ConfigureAwait(false);
            throw;
        }
    }

    /// <summary>Tells that a study will not be done.</summary>
    /// <param name="ask">What was asked for.</param>
    public Task TellCancelledAsync(StudyAsk ask) => line.TellAsync("cancelled", ask.Number, null, stop);

    private async Task NextAsync(StudyAsk ask, DeskState state, Scenario scenario, AimSet aims, CancellationToken cancellation)
    {
        IReadOnlyList<Variation> settings = VariationReader.OfChoices(scenario);
        bool isOffered = settings.Count == 0;
        settings = isOffered ? OfferedChoices.Of(scenario) : settings;
        if (NextStudy.Changes(settings, scenario).Count == 0)
        {
            await RefuseAsync(ask.Number, "found nothing to change; write `choices` into the file, each with more than one value").ConfigureAwait(false);
            return;
        }

        NextResult result = await RunAsync(ask, "launches", NextStudy.Launches(settings, scenario), (added, token) =>
            NextStudy.Run(scenario, settings, isOffered, aims, GridPlan.Tolerance, DeskWork.StudyThreads, () => added(1), token), cancellation).ConfigureAwait(false);
        await line.TellAsync("next", ask.Number, json =>
        {
            json.WriteNumber("version", state.Version);
            NextList.Write(json, result, scenario, state.Readout);
        }, stop).ConfigureAwait(false);
    }

    private async Task DoubtAsync(DoubtAsk ask, DeskState state, Scenario scenario, AimSet aims, CancellationToken cancellation)
    {
        var plan = new DoubtPlan(scenario, aims, new DoubtSettings { Cars = ask.Cars, Threads = DeskWork.StudyThreads });
        DoubtResult result = await RunAsync(ask, "cars", ask.Cars, (added, token) =>
        {
            using DoubtStudy study = DoubtStudy.Open(plan, work.Settings.Program, Shard.Whole, null, false);
            return study.Run(wantsBands: true, added, token);
        }, cancellation).ConfigureAwait(false);
        await line.TellAsync("doubt", ask.Number, json =>
        {
            json.WriteNumber("version", state.Version);
            DoubtJson.Write(json, result, state.Readout);
        }, stop).ConfigureAwait(false);
    }

    /// <summary>Waits for the turn of studies, runs one on a thread of its own, and tells how far it is.</summary>
    private async Task<T> RunAsync<T>(StudyAsk ask, string what, long count, Func<Action<int>, CancellationToken, T> study, CancellationToken cancellation)
    {
        if (!await work.StudyTurn.WaitAsync(TimeSpan.Zero, cancellation).ConfigureAwait(false))
        {
            await ProgressAsync(0, isWaiting: true).ConfigureAwait(false);
            await work.StudyTurn.WaitAsync(cancellation).ConfigureAwait(false);
        }

        try
        {
            long done = 0;
            await ProgressAsync(0, isWaiting: false).ConfigureAwait(false);
            Task<T> running = Task.Factory.StartNew(
                () => study(added => Interlocked.Add(ref done, added), cancellation), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            try
            {
                for (long told = 0; await Task.WhenAny(running, Task.Delay(Beat, CancellationToken.None)).ConfigureAwait(false) != running;)
                {
                    if (Interlocked.Read(ref done) is var now && now != told)
                    {
                        told = now;
                        await ProgressAsync(now, isWaiting: false).ConfigureAwait(false);
                    }
                }
            }
            catch
            {
                // The client is gone, which also cancels the study; its threads are waited for.
                await ((Task)running).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
                throw;
            }

            return await running.ConfigureAwait(false);
        }
        finally
        {
            _ = work.StudyTurn.Release();
        }

        Task ProgressAsync(long done, bool isWaiting) => line.TellAsync("progress", ask.Number, json =>
        {
            json.WriteString("what", what);
            json.WriteNumber("done", done);
            json.WriteNumber("of", count);
            json.WriteBoolean("waiting", isWaiting);
        }, stop);
    }

    private Task RefuseAsync(long number, string sentence) => line.TellAsync("refused", number, json => Refused.Write(json, sentence), stop);
}
