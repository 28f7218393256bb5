namespace LaunchSim.Web.Desk;

/// <summary>
/// The files that desks are open on. All that are open are looked at once a second, and at once when the system says that
/// something in the folder has changed; not every file system does.
/// </summary>
internal sealed class DeskFiles : IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);

    private readonly DeskReading _reading;
    private readonly DeskLog _log;
    private readonly Lock _lock = new();
    private readonly Dictionary<string, Open> _open = new(StringComparer.Ordinal);
    private readonly Timer _beat;
    private readonly FileSystemWatcher? _watcher;

    /// <summary>Watches a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="reading">How its files are read.</param>
    /// <param name="log">Told when the system does not watch, and of faults.</param>
    public DeskFiles(DeskFolder folder, DeskReading reading, DeskLog log)
    {
        (_reading, _log) = (reading, log);
        _beat = new Timer(_ => Look(), null, Beat, Beat);
        try
        {
            _watcher = new FileSystemWatcher(folder.Boundary.Folder) { IncludeSubdirectories = false };
            _watcher.Changed += (_, _) => Look();
            _watcher.Created += (_, _) => Look();
            _watcher.Deleted += (_, _) => Look();
            _watcher.Renamed += (_, _) => Look();
            _watcher.EnableRaisingEvents = true;
        }
        catch (Exception exception) when (exception is IOException or ArgumentException or UnauthorizedAccessException or PlatformNotSupportedException)
        {
            log.Tell($"the system does not say when files change ({DeskLog.Plain(exception.Message)}): they are looked at once a second");
            _watcher?.Dispose();
            _watcher = null;
        }
    }

    /// <summary>How many files are open.</summary>
    public int Count
    {
        get
        {
            lock (_lock)
            {
                return _open.Count;
            }
        }
    }

    /// <summary>Opens a file for one more desk.</summary>
    /// <param name="name">Its name in the folder.</param>
    public DeskFile Take(string name)
    {
        lock (_lock)
        {
            if (!_open.TryGetValue(name, out Open? open))
            {
                _open.Add(name, open = new Open(new DeskFile(name, _reading, _log)));
            }

            open.Desks++;
            return open.File;
        }
    }

    /// <summary>Closes it for one desk; with the last one it is no longer watched.</summary>
    /// <param name="file">The file.</param>
    public void Give(DeskFile file)
    {
        lock (_lock)
        {
            if (_open.TryGetValue(file.Name, out Open? open) && --open.Desks == 0)
            {
                _ = _open.Remove(file.Name);
                file.Dispose();
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _watcher?.Dispose();
        _beat.Dispose();
        lock (_lock)
        {
            foreach (Open open in _open.Values)
            {
                open.File.Dispose();
            }

            _open.Clear();
        }
    }

    private void Look()
    {
        DeskFile[] files;
        lock (_lock)
        {
            files = [.. _open.Values.Select(open => open.File)];
        }

        foreach (DeskFile file in files)
        {
            file.Look();
        }
    }

    private sealed class Open(DeskFile file)
    {
        public DeskFile File { get; } = file;

        public int Desks { get; set; }
    }
}
