using System.Diagnostics;
using LaunchSim.Fuzz.Cases;
using LaunchSim.Fuzz.Checks;

namespace LaunchSim.Fuzz;

/// <summary>Takes a range of seeds through the program on several threads, and tells what is wrong.</summary>
/// <param name="maker">Makes the cases.</param>
/// <param name="log">Progress and what is wrong.</param>
/// <param name="keeper">Keeps failed cases, or null.</param>
/// <param name="digests">Takes every case's digest, or null.</param>
internal sealed class Fuzzer(CaseMaker maker, TextWriter log, Keeper? keeper, TextWriter? digests = null)
{
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan BetweenWords = TimeSpan.FromSeconds(10);

    private readonly Lock _log = new();
    private readonly SortedSet<long> _slow = [];

    /// <summary>How long a case may take.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Runs the program on a case in a folder.</summary>
    public Func<FuzzCase, string, CancellationToken, Outcome> Try { get; init; } = Trial.Of;

    /// <summary>The counts.</summary>
    public Tally Tally { get; } = new(digests);

    /// <summary>Runs all seeds of a range.</summary>
    /// <param name="first">The first seed, 0 or more.</param>
    /// <param name="last">The last one.</param>
    /// <param name="threads">On how many threads.</param>
    /// <returns>Whether all went well.</returns>
    public bool Run(long first, long last, int threads)
    {
        using var folders = new CaseFolders();
        Say($"seeds {first} to {last} on {threads} threads, in {folders.Root}");
        var watch = Stopwatch.StartNew();
        long next = first - 1;
        long Next() => Interlocked.Increment(ref next) is var seed && seed <= last ? seed : -1;
        Worker New() => new(Next, (seed, worker) => One(seed, worker, folders));
        List<Worker> workers = [.. Enumerable.Range(0, threads).Select(_ => New())];
        TimeSpan saidAt = TimeSpan.Zero;
        while (workers.Exists(worker => !worker.IsLost && worker.Thread.IsAlive))
        {
            Thread.Sleep(BetweenLooks);
            for (int i = 0; i < workers.Count; i++)
            {
                Look(workers, i, New);
            }

            if (watch.Elapsed - saidAt > BetweenWords)
            {
                saidAt = watch.Elapsed;
                Say(FormattableString.Invariant($"{Tally.Cases} of {last - first + 1}, {Tally.Cases / saidAt.TotalSeconds:0} a second, {Tally.Failures} failed, {_slow.Count} to be looked at again"));
            }
        }

        foreach (long seed in _slow)
        {
            // The machine may have been busy: what takes too long alone, too, does so for good.
            (Outcome outcome, IReadOnlyList<string> complaints) = Alone(maker.Make(seed), folders.Of(seed) + "-again");
            Close(outcome, complaints);
        }

        log.Write(Tally.Report(watch.Elapsed));
        return Tally.Failures == 0;
    }

    /// <summary>Runs one seed and tells all about it.</summary>
    /// <param name="seed">The seed.</param>
    /// <returns>Whether all went well.</returns>
    public bool Replay(long seed)
    {
        using var folders = new CaseFolders();
        (Outcome outcome, IReadOnlyList<string> complaints) = Alone(maker.Make(seed), folders.Of(seed));
        foreach (CaseFile file in outcome.Case.Files)
        {
            log.Write($"--- {file.Name}{(file.IsFolder ? ", a folder" : file.LinkTo is null ? "" : $", a link to {file.LinkTo}")}\n{System.Text.Encoding.UTF8.GetString(file.Content)}\n");
        }

        log.Write(Keeper.Text(outcome, complaints));
        keeper?.Keep(outcome, complaints);
        return complaints.Count == 0;
    }

    /// <summary>Runs a case while the process has nothing else to do.</summary>
    private (Outcome Outcome, IReadOnlyList<string> Complaints) Alone(FuzzCase one, string folder)
    {
        using var cancellation = new CancellationTokenSource();
        var since = Elapsed.Now();
        Outcome? outcome = null;
        var thread = new Thread(() => outcome = Try(one, folder, cancellation.Token), Worker.StackSize) { IsBackground = true };
        thread.Start();
        while (!thread.Join(BetweenLooks))
        {
            if (!since.IsOver(one.Patience * Longest))
            {
                continue;
            }

            if (cancellation.IsCancellationRequested)
            {
                return (new Outcome { Case = one, Folder = folder, Arguments = one.ArgumentsIn(folder), Code = null, Output = "", Error = "", Took = 2 * Longest, Written = [] },
                    ["time: it does not end, also when asked to"]);
            }

            cancellation.Cancel();
            since = Elapsed.Now();
        }

        return (outcome!, cancellation.IsCancellationRequested ? ["time: longer than it may take, also alone"] : Check.Of(outcome!));
    }

    private void One(long seed, Worker worker, CaseFolders folders)
    {
        Outcome outcome = Try(maker.Make(seed), folders.Of(seed), worker.Cancellation);

        // A case that took too long among others is judged when it has the machine to itself.
        if (worker.Finish())
        {
            Close(outcome, Check.Of(outcome));
        }

        CaseFolders.Remove(outcome.Folder);
    }

    private void Close(Outcome outcome, IReadOnlyList<string> complaints)
    {
        Tally.Add(outcome, complaints.Count > 0);
        if (complaints.Count == 0)
        {
            return;
        }

        Say($"seed {outcome.Case.Seed}: {outcome.Case.Command}: {string.Join("; ", outcome.Case.Steps)}\n  wrong: {string.Join("\n  wrong: ", complaints)}");
        keeper?.Keep(outcome, complaints);
    }

    private void Look(List<Worker> workers, int i, Func<Worker> another)
    {
        if (workers[i].StopAfter(Longest) is not { } stopped)
        {
            return;
        }

        _ = _slow.Add(stopped.Seed);
        Say($"seed {stopped.Seed} {(stopped.IsLost ? "does not end when asked to; its thread is given up" : $"takes longer than {Longest.TotalSeconds:0} s; it is looked at again at the end")}");
        if (stopped.IsLost)
        {
            workers[i] = another();
        }
    }

    private void Say(string words)
    {
        lock (_log)
        {
            log.WriteLine(words);
            log.Flush();
        }
    }
}
