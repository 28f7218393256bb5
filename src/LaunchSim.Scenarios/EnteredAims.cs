namespace LaunchSim.Scenarios;

/// <summary>One aim as it was entered, SI; what was left out is null.</summary>
public sealed record EnteredAim
{
    /// <summary>Its name, such as <c>rise_lag</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The value that is wanted.</summary>
    public double? Near { get; init; }

    /// <summary>How much off it is one point, or allowed as a limit.</summary>
    public double? Within { get; init; }

    /// <summary>The lower end of what is wanted: the entered <c>from</c> or <c>least</c>.</summary>
    public double? From { get; init; }

    /// <summary>The upper end of what is wanted: the entered <c>to</c> or <c>most</c>.</summary>
    public double? To { get; init; }

    /// <summary>How much beyond is one point.</summary>
    public double? Point { get; init; }

    /// <summary>How much a point counts.</summary>
    public double? Weight { get; init; }

    /// <summary>Whether it is a limit.</summary>
    public bool? IsLimit { get; init; }

    /// <summary>Where it was written, as <c>file:line:column</c>.</summary>
    public string Place { get; init; } = "";
}

/// <summary>What a person wants of the launch, as entered.</summary>
/// <param name="Profile">The profile to begin from; null when none was named.</param>
/// <param name="Aims">The aims that were entered, in the order of the reference.</param>
public sealed record EnteredAims(string? Profile, IReadOnlyList<EnteredAim> Aims);
