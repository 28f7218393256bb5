namespace LaunchSim.Scenarios.Recorded;

/// <summary>Names of files that other files name.</summary>
internal static class FileNames
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
}
