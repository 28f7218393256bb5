using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>
/// Bars reach ahead of the axle and a wheelie bar behind it. The model takes them either way, so these are warnings: most
/// often a sign was forgotten.
/// </summary>
internal static class DirectionRules
{
    public static void Check(BoundValues values, Findings findings)
    {
        Forward(values, "rear.linkage.lower.axle", "rear.linkage.lower.body", "the lower bar", findings);
        Forward(values, "rear.linkage.upper.axle", "rear.linkage.upper.body", "the upper bar", findings);
        if (values.Find("rear.linkage.pivot") is { } pivot && pivot.Point().Ahead <= 0)
        {
            findings.Warning(pivot.Place, pivot.Path, $"`{pivot.Quantity}`, a pivot that is not ahead of the rear axle", "a point ahead of it, as a rule", "look at the sign");
        }

        if (values.Find("rear.wheelie_bar.wheel") is { } wheel && wheel.Point().Ahead >= 0)
        {
            findings.Warning(wheel.Place, wheel.Path, $"`{wheel.Quantity}`, a wheel that is not behind the rear axle", "a point behind it, which is negative, as a rule", "put a minus before the first number, as in -58 4 in");
        }
    }

    private static void Forward(BoundValues values, string axle, string body, string what, Findings findings)
    {
        if (values.Find(axle) is not { } from || values.Find(body) is not { } to)
        {
            return;
        }

        Point one = from.Point(), other = to.Point();
        if (other.Ahead <= one.Ahead)
        {
            findings.Warning(to.Place, body, $"`{to.Quantity}`, so that {what} runs backward from the axle", "a point ahead of the bar's end on the axle, as a rule", "look at the signs, and at which end is which");
        }
    }
}
