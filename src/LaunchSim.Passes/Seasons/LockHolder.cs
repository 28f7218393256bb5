using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace LaunchSim.Passes.Seasons;

/// <summary>Who holds a season's lock: written into the lock file, a line each.</summary>
/// <param name="Process">The process's number on its machine.</param>
/// <param name="Started">When the process started, in UTC: numbers are given out again.</param>
/// <param name="Machine">The machine's name.</param>
/// <param name="Since">When the lock was taken, in UTC.</param>
/// <param name="Token">A number that no other lock has.</param>
public sealed record LockHolder(int Process, DateTime Started, string Machine, DateTime Since, string Token)
{
    // Start times are told to the hundredth of a second by some systems.
    private static readonly TimeSpan SameStart = TimeSpan.FromSeconds(2);

    /// <summary>This process, now.</summary>
    public static LockHolder Now()
    {
        using var own = System.Diagnostics.Process.GetCurrentProcess();
        return new LockHolder(own.Id, own.StartTime.ToUniversalTime(), Environment.MachineName, DateTime.UtcNow, Guid.NewGuid().ToString("N"));
    }

    /// <summary>The lines of the file.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture, $"process {Process}\nstarted {Started:O}\nmachine {Machine}\nsince {Since:O}\ntoken {Token}\n");

    /// <summary>Who it is, for a sentence.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"process {Process} on {Machine}, since {Since:yyyy-MM-dd HH:mm:ss} UTC");

    /// <summary>Whether it is certain that nobody holds the lock any more: the process ran on this machine and is gone.</summary>
    public bool IsCertainlyGone
    {
        get
        {
            if (!string.Equals(Machine, Environment.MachineName, StringComparison.Ordinal))
            {
                return false;
            }

            try
            {
                using var process = System.Diagnostics.Process.GetProcessById(Process);
                return !process.HasExited && (process.StartTime.ToUniversalTime() - Started).Duration() > SameStart;
            }
            catch (ArgumentException)
            {
                return true;
            }
            catch (Exception exception) when (exception is InvalidOperationException or Win32Exception or NotSupportedException)
            {
                return false;
            }
        }
    }

    /// <summary>Reads the lines; null when they are not all there.</summary>
    /// <param name="text">The file's text.</param>
    public static LockHolder? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Dictionary<string, string> values = [];
        foreach (string line in text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            int blank = line.IndexOf(' ', StringComparison.Ordinal);
            if (blank > 0)
            {
                values[line[..blank]] = line[(blank + 1)..];
            }
        }

        return text.EndsWith('\n') && values.TryGetValue("process", out string? number) && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int process)
            && Time("started") is { } started && values.TryGetValue("machine", out string? machine) && Time("since") is { } since && values.TryGetValue("token", out string? token)
            ? new LockHolder(process, started, machine, since, token) : null;

        DateTime? Time(string key) => values.TryGetValue(key, out string? written)
            && DateTime.TryParseExact(written, "O", CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out DateTime time) ? time : null;
    }
}
