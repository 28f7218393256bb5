using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>Bars, springs and dampers have a length.</summary>
internal static class LengthRules
{
    public static void Check(BoundValues values, Findings findings)
    {
        Apart(values, "rear.linkage.lower.axle", "rear.linkage.lower.body", "the lower bar", findings);
        Apart(values, "rear.linkage.upper.axle", "rear.linkage.upper.body", "the upper bar", findings);
        Apart(values, "rear.linkage.lower.axle", "rear.linkage.upper.axle", "the axle bracket", findings);
        Apart(values, "rear.spring.axle", "rear.spring.body", "the spring", findings);
        string axle = values.Find("rear.damper.axle") is null ? "rear.spring.axle" : "rear.damper.axle";
        string body = values.Find("rear.damper.body") is null ? "rear.spring.body" : "rear.damper.body";
        if (axle != "rear.spring.axle" || body != "rear.spring.body")
        {
            Apart(values, axle, body, "the damper", findings);
        }
    }

    private static void Apart(BoundValues values, string one, string other, string what, Findings findings)
    {
        if (values.Find(one) is not { } a || values.Find(other) is not { } b)
        {
            return;
        }

        Point from = a.Point();
        Point to = b.Point();
        if (from == to)
        {
            findings.Error(b.Place, other, $"the same point as {one}: {what} would have no length", "two different points", "measure both ends");
        }
    }
}
