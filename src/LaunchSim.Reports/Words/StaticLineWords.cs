using LaunchSim.Geometry;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>The static line in one sentence: <c>141 %, instant centre 35.9 in ahead and 10.0 in up, lower bar climbs 4.0°, upper falls 11.8°</c>.</summary>
public static class StaticLineWords
{
    // Farther than this many wheelbases, the point where the bars' lines meet says nothing that the bars do not.
    private const double FarAway = 25;

    /// <summary>The sentence without a full stop.</summary>
    /// <param name="line">The static line.</param>
    /// <param name="wheelbase">Wheelbase, m, by which far is judged.</param>
    /// <param name="readout">The units.</param>
    public static string Of(StaticLine line, double wheelbase, Readout readout)
    {
        var parts = new List<string> { Percent(line.Percent), Centre(line, wheelbase, readout) };
        for (int i = 0; i < line.Bars.Count; i++)
        {
            parts.Add(Bar(line.Bars[i], i > 0, readout));
        }

        return string.Join(", ", parts);
    }

    /// <summary>Whether the instant centre is too far away to be a point.</summary>
    /// <param name="line">The static line.</param>
    /// <param name="wheelbase">Wheelbase, m.</param>
    public static bool IsFar(StaticLine line, double wheelbase) => !(Math.Abs(line.InstantCentreAhead) < FarAway * wheelbase);

    /// <summary>Percent in words.</summary>
    /// <param name="percent">Percent anti-squat.</param>
    public static string Percent(double percent) => double.IsFinite(percent) ? Readout.Percent.Text(percent) : "no percent (the axle would move level)";

    private static string Centre(StaticLine line, double wheelbase, Readout readout)
    {
        if (IsFar(line, wheelbase))
        {
            return "bars parallel or nearly so: the instant centre is far away";
        }

        Scale place = readout.Place;
        string ahead = line.InstantCentreAhead < 0 ? $"{place.Text(-line.InstantCentreAhead)} behind" : $"{place.Text(line.InstantCentreAhead)} ahead";
        string up = line.InstantCentreUp < 0 ? $"{place.Text(-line.InstantCentreUp)} below the ground" : $"{place.Text(line.InstantCentreUp)} up";
        return $"instant centre {ahead} and {up}";
    }

    private static string Bar(BarAngle bar, bool isFurther, Readout readout)
    {
        // The noun was said with the first one.
        string name = isFurther ? bar.Name.Replace(" bar", "", StringComparison.Ordinal) : bar.Name;
        return Readout.Angle.IsZero(bar.Climb) ? $"{name} is level"
            : bar.Climb > 0 ? $"{name} climbs {Readout.Angle.Text(bar.Climb)}"
            : $"{name} falls {Readout.Angle.Text(-bar.Climb)}";
    }
}
