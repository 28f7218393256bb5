namespace LaunchSim.Web.Desk;

/// <summary>By what one sees that a file has changed.</summary>
/// <param name="Path">The file.</param>
/// <param name="Length">Its length in bytes; −1 when it is not there.</param>
/// <param name="Written">When it was written last.</param>
internal sealed record FileStamp(string Path, long Length, DateTime Written)
{
    /// <summary>The stamp of a file as it is now.</summary>
    /// <param name="path">The file.</param>
    public static FileStamp Of(string path)
    {
        try
        {
            // Editors put another file in the place of the old one: a link is followed to whatever it leads to now.
            var file = new FileInfo(path);
            FileSystemInfo target = file.LinkTarget is null ? file : file.ResolveLinkTarget(returnFinalTarget: true) ?? file;
            return target is FileInfo { Exists: true } there ? new FileStamp(path, there.Length, there.LastWriteTimeUtc) : new FileStamp(path, -1, default);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return new FileStamp(path, -1, default);
        }
    }

    /// <summary>The stamps of files as they are now.</summary>
    /// <param name="files">The files.</param>
    public static IReadOnlyList<FileStamp> Of(IEnumerable<string> files) => [.. files.Select(Of)];

    /// <summary>The same files as they are now.</summary>
    /// <param name="stamps">Their stamps.</param>
    public static IReadOnlyList<FileStamp> Of(IReadOnlyList<FileStamp> stamps) => [.. stamps.Select(stamp => Of(stamp.Path))];
}
