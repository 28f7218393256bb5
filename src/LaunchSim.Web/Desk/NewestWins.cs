using System.Diagnostics;

namespace LaunchSim.Web.Desk;

/// <summary>
/// A letter box for one: what is put in takes the place of what still waits there, and work on an older one is cancelled. So
/// that a quick hand cannot keep everything from being finished, work in hand has a moment left to come to its end, and after
/// one that was cancelled a longer one.
/// </summary>
/// <typeparam name="T">What is asked for.</typeparam>
/// <param name="work">Does what was asked for.</param>
/// <param name="grace">How long work may have been going on when a newer one comes; none cancels at once.</param>
/// <param name="turn">How long it may after work that was cancelled: something is answered now and then.</param>
internal sealed class NewestWins<T>(Func<T, CancellationToken, Task> work, TimeSpan grace, TimeSpan turn) : IDisposable
    where T : class
{
    private readonly Lock _lock = new();
    private readonly SemaphoreSlim _there = new(0);
    private T? _next;
    private CancellationTokenSource? _inWork;
    private long _since;
    private TimeSpan _allowed;
    private bool _wasCancelled;

    /// <summary>How many never got their turn.</summary>
    public long Passed { get; private set; }

    /// <summary>How many were cancelled in the middle.</summary>
    public long Cancelled { get; private set; }

    /// <summary>Asks for something.</summary>
    /// <param name="ask">What.</param>
    /// <returns>What waited until now and will not be done; null when nothing did.</returns>
    public T? Put(T ask)
    {
        lock (_lock)
        {
            T? passed = _next;
            _next = ask;
            if (passed is null)
            {
                _ = _there.Release();
            }
            else
            {
                Passed++;
            }

            if (_inWork is { } stale)
            {
                TimeSpan left = _allowed - Stopwatch.GetElapsedTime(_since);
                if (left > TimeSpan.Zero)
                {
                    stale.CancelAfter(left);
                }
                else
                {
                    stale.Cancel();
                }
            }

            return passed;
        }
    }

    /// <summary>Cancels what is in work, and takes back what waits.</summary>
    /// <returns>What waited and will not be done; null when nothing did.</returns>
    public T? Clear()
    {
        lock (_lock)
        {
            T? passed = _next;
            if (passed is not null)
            {
                _next = null;
                Passed++;
                _ = _there.Wait(0, CancellationToken.None);
            }

            _inWork?.Cancel();
            return passed;
        }
    }

    /// <summary>Does what is asked for, one after the other, until it is ended.</summary>
    /// <param name="stop">Ends it; what is in work is cancelled with it.</param>
    public async Task RunAsync(CancellationToken stop)
    {
        while (true)
        {
            try
            {
                await _there.WaitAsync(stop).ConfigureAwait(false);
            }
            catch (OperationCanceledException)
            {
                return;
            }

            using var cancellation = CancellationTokenSource.CreateLinkedTokenSource(stop);
            T? ask;
            lock (_lock)
            {
                ask = _next;
                _next = null;
                _inWork = ask is null ? null : cancellation;
                _since = Stopwatch.GetTimestamp();
                _allowed = _wasCancelled ? turn : grace;
            }

            if (ask is null)
            {
                continue;
            }

            bool isCancelled = false;
            try
            {
                await work(ask, cancellation.Token).ConfigureAwait(false);
            }
            catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
            {
                isCancelled = true;
            }
            finally
            {
                lock (_lock)
                {
                    _inWork = null;
                    _wasCancelled = isCancelled;
                    Cancelled += isCancelled ? 1 : 0;
                }
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _there.Dispose();
}
