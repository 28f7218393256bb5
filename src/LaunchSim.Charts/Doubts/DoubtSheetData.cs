using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.Doubts;

/// <summary>What a sheet of plausible cars is drawn from: plain numbers and words.</summary>
public sealed record DoubtSheetData
{
    /// <summary>The conclusion, one sentence.</summary>
    public required string Title { get; init; }

    /// <summary>How many cars, and which.</summary>
    public required string Explanation { get; init; }

    /// <summary>What it was made of and by.</summary>
    public required string Imprint { get; init; }

    /// <summary>Both ends' rises, rear first.</summary>
    public required IReadOnlyList<DrawnBand> Rises { get; init; }

    /// <summary>The separation.</summary>
    public required DrawnBand Separation { get; init; }

    /// <summary>The rear tyres' load.</summary>
    public required DrawnBand RearLoad { get; init; }

    /// <summary>What is said, best first where room is short.</summary>
    public required IReadOnlyList<DrawnShare> Statements { get; init; }

    /// <summary>What to measure first, best first.</summary>
    public required IReadOnlyList<DrawnShare> Numbers { get; init; }

    /// <summary>What is said of the numbers below them; may be empty.</summary>
    public required string NumbersNote { get; init; }
}

/// <summary>A quantity over time: what most cars stay within, and one car's own line.</summary>
/// <param name="Heading">What it is, as a heading.</param>
/// <param name="Caption">What its axis measures, without the unit.</param>
/// <param name="Scale">Its unit.</param>
/// <param name="IsFront">Whether it is of the front: its line is dashed.</param>
/// <param name="Least">The smallest extent worth drawing, in the unit.</param>
/// <param name="Step">Time between values, s.</param>
/// <param name="Low">Lower end of the band, SI; not a number where it ends.</param>
/// <param name="High">Upper end of the band, SI.</param>
/// <param name="Own">The own car's line, SI; not a number where it ends.</param>
public sealed record DrawnBand(
    string Heading, string Caption, Scale Scale, bool IsFront, double Least, double Step, IReadOnlyList<double> Low, IReadOnlyList<double> High, IReadOnlyList<double> Own);

/// <summary>A share with the limits of its error.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Value">In words, as in <c>91 %</c>.</param>
/// <param name="Share">0 to 1.</param>
/// <param name="Low">Lower limit, 0 to 1.</param>
/// <param name="High">Upper limit, 0 to 1.</param>
/// <param name="IsStrong">Whether its name stands out.</param>
public sealed record DrawnShare(string Name, string Value, double Share, double Low, double High, bool IsStrong);
