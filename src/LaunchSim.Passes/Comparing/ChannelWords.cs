using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Comparing;

/// <summary>What a measured quantity is called over a plot or in a table.</summary>
public static class ChannelWords
{
    /// <summary>Its name, with where it counts when that is not where the sensor is.</summary>
    /// <param name="quantity">The quantity.</param>
    public static string Of(MeasuredQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return $"{char.ToUpperInvariant(quantity.Words[0])}{quantity.Words[1..]}{(quantity.Driveline ? ", at the axle" : "")}";
    }
}
