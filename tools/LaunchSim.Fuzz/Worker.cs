namespace LaunchSim.Fuzz;

/// <summary>A thread that takes one seed after another. What it is at can be seen from other threads.</summary>
internal sealed class Worker : IDisposable
{
    /// <summary>As much as the program's own thread has on most machines.</summary>
    public const int StackSize = 8 << 20;

    private readonly Lock _lock = new();
    private CancellationTokenSource _cancellation = new();
    private long _seed = -1;
    private Elapsed _since;
    private bool _isStopped;

    /// <summary>Begins to work.</summary>
    /// <param name="next">The next seed; negative when there is none.</param>
    /// <param name="one">Deals with a seed.</param>
    public Worker(Func<long> next, Action<long, Worker> one)
    {
        Thread = new Thread(() => Work(next, one), StackSize) { IsBackground = true };
        Thread.Start();
    }

    /// <summary>The thread.</summary>
    public Thread Thread { get; }

    /// <summary>Whether nobody waits for it any more: whatever it still comes to does not count.</summary>
    public bool IsLost { get; private set; }

    /// <summary>Asked by the case in work.</summary>
    public CancellationToken Cancellation => _cancellation.Token;

    /// <summary>Says that the case in work has come to its end.</summary>
    /// <returns>Whether it came so far by itself; from now on it is no longer stopped.</returns>
    public bool Finish()
    {
        lock (_lock)
        {
            _seed = -1;
            return !_isStopped;
        }
    }

    /// <summary>Stops the case in work when it has taken too long: first by asking, then by giving the thread up.</summary>
    /// <param name="longest">How long a case may take, and then to end.</param>
    /// <returns>The seed, when it was stopped or given up just now; otherwise null.</returns>
    public (long Seed, bool IsLost)? StopAfter(TimeSpan longest)
    {
        lock (_lock)
        {
            if (_seed < 0 || IsLost || !_since.IsOver(longest))
            {
                return null;
            }

            // Once asked, it has as long again to end.
            _since = Elapsed.Now();
            IsLost = _isStopped;
            if (!_isStopped)
            {
                _isStopped = true;
                _cancellation.Cancel();
            }

            return (_seed, IsLost);
        }
    }

    /// <summary>Ends the use of the cancellation.</summary>
    public void Dispose() => _cancellation.Dispose();

    private void Work(Func<long> next, Action<long, Worker> one)
    {
        while (!IsLost && next() is long seed and >= 0)
        {
            lock (_lock)
            {
                _seed = seed;
                _since = Elapsed.Now();
                if (_isStopped)
                {
                    _isStopped = false;
                    _cancellation.Dispose();
                    _cancellation = new CancellationTokenSource();
                }
            }

            try
            {
                one(seed, this);
            }
            catch (Exception exception)
            {
                throw new InvalidOperationException($"The fuzzer itself failed at seed {seed}.", exception);
            }
        }
    }
}
