namespace LaunchSim.Studies.Running;

/// <summary>
/// Work over numbered items on all cores, its results handed over in the order of the numbers, whatever the number of
/// threads. Bounded: no worker runs further ahead of what was handed over than a few blocks.
/// </summary>
internal static class OrderedBlocks
{
    private const int BlocksAhead = 8;

    /// <summary>Works through items and hands their results over on the calling thread.</summary>
    /// <typeparam name="TWorker">What one thread works with.</typeparam>
    /// <typeparam name="TResult">What comes of an item.</typeparam>
    /// <param name="from">The first item.</param>
    /// <param name="to">The one after the last.</param>
    /// <param name="threads">How many threads, at least one.</param>
    /// <param name="blockSize">How many items a thread takes at a time, at least one.</param>
    /// <param name="worker">Makes what one thread works with.</param>
    /// <param name="work">Does one item; asked from several threads, each with its own worker.</param>
    /// <param name="take">Receives the number of the first item of a block and the block's results, in order.</param>
    /// <param name="cancellation">Ends the work; what was handed over until then is whole.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for before all was handed over.</exception>
    public static void Run<TWorker, TResult>(
        long from, long to, int threads, int blockSize, Func<TWorker> worker, Func<TWorker, long, TResult> work, Action<long, TResult[]> take, CancellationToken cancellation)
    {
        long blocks = (to - from + blockSize - 1) / blockSize;
        threads = (int)Math.Clamp(blocks, 1, threads);
        int ahead = threads + BlocksAhead;
        var done = new TResult[]?[ahead];
        using var free = new SemaphoreSlim(ahead);
        using var ready = new SemaphoreSlim(0);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        Exception? failure = null;
        long next = -1;

        void Loop()
        {
            TWorker? own = default;
            try
            {
                own = worker();
                while (true)
                {
                    free.Wait(stop.Token);
                    long block = Interlocked.Increment(ref next);
                    if (block >= blocks)
                    {
                        return;
                    }

                    long first = from + (block * blockSize);
                    var results = new TResult[(int)Math.Min(blockSize, to - first)];
                    for (int i = 0; i < results.Length; i++)
                    {
                        stop.Token.ThrowIfCancellationRequested();
                        results[i] = work(own, first + i);
                    }

                    Volatile.Write(ref done[block % ahead], results);
                    _ = ready.Release();
                }
            }
            catch (OperationCanceledException)
            {
                // Whoever cancelled knows; the main loop tells.
            }
            catch (Exception exception)
            {
                _ = Interlocked.CompareExchange(ref failure, exception, null);
                stop.Cancel();
            }
            finally
            {
                (own as IDisposable)?.Dispose();
            }
        }

        Thread[] pool = [.. Enumerable.Range(0, threads).Select(_ => new Thread(Loop) { IsBackground = true, Name = "launches" })];
        foreach (Thread thread in pool)
        {
            thread.Start();
        }

        try
        {
            for (long block = 0; block < blocks; block++)
            {
                stop.Token.ThrowIfCancellationRequested();
                TResult[]? results;
                while ((results = Volatile.Read(ref done[block % ahead])) is null)
                {
                    ready.Wait(stop.Token);
                }

                done[block % ahead] = null;
                take(from + (block * blockSize), results);
                _ = free.Release();
            }
        }
        catch (OperationCanceledException) when (failure is not null)
        {
            // What a worker met is told below.
        }
        finally
        {
            stop.Cancel();
            foreach (Thread thread in pool)
            {
                thread.Join();
            }
        }

        if (failure is not null)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failure);
        }
    }
}
