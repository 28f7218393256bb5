namespace LaunchSim.Web.Desk;

/// <summary>
/// A file that desks are open on: read once, and again whenever it or one of its bases changes on the disk. An editor's
/// half-written file is waited for: it is read when nothing has changed for a moment.
/// </summary>
internal sealed class DeskFile : IDisposable
{
    /// <summary>How long nothing has to change before a file is read.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(80);

    private readonly DeskReading _reading;
    private readonly Lock _lock = new();
    private readonly Lock _reads = new();
    private readonly Timer _later;
    private readonly List<Action<DeskState>> _listeners = [];
    private IReadOnlyList<FileStamp> _stamps;
    private IReadOnlyList<FileStamp>? _seen;
    private bool _isClosed;

    /// <summary>Opens a file.</summary>
    /// <param name="name">Its name in the folder.</param>
    /// <param name="reading">How it is read.</param>
    /// <param name="log">Told of a fault.</param>
    public DeskFile(string name, DeskReading reading, DeskLog log)
    {
        (Name, _reading) = (name, reading);
        (Current, _stamps) = Read(null);
        _later = new Timer(_ =>
        {
            try
            {
                Settle();
            }
#pragma warning disable CA1031 // What goes wrong on a thread of the timer's would end the program.
            catch (Exception exception)
#pragma warning restore CA1031
            {
                log.Fault(exception);
            }
        });
    }

    /// <summary>Its name in the folder.</summary>
    public string Name { get; }

    /// <summary>How it stands.</summary>
    public DeskState Current { get; private set; }

    /// <summary>Asks to be told whenever it was read again.</summary>
    /// <param name="listener">Told on some thread; must not take long.</param>
    public void Listen(Action<DeskState> listener)
    {
        lock (_lock)
        {
            _listeners.Add(listener);
        }
    }

    /// <summary>Ends that.</summary>
    /// <param name="listener">The one that asked.</param>
    public void Unlisten(Action<DeskState> listener)
    {
        lock (_lock)
        {
            _ = _listeners.Remove(listener);
        }
    }

    /// <summary>Looks whether anything has changed on the disk; costs a look at each file of the chain.</summary>
    public void Look()
    {
        lock (_lock)
        {
            IReadOnlyList<FileStamp> now = FileStamp.Of(_stamps);
            if (_isClosed || now.SequenceEqual(_stamps))
            {
                _seen = null;
                return;
            }

            // Every further change begins the wait anew.
            if (_seen is null || !now.SequenceEqual(_seen))
            {
                _seen = now;
                _ = _later.Change(Quiet, Timeout.InfiniteTimeSpan);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            _isClosed = true;
            _listeners.Clear();
        }

        _later.Dispose();
    }

    private void Settle()
    {
        // One reading at a time, so that versions come in their order.
        lock (_reads)
        {
            lock (_lock)
            {
                if (_isClosed || _seen is null)
                {
                    return;
                }

                IReadOnlyList<FileStamp> now = FileStamp.Of(_stamps);
                if (now.SequenceEqual(_stamps))
                {
                    // It was read in the meantime, or is as it was again.
                    _seen = null;
                    return;
                }

                if (!now.SequenceEqual(_seen))
                {
                    _seen = now;
                    _ = _later.Change(Quiet, Timeout.InfiniteTimeSpan);
                    return;
                }

                _seen = null;
            }

            (DeskState state, IReadOnlyList<FileStamp> stamps) = Read(Current);
            Action<DeskState>[] listeners;
            lock (_lock)
            {
                (Current, _stamps) = (state, stamps);
                listeners = [.. _listeners];
            }

            foreach (Action<DeskState> listener in listeners)
            {
                listener(state);
            }
        }
    }

    /// <summary>Reads the file; the stamps are those from before, so that what changes in between is found to have changed.</summary>
    private (DeskState State, IReadOnlyList<FileStamp> Stamps) Read(DeskState? before)
    {
        IReadOnlyList<FileStamp> stamps = before is null ? [] : FileStamp.Of(_stamps);
        while (true)
        {
            DeskState state = _reading.Read(Name, before, out IReadOnlyList<string> files);
            if (files.All(file => stamps.Any(stamp => stamp.Path == file)))
            {
                return (state, stamps);
            }

            // It begins from other files than it was known to.
            stamps = FileStamp.Of(files);
        }
    }
}
