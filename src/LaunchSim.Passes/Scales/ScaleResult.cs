using LaunchSim.Scenarios.Scales;

namespace LaunchSim.Passes.Scales;

/// <summary>A value with its doubt.</summary>
/// <param name="Value">In SI.</param>
/// <param name="HalfWidth">Nineteen times in twenty within this much, SI.</param>
public readonly record struct DoubtedValue(double Value, double HalfWidth);

/// <summary>A reading against what the car that fits all of them best would give.</summary>
/// <param name="Words">What was read.</param>
/// <param name="Cause">What it was read off.</param>
/// <param name="Lift">The lift, from 0; −1 for the level.</param>
/// <param name="Place">Where it was written.</param>
/// <param name="Read">The reading, SI.</param>
/// <param name="HalfWidth">Its doubt, SI.</param>
/// <param name="IsEntered">Whether the doubt was entered; otherwise it is the usual one.</param>
/// <param name="Fitted">What the car would give, SI.</param>
/// <param name="HeightShare">Which share of the height's variance comes from this reading, 0 to 1.</param>
public sealed record ScaleRow(
    string Words, ScaleCause Cause, int Lift, string Place, double Read, double HalfWidth, bool IsEntered, double Fitted, double HeightShare);

/// <summary>A lift that would tell the height better than the highest one did.</summary>
/// <param name="RaisesFront">Which axle.</param>
/// <param name="Height">To which height of the wheel centres, m.</param>
/// <param name="Slope">How steep the car would stand, rad.</param>
/// <param name="HalfWidth">The height's doubt with it, m.</param>
/// <param name="Suffices">Whether that doubt is as small as was asked for.</param>
public sealed record BetterLift(bool RaisesFront, double Height, double Slope, double HalfWidth, bool Suffices);

/// <summary>Where the centre of gravity is, and how well that is known.</summary>
public sealed record ScaleResult
{
    /// <summary>What was read.</summary>
    public required ScaleSheet Sheet { get; init; }

    /// <summary>The car's weight, N.</summary>
    public required DoubtedValue Weight { get; init; }

    /// <summary>The centre of gravity ahead of the rear wheel centres, m.</summary>
    public required DoubtedValue Ahead { get; init; }

    /// <summary>Its height above the floor, m.</summary>
    public required DoubtedValue Up { get; init; }

    /// <summary>How far it is to the left of the middle, m; null where loads or tracks of left and right are not known.</summary>
    public required DoubtedValue? Left { get; init; }

    /// <summary>The left tyres' share of the weight, 0 to 1; null where left and right were not read apart.</summary>
    public required double? LeftShare { get; init; }

    /// <summary>Every reading.</summary>
    public required IReadOnlyList<ScaleRow> Rows { get; init; }

    /// <summary>Which share of the height's variance comes from each cause; they add up to 1.</summary>
    public required IReadOnlyDictionary<ScaleCause, double> HeightShares { get; init; }

    /// <summary>By how much the body turned at each lift, rad, nose up positive.</summary>
    public required IReadOnlyList<double> Slopes { get; init; }

    /// <summary>Sum of the squared residuals in standard deviations; with <see cref="DegreesOfFreedom"/> it tells whether the readings agree.</summary>
    public required double SumOfSquares { get; init; }

    /// <summary>How many readings there are more than unknowns: 0 with one lift.</summary>
    public required int DegreesOfFreedom { get; init; }

    /// <summary>In what share of sheets whose doubts are right the readings disagree at least as much; null with one lift.</summary>
    public required double? Agreement { get; init; }

    /// <summary>What lift would tell the height better; null when its doubt is as small as was asked for.</summary>
    public required BetterLift? Better { get; init; }
}
