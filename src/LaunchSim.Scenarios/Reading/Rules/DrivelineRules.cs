namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>One shift speed for all or one a shift; a converter that gives out no more power than it takes.</summary>
internal static class DrivelineRules
{
    public static void Check(BoundValues values, Findings findings)
    {
        Gears(values, findings);
        Converter(values, findings);
    }

    private static void Gears(BoundValues values, Findings findings)
    {
        const string Gears = "driveline.gears";
        if (values.Find(Gears + ".ratios") is not { } ratios)
        {
            return;
        }

        int shifts = ratios.Quantity!.Count - 1;
        if (values.Find(Gears + ".shift_at") is { } at)
        {
            int given = at.Quantity!.Count;
            if (given != 1 && given != shifts)
            {
                findings.Error(at.Place, at.Path, $"{given} shift speeds for {shifts + 1} gears", shifts > 1 ? $"1, or {shifts}: one for each shift" : "1", "give one for all shifts, or one for each");
            }
        }
    }

    private static void Converter(BoundValues values, Findings findings)
    {
        if (values.Find("driveline.converter.speed_ratio")?.Quantity is not { } speed || values.Find("driveline.converter.torque_ratio") is not { Quantity: { } torque } row || speed.Count != torque.Count)
        {
            return;
        }

        for (int i = 0; i < speed.Count; i++)
        {
            double most = torque.Si(i) * speed.Si(i);
            if (i > 0)
            {
                // Both are linear between entries, their product is a parabola that may rise above its ends.
                double slope = (torque.Si(i) - torque.Si(i - 1)) / (speed.Si(i) - speed.Si(i - 1));
                double at = slope < 0 ? (speed.Si(i - 1) - (torque.Si(i - 1) / slope)) / 2 : speed.Si(i);
                if (at > speed.Si(i - 1) && at < speed.Si(i))
                {
                    most = Math.Max(most, at * (torque.Si(i - 1) + (slope * (at - speed.Si(i - 1)))));
                }
            }

            if (most > 1 + 1e-12)
            {
                findings.Error(row.Place, row.Path, $"a torque ratio that times the speed ratio comes to {Rule.Number(most)} at or before a speed ratio of {Rule.Exactly(speed.Numbers[i])}", "torque ratio × speed ratio at most 1: no more power out than in", "look at the sheet");
                return;
            }
        }
    }
}
