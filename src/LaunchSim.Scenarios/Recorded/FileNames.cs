namespace LaunchSim.Scenarios.Recorded;

/// <summary>Names of files that other files name.</summary>
public static class FileNames
{
    /// <summary>
    /// A file as it is seen from the current folder. One file has one name: <c>passes/../car.yaml</c> and <c>car.yaml</c> are the same.
    /// </summary>
    /// <param name="folder">The folder of the file that names it.</param>
    /// <param name="name">As it is written there.</param>
    public static string Seen(string folder, string name)
    {
        try
        {
            string joined = Path.Combine(folder, name);
            return Path.IsPathRooted(joined) ? Path.GetFullPath(joined) : Path.GetRelativePath(".", joined);
        }
        catch (ArgumentException)
        {
            return name;
        }
    }

    /// <summary>A file as a file in a folder is to name it: from there, with slashes on every system.</summary>
    /// <param name="folder">The folder of the file that is to name it, as seen from the current folder.</param>
    /// <param name="file">The file, as seen from the current folder.</param>
    /// <exception cref="ArgumentException">One of them is no name of a file.</exception>
    public static string From(string folder, string file) =>
        Path.GetRelativePath(Path.GetFullPath(folder), Path.GetFullPath(file)).Replace(Path.DirectorySeparatorChar, '/');
}
