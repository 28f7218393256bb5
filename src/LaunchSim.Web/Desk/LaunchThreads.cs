using System.Collections.Concurrent;

namespace LaunchSim.Web.Desk;

/// <summary>
/// The threads on which launches are solved: as many as there are cores, so that no more is in work however many ask, and the
/// web server's own threads stay free to answer.
/// </summary>
internal sealed class LaunchThreads : IDisposable
{
    private readonly BlockingCollection<Action> _work = [];

    /// <summary>Begins some threads.</summary>
    /// <param name="count">How many.</param>
    public LaunchThreads(int count)
    {
        for (int i = 0; i < count; i++)
        {
            new Thread(Loop) { IsBackground = true, Name = "desk launches" }.Start();
        }
    }

    /// <summary>Does some work on one of them.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="work">The work.</param>
    /// <param name="cancellation">Ends it, also while it waits for its turn.</param>
    public Task<T> Run<T>(Func<CancellationToken, T> work, CancellationToken cancellation)
    {
        var done = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        Action item = () =>
        {
            try
            {
                cancellation.ThrowIfCancellationRequested();
                done.SetResult(work(cancellation));
            }
            catch (OperationCanceledException)
            {
                done.SetCanceled(cancellation);
            }
#pragma warning disable CA1031 // It belongs to whoever waits for the work.
            catch (Exception exception)
#pragma warning restore CA1031
            {
                done.SetException(exception);
            }
        };

        // It is put in whatever becomes of it, so that whoever waits is told.
        _work.Add(item, CancellationToken.None);
        return done.Task;
    }

    /// <summary>Lets the threads end when what was asked for is done.</summary>
    public void Dispose() => _work.CompleteAdding();

    private void Loop()
    {
        foreach (Action work in _work.GetConsumingEnumerable())
        {
            work();
        }
    }
}
