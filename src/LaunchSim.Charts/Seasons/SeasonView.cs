namespace LaunchSim.Charts.Seasons;

/// <summary>One time over the passes of a season.</summary>
public sealed record SeasonPanel
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The unit of its numbers.</summary>
    public required string Unit { get; init; }

    /// <summary>Digits after the point that make sense in this unit.</summary>
    public required int Decimals { get; init; }

    /// <summary>As seen in each pass; not a number where it was not.</summary>
    public required IReadOnlyList<double> Seen { get; init; }

    /// <summary>How far off that may be, nineteen times in twenty; not a number likewise.</summary>
    public required IReadOnlyList<double> Doubt { get; init; }

    /// <summary>As predicted.</summary>
    public required IReadOnlyList<double> Predicted { get; init; }

    /// <summary>As predicted by the fitted car; null when there is none.</summary>
    public required IReadOnlyList<double>? Fitted { get; init; }
}

/// <summary>A setting over the passes of a season.</summary>
/// <param name="Name">Its path.</param>
/// <param name="Values">As written in each pass.</param>
public sealed record SeasonSetting(string Name, IReadOnlyList<string> Values);

/// <summary>A season ready to be drawn: plain numbers in the reader's units.</summary>
public sealed record SeasonView
{
    /// <summary>What is seen, in one sentence.</summary>
    public required string Title { get; init; }

    /// <summary>What it is of, and by what it was made.</summary>
    public required string Imprint { get; init; }

    /// <summary>Short names of the passes, in order.</summary>
    public required IReadOnlyList<string> Passes { get; init; }

    /// <summary>The times.</summary>
    public required IReadOnlyList<SeasonPanel> Panels { get; init; }

    /// <summary>Settings that were not the same in all passes.</summary>
    public required IReadOnlyList<SeasonSetting> Settings { get; init; }
}
