using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>A wheelie bar reaches behind the rear axle: a forgotten sign would leave a bar that never touches.</summary>
internal static class WheelieBarRules
{
    public static void Check(BoundValues values, Findings findings)
    {
        if (values.Find("rear.wheelie_bar.wheel") is { } wheel && wheel.Point().Ahead >= 0)
        {
            findings.Error(wheel.Place, wheel.Path, $"`{wheel.Quantity}`, a wheel that is not behind the rear axle", "a point behind it, which is negative", "put a minus before the first number, as in -58 4 in");
        }
    }
}
