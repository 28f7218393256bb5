using LaunchSim.Passes.Measured;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Comparing;

/// <summary>The unit in which a person reads a measured quantity.</summary>
public static class ChannelScale
{
    // Less of it is not worth a plot's height, SI.
    private const double LeastTravel = 0.0127, LeastTurning = 5, LeastAcceleration = 1, LeastRate = 0.1, LeastAngle = 0.01, LeastSpeed = 1;

    /// <summary>The unit.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="readout">Whose units.</param>
    public static Scale Of(MeasuredQuantity quantity, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        ArgumentNullException.ThrowIfNull(readout);
        return quantity.Kind == QuantityKind.Length ? readout.Travel
            : quantity.Key == "pitch_rate" ? new Scale("°/s", Math.PI / 180, 1)
            : quantity.Kind == QuantityKind.AngularSpeed ? Readout.Rotation
            : quantity.Kind == QuantityKind.Acceleration ? Readout.Acceleration
            : quantity.Kind == QuantityKind.Angle ? Readout.Angle
            : readout.Speed;
    }

    /// <summary>The smallest extent that is worth drawing, SI.</summary>
    /// <param name="quantity">The quantity.</param>
    internal static double Least(MeasuredQuantity quantity) =>
        quantity.Kind == QuantityKind.Length ? LeastTravel
        : quantity.Key == "pitch_rate" ? LeastRate
        : quantity.Kind == QuantityKind.AngularSpeed ? LeastTurning
        : quantity.Kind == QuantityKind.Acceleration ? LeastAcceleration
        : quantity.Kind == QuantityKind.Angle ? LeastAngle
        : LeastSpeed;
}
