namespace LaunchSim.Web.Desk;

/// <summary>What a desk serves, and where.</summary>
public sealed record DeskSettings
{
    /// <summary>The folder out of which nothing is read.</summary>
    public required string Folder { get; init; }

    /// <summary>The scenario whose desk the first page is, by its name in the folder; null for a list of the folder's scenarios.</summary>
    public string? File { get; init; }

    /// <summary>The port, 1 to 65535; null for a free one.</summary>
    public int? Port { get; init; }

    /// <summary>Takes a line for what is refused and what goes wrong.</summary>
    public required TextWriter Log { get; init; }

    /// <summary>Program and version, as documents and pages name them.</summary>
    public required string Program { get; init; }

    /// <summary>How long a client may take for what is sent to it.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(20);
}

/// <summary>A desk cannot be opened; the message is a sentence for the user.</summary>
/// <param name="message">The sentence.</param>
public sealed class DeskException(string message) : Exception(message);
