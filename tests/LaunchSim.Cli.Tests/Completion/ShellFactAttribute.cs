using System.Diagnostics;

namespace LaunchSim.Cli.Tests.Completion;

/// <summary>A test that needs a shell, and is skipped where that is missing.</summary>
public sealed class ShellFactAttribute : FactAttribute
{
    public ShellFactAttribute(string shell)
    {
        if (!Shell.IsThere(shell))
        {
            Skip = $"there is no {shell} on this machine";
        }
    }
}

/// <summary>Shells of this machine.</summary>
internal static class Shell
{
    public static bool IsThere(string shell) =>
        !OperatingSystem.IsWindows() && (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Any(folder => File.Exists(Path.Combine(folder, shell)));

    /// <summary>What a shell prints that is fed a script.</summary>
    public static (int Code, string Output, string Error) Run(string shell, string script, params string[] options)
    {
        using Process process = Process.Start(new ProcessStartInfo(shell, options) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(script);
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
