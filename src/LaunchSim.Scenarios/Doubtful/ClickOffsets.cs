using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Doubtful;

/// <summary>
/// By how many clicks an adjuster does something else than its dyno sheets say: worn, counted from another end, or other
/// oil. As a doubtful number it moves the rows and not the click that is set, so that it holds at whatever click is set later.
/// </summary>
public static class ClickOffsets
{
    /// <summary>The usual doubt of a click, nineteen times in twenty: one; common practice, no source.</summary>
    public const double UsualDoubt = 1;

    /// <summary>The offset of one adjuster: upward, it does at a click what the sheets say of a higher one.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="side">The direction, such as <c>rear.damper.extension</c>.</param>
    /// <returns>The number, at the path of the click that is set; null when the side has no adjuster, or its sheets do not say what a click does.</returns>
    public static DoubtfulNumber? Of(Scenario scenario, string side)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (scenario.Values.Find(side + ".clicks") is not { Clicks: { Count: > 1 } rows } || scenario.Values.Find(side + ".set")?.Quantity is not { } set)
        {
            return null;
        }

        (ScenarioPath Path, Quantity Row)[] sheets = [.. rows.Select(row => (ScenarioPath.Resolve(row.Value.Path, out _)!, row.Value.Quantity!))];
        double[] clicks = [.. rows.Select(row => row.Key)];
        if (sheets.Any(sheet => sheet.Row.Numbers.Sum() <= 0))
        {
            return null;
        }

        double half = set.SiDoubt() ?? UsualDoubt;
        return new DoubtfulNumber(share => [.. sheets.Select((sheet, i) => new ScenarioEdit(sheet.Path, At(clicks, sheets, clicks[i] + (share * half), sheet.Row.Unit)))])
        {
            Path = side + ".set",
            Entry = null,
            Text = string.Create(CultureInfo.InvariantCulture, $"0 ±{half:0.##} clicks off the sheets"),
            Doubt = new Doubt(half, false),
            IsEntered = set.SiDoubt() is not null,
        };
    }

    // Between two sheets as the damper's own law has it; beyond them the last sheet, its forces growing by the share that the
    // last clicks had: a straight line might fall with speed, which no damper does.
    private static Quantity At(double[] clicks, (ScenarioPath Path, Quantity Row)[] sheets, double click, Unit unit)
    {
        int last = clicks.Length - 1;
        int above = 1;
        while (above < last && clicks[above] < click)
        {
            above++;
        }

        double[] lower = sheets[above - 1].Row.AllSi(), upper = sheets[above].Row.AllSi();
        double part = (click - clicks[above - 1]) / (clicks[above] - clicks[above - 1]);
        double[] forces = part is >= 0 and <= 1
            ? [.. lower.Select((force, i) => force + (part * (upper[i] - force)))]
            : Beyond(part < 0 ? lower : upper, Math.Pow(upper.Sum() / lower.Sum(), part < 0 ? part : part - 1));
        return new Quantity(forces.Select(force => force / unit.Factor), unit);
    }

    private static double[] Beyond(double[] sheet, double share) => [.. sheet.Select(force => force * share)];
}
