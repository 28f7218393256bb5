namespace LaunchSim.Web.Desk;

/// <summary>What the desk takes at the most, so that nobody can ask too much of it.</summary>
internal static class DeskLimits
{
    /// <summary>Bytes of a body or of a message over the socket.</summary>
    public const int Bytes = 64 << 10;

    /// <summary>Bytes of a request's first line.</summary>
    public const int RequestLine = 4 << 10;

    /// <summary>Bytes of all headers together.</summary>
    public const int Headers = 16 << 10;

    /// <summary>Headers of a request.</summary>
    public const int HeaderCount = 60;

    /// <summary>Connections at a time, sockets not counted.</summary>
    public const int Connections = 64;

    /// <summary>Sockets at a time: as many desks are open on one machine.</summary>
    public const int Sockets = 12;

    /// <summary>Requests with a body at a time.</summary>
    public const int Writing = 4;

    /// <summary>Malformed messages after which a socket is closed.</summary>
    public const int Malformed = 20;

    /// <summary>Edits of one set-up.</summary>
    public const int Edits = 100;

    /// <summary>Characters of a path or a value.</summary>
    public const int Text = 200;

    /// <summary>Levels of nesting in what is sent.</summary>
    public const int Depth = 6;

    /// <summary>Scenarios in the list of a folder.</summary>
    public const int Listed = 500;
}
