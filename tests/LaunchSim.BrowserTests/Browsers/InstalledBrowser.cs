namespace LaunchSim.BrowserTests.Browsers;

/// <summary>The Chromium of this machine, or a browser made of it. Nothing is ever downloaded.</summary>
public static class InstalledBrowser
{
    /// <summary>Names the browser's program; then no other is looked for.</summary>
    public const string PathVariable = "LAUNCHSIM_CHROMIUM";

    /// <summary>Says that a missing browser is a failure; CI sets it.</summary>
    public const string RequiredVariable = "LAUNCHSIM_BROWSER_REQUIRED";

    /// <summary>What to say where there is none.</summary>
    public const string Missing =
        $"there is no Chromium, Chrome or Edge on this machine; install one (Debian: apt-get install chromium), or set {PathVariable} to its program";

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome", "microsoft-edge-stable", "microsoft-edge"];

    /// <summary>The browser's program; null where there is none.</summary>
    public static string? Program { get; } = Find(Environment.GetEnvironmentVariable, File.Exists);

    /// <summary>Why tests in a browser are skipped; null where they run, or must.</summary>
    public static string? SkipReason { get; } = Reason(Program, Environment.GetEnvironmentVariable);

    internal static string? Reason(string? program, Func<string, string?> variable) =>
        program is not null || variable(RequiredVariable) is not (null or "" or "0") ? null : Missing;

    internal static string? Find(Func<string, string?> variable, Func<string, bool> isThere) =>
        // A program that was named and is not there is a mistake to be told, not a reason to take another.
        variable(PathVariable) is { Length: > 0 } named ? named : Places(variable).FirstOrDefault(isThere);

    private static IEnumerable<string> Places(Func<string, string?> variable)
    {
        if (OperatingSystem.IsWindows())
        {
            string[] folders = [variable("ProgramFiles") ?? "", variable("ProgramFiles(x86)") ?? "", variable("LOCALAPPDATA") ?? ""];
            string[] programs = [@"Chromium\Application\chrome.exe", @"Google\Chrome\Application\chrome.exe", @"Microsoft\Edge\Application\msedge.exe"];
            return from program in programs from folder in folders where folder.Length > 0 select Path.Combine(folder, program);
        }

        if (OperatingSystem.IsMacOS())
        {
            string[] folders = ["/Applications", Path.Combine(variable("HOME") ?? "", "Applications")];
            return from name in (string[])["Chromium", "Google Chrome", "Microsoft Edge"] from folder in folders select $"{folder}/{name}.app/Contents/MacOS/{name}";
        }

        string[] ways = ["/usr/bin", "/usr/local/bin", .. (variable("PATH") ?? "").Split(':', StringSplitOptions.RemoveEmptyEntries), "/opt/google/chrome", "/snap/bin"];
        return from name in Names from folder in ways select $"{folder}/{name}";
    }
}
