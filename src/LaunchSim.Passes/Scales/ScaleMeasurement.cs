using LaunchSim.Scenarios.Scales;

namespace LaunchSim.Passes.Scales;

/// <summary>One reading among the equations: its value, its doubt, and what the car would have it be.</summary>
/// <param name="Words">What it is, such as <c>lift 2, standing axle</c>.</param>
/// <param name="Cause">What it was read off.</param>
/// <param name="Reading">The reading; of two pads the first.</param>
/// <param name="Value">Its value, SI; of two pads the sum.</param>
/// <param name="HalfWidth">Its doubt, SI: nineteen times in twenty.</param>
/// <param name="IsEntered">Whether the doubt was entered.</param>
/// <param name="Lift">The lift that it belongs to, from 0; −1 for the level.</param>
/// <param name="Predict">What it would be for parameters.</param>
internal sealed record ScaleMeasurement(
    string Words, ScaleCause Cause, ScaleReading Reading, double Value, double HalfWidth, bool IsEntered, int Lift, Func<double[], double> Predict)
{
    /// <summary>One standard deviation: half of what holds nineteen times in twenty.</summary>
    public double Deviation => HalfWidth / 2;
}
