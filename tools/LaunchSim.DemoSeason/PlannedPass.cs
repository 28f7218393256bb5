namespace LaunchSim.DemoSeason;

/// <summary>One pass of the invented season.</summary>
/// <param name="Slug">The end of its file's name.</param>
/// <param name="Name">What it is called.</param>
/// <param name="When">When it was.</param>
/// <param name="Changed">What was set otherwise than in the car's file.</param>
/// <param name="Track">The track in words.</param>
/// <param name="Weather">The weather in words.</param>
/// <param name="Logger">What was on board.</param>
/// <param name="Notes">What the crew wrote down.</param>
internal sealed record PlannedPass(
    string Slug, string Name, string When, IReadOnlyList<(string Path, string Value)> Changed, string Track, string Weather, Logger Logger, string Notes);

/// <summary>What was on board.</summary>
internal enum Logger
{
    /// <summary>Nothing: what is known was seen on a telephone's video.</summary>
    None,

    /// <summary>A dash logger with commas, a time column, and lines of text before the names.</summary>
    Dash,

    /// <summary>A box with semicolons and decimal commas, in millimetres, without a time column.</summary>
    Box,
}
