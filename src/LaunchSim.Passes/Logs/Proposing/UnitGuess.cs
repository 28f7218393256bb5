using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>Which unit the numbers of a column are in, told from how far they go. Bounds are what launches do; common practice, no source.</summary>
internal static class UnitGuess
{
    /// <summary>A unit and why; a null unit where the numbers allow several.</summary>
    /// <param name="quantity">What the column measures.</param>
    /// <param name="low">Its lowest number.</param>
    /// <param name="high">Its highest.</param>
    public static (string? Unit, string Why) Of(MeasuredQuantity quantity, double low, double high)
    {
        double extent = high - low, most = Math.Max(Math.Abs(low), Math.Abs(high));
        if (quantity.Kind == QuantityKind.Length)
        {
            return extent switch
            {
                > 500 => (null, "moves too far for a length in mm"),
                > 15 => ("mm", "moves too far for inches, right for mm"),
                > 0.3 and < 9 => ("in", "moves too little for mm, right for inches"),
                > 0 and < 0.3 => ("m", "moves as far as a length in metres would"),
                _ => (null, "could be mm or in"),
            };
        }

        if (quantity.Kind == QuantityKind.AngularSpeed && quantity.Key is "pitch_rate")
        {
            return most > 8 ? ("deg/s", "too fast for rad/s") : (null, "could be deg/s or rad/s");
        }

        if (quantity.Key == "engine_speed")
        {
            return most > 1500 ? ("rpm", "too fast for rad/s") : (null, "could be rpm or rad/s");
        }

        if (quantity.Kind == QuantityKind.AngularSpeed)
        {
            return most > 1000 ? ("rpm", "too fast for rad/s or a speed over the ground") : (null, quantity.Rolls ? "could be rpm, rad/s, mph or km/h" : "could be rpm or rad/s");
        }

        if (quantity.Kind == QuantityKind.Acceleration)
        {
            return most < 5 ? ("g", "too little for m/s²") : most < 60 ? ("m/s²", "too much for g") : (null, "too much for g and for m/s²");
        }

        return quantity.Kind == QuantityKind.Angle ? most > 1 ? ("deg", "too much for rad") : (null, "could be deg or rad")
            : (null, "could be mph, km/h or m/s");
    }
}
