namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>Damper tables start at 0 0 and never fall; the set click lies within the entered ones.</summary>
internal static class DamperRules
{
    public static readonly string[] Sides = ["front.damper.extension", "front.damper.compression", "rear.damper.extension", "rear.damper.compression"];

    public static void Check(BoundValues values, Findings findings)
    {
        foreach (string side in Sides)
        {
            StartsAtZero(values.Find(side + ".speed"), "speeds", findings);
            Force(values.Find(side + ".force"), findings);
            if (values.Find(side + ".clicks") is { Clicks: { } rows })
            {
                foreach (KeyValuePair<double, Bound> row in rows)
                {
                    Force(row.Value, findings);
                }

                if (values.Find(side + ".set") is { } set)
                {
                    double click = set.Quantity!.Si();
                    if (click < rows[0].Key || click > rows[^1].Key)
                    {
                        findings.Error(set.Place, set.Path, $"the click {Rule.Exactly(click)}, outside the entered ones", $"{Rule.Exactly(rows[0].Key)} to {Rule.Exactly(rows[^1].Key)}", "set a click within them, or enter the forces of one further out");
                    }
                }
            }
        }
    }

    private static void StartsAtZero(Bound? row, string what, Findings findings)
    {
        if (row?.Quantity is { } quantity && quantity.Numbers[0] != 0)
        {
            findings.Error(row.Place, row.Path, $"{what} that start at {Rule.Exactly(quantity.Numbers[0])}", "a damper table that starts at 0 speed and 0 force", "begin both rows with 0; take the gas force out");
        }
    }

    private static void Force(Bound? row, Findings findings)
    {
        StartsAtZero(row, "forces", findings);
        for (int i = 1; row?.Quantity is { } force && i < force.Count; i++)
        {
            if (force.Numbers[i] < force.Numbers[i - 1])
            {
                Place place = row.Node is ScalarNode scalar ? scalar.PlaceOf(scalar.Quantity.NumbersAt[i]) : row.Place;
                findings.Error(place, row.Path, $"a force that falls from {Rule.Exactly(force.Numbers[i - 1])} to {Rule.Exactly(force.Numbers[i])} {force.Unit.Text} with speed", "forces that never fall", "look at the sheet; smooth a dip of its noise");
                return;
            }
        }
    }
}
