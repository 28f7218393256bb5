using System.Diagnostics;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class InterruptTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Run_InterruptedWhileWriting_Returns130AndLeavesNoHalfFile()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new Folder();
        string[] args = ["run", Files.DoorCar, "--set", "run.duration=60 s", "--set", "run.sample=40 us", "--csv", folder.Path("a.csv"), "--quiet"];
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [typeof(App).Assembly.Location, .. args]) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        var watch = Stopwatch.StartNew();
        while (folder.Names().Length == 0 && !process.HasExited && watch.Elapsed < Patience)
        {
            await Task.Delay(20);
        }

        Assert.EndsWith(".tmp", Assert.Single(folder.Names()), StringComparison.Ordinal);
        using (Process kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]))
        {
            await kill.WaitForExitAsync();
        }

        using var limit = new CancellationTokenSource(Patience);
        await process.WaitForExitAsync(limit.Token);
        Assert.Equal(ExitCode.Interrupted, process.ExitCode);
        Assert.Contains("interrupted", await error, StringComparison.Ordinal);
        Assert.Empty(folder.Names());
    }
}
