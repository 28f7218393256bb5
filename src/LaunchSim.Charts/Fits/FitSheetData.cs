using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.Fits;

/// <summary>What pictures of a fit are drawn from: plain numbers and words.</summary>
public sealed record FitSheetData
{
    /// <summary>What is seen, one sentence.</summary>
    public required string Title { get; init; }

    /// <summary>How to read it.</summary>
    public required string Explanation { get; init; }

    /// <summary>What it was made of and by.</summary>
    public required string Imprint { get; init; }

    /// <summary>The channels.</summary>
    public required IReadOnlyList<DrawnChannel> Channels { get; init; }
}

/// <summary>One channel: what was measured, and two predictions of it.</summary>
/// <param name="Heading">Which pass and which quantity.</param>
/// <param name="Caption">What its axis measures, without the unit.</param>
/// <param name="Scale">Its unit.</param>
/// <param name="IsFront">Whether it is of the front: its lines are dashed.</param>
/// <param name="Noise">What it was taken to scatter by, one standard deviation, SI.</param>
/// <param name="Times">Seconds since release, rising.</param>
/// <param name="Measured">What was measured, SI.</param>
/// <param name="Before">What the file predicts, SI.</param>
/// <param name="After">What the fit predicts, SI.</param>
public sealed record DrawnChannel(
    string Heading, string Caption, Scale Scale, bool IsFront, double Noise, IReadOnlyList<double> Times, IReadOnlyList<double> Measured, IReadOnlyList<double> Before, IReadOnlyList<double> After);
