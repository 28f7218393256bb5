namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>An axle's scales read more than its unsprung mass weighs.</summary>
internal static class WeightRules
{
    private const double Gravity = 9.80665;

    public static void Check(BoundValues values, Findings findings)
    {
        foreach (string end in new[] { "front", "rear" })
        {
            if (values.Find(end + ".unsprung") is { } unsprung && values.Find("car.scales." + end) is { } scale && unsprung.Quantity!.Si() * Gravity >= scale.Quantity!.Si())
            {
                findings.Error(unsprung.Place, unsprung.Path, $"an unsprung mass of {unsprung.Quantity}, which weighs as much as the {end} scales read or more", $"less than the {end} scale reading of {scale.Quantity}", "weigh the parts again, and look at the units");
            }
        }
    }
}
