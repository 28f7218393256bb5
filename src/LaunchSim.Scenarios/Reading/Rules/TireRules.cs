namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>The tyre's curve must not fold back, and the set pressure must leave rates and grip above 0.</summary>
internal static class TireRules
{
    public static void Check(BoundValues values, string tire, Findings findings)
    {
        Curve(values, tire, findings);
        Pressure(values, tire, findings);
    }

    private static void Curve(BoundValues values, string tire, Findings findings)
    {
        if (values.FindNumber(tire + ".grip") is not { } grip || values.Find(tire + ".slip_stiffness") is not { } stiffness
            || values.FindNumber(tire + ".peak_slip") is not { } peak || values.FindNumber(tire + ".sliding_ratio") is not { } ratio)
        {
            return;
        }

        double slope = stiffness.Quantity!.Si();
        double c = 2 - (2 / Math.PI * Math.Asin(ratio));
        double b = slope / (c * grip);
        double e = ((b * peak) - Math.Tan(Math.PI / (2 * c))) / ((b * peak) - Math.Atan(b * peak));
        if (!(e <= 1))
        {
            findings.Error(stiffness.Place, stiffness.Path, $"a tyre curve that folds back: a stiffness of {Rule.Number(slope)} with the peak at {Rule.Number(peak)} and a sliding ratio of {Rule.Number(ratio)} (E = {Rule.Number(e)})", "E at most 1", "lower slip_stiffness, or raise sliding_ratio");
        }
        else if (slope < 1.8 * grip / peak)
        {
            findings.Warning(stiffness.Place, stiffness.Path, $"a slip stiffness of {Rule.Number(slope)}, with which the curve bows upward before its peak", $"{Rule.Number(1.8 * grip / peak)} or more (1.8 · grip / peak_slip)", "raise slip_stiffness or peak_slip");
        }
    }

    private static void Pressure(BoundValues values, string tire, Findings findings)
    {
        if (values.FindNumber(tire + ".pressure.measured") is not { } measured || values.Find(tire + ".pressure.set") is not { } set)
        {
            return;
        }

        double more = set.Quantity!.Si() - measured;
        Above("vertical", values.FindNumber(tire + ".vertical_rate"), "vertical rate");
        Above("torsional", values.FindNumber(tire + ".carcass.torsional_rate"), "torsional rate");
        Above("grip", 1, "grip");

        void Above(string key, double? atMeasured, string what)
        {
            if (atMeasured is { } start && values.FindNumber($"{tire}.pressure.{key}") is { } slope && !(start + (slope * more) > 0))
            {
                findings.Error(set.Place, set.Path, $"a set pressure at which the {what} is not above 0", $"a {what} above 0", $"look at `{key}` and at both pressures");
            }
        }
    }
}
