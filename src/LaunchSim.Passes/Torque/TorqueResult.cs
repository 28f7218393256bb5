namespace LaunchSim.Passes.Torque;

/// <summary>A row of torques, each with its doubt.</summary>
/// <param name="IsEngine">Whether it is an engine's torque over its speed, rad/s; otherwise both axle shafts' over time, s.</param>
/// <param name="At">Times or engine speeds, rising.</param>
/// <param name="Torques">Torques, N·m.</param>
/// <param name="HalfWidths">Nineteen times in twenty within this much, N·m.</param>
/// <param name="Percent">One doubt for the whole row, as a scenario takes it: the mean size of the half-widths over that of the torques, percent.</param>
public sealed record TorqueRow(bool IsEngine, IReadOnlyList<double> At, IReadOnlyList<double> Torques, IReadOnlyList<double> HalfWidths, double Percent)
{
    /// <summary>A row with the doubt for all of it.</summary>
    /// <param name="isEngine">Whether it is an engine's.</param>
    /// <param name="at">Times or speeds.</param>
    /// <param name="torques">Torques.</param>
    /// <param name="halfWidths">Half-widths.</param>
    public static TorqueRow Of(bool isEngine, IReadOnlyList<double> at, IReadOnlyList<double> torques, IReadOnlyList<double> halfWidths)
    {
        ArgumentNullException.ThrowIfNull(torques);
        ArgumentNullException.ThrowIfNull(halfWidths);
        double size = torques.Sum(torque => torque * torque);
        return new TorqueRow(isEngine, at, torques, halfWidths, size > 0 ? 100 * Math.Sqrt(halfWidths.Sum(half => half * half) / size) : double.NaN);
    }
}

/// <summary>What a part of the doubt comes from.</summary>
/// <param name="Words">Such as <c>rear.tire.grip: 2.3 ±0.3</c>.</param>
/// <param name="Percent">Half-width of the row by it alone, percent.</param>
public sealed record TorqueCause(string Words, double Percent);

/// <summary>How well one channel is met.</summary>
/// <param name="Words">Which, and from where.</param>
/// <param name="Spans">How many spans of it counted.</param>
/// <param name="Before">Root mean square of measured less predicted with the file's own torque, in standard deviations of the channel.</param>
/// <param name="After">The same with the torque found.</param>
public sealed record TorqueChannel(string Words, int Spans, double Before, double After);

/// <summary>A torque table out of a pass.</summary>
public sealed record TorqueResult
{
    /// <summary>The row that was found.</summary>
    public required TorqueRow Row { get; init; }

    /// <summary>The file's own torque at the same places, N·m.</summary>
    public required IReadOnlyList<double> Own { get; init; }

    /// <summary>Where the doubt comes from, the largest first.</summary>
    public required IReadOnlyList<TorqueCause> Causes { get; init; }

    /// <summary>The channels that were met; empty from a time alone.</summary>
    public IReadOnlyList<TorqueChannel> Channels { get; init; } = [];

    /// <summary>From a time alone: by what the file's torque is multiplied; null from logs.</summary>
    public double? Factor { get; init; }

    /// <summary>What a person should know of it.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}

/// <summary>No torque can be told; the message says why.</summary>
public sealed class TorqueException(string message) : Exception(message);
