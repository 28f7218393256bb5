namespace LaunchSim.BrowserTests.Browsers;

/// <summary>Files beside the tests' program: pages that were opened, pictures, timings. They stay, for people to look at.</summary>
public static class OutputFiles
{
    /// <summary>The place of a file, in a folder that is there.</summary>
    public static string Path(string folder, string name)
    {
        string place = System.IO.Path.Combine(AppContext.BaseDirectory, folder);
        Directory.CreateDirectory(place);
        return System.IO.Path.Combine(place, name);
    }
}
