using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>Whether body and rear axle move apart or together, by how much and when.</summary>
internal static class SeparationWords
{
    // Less than this is not seen, m.
    private const double Seen = 0.0005;

    public static IEnumerable<string> Of(FigureSet figures, Readout readout)
    {
        double apart = figures["separation_peak_m"] ?? 0, together = -(figures["squat_peak_m"] ?? 0);
        var said = new List<(double Time, string Text)>();
        if (apart >= Seen && figures["separation_peak_time_s"] is { } apartAt)
        {
            said.Add((apartAt, $"The rear separates by {readout.Travel.Text(apart)} at most, at {Readout.Time.Text(apartAt)}{Left(figures["separation_peak_travel_left_m"], "top", readout)}."));
        }

        if (together >= Seen && figures["squat_peak_time_s"] is { } togetherAt)
        {
            said.Add((togetherAt, $"The rear squats by {readout.Travel.Text(together)} at most, at {Readout.Time.Text(togetherAt)}{Left(figures["squat_peak_travel_left_m"], "bottom", readout)}."));
        }

        return said.Count == 0 ? ["The rear neither separates nor squats."] : said.OrderBy(one => one.Time).Select(one => one.Text);
    }

    private static string Left(double? left, string stop, Readout readout) => left switch
    {
        null => "",
        < 0 => $", {readout.Travel.Text(-left.Value)} into the dampers' {stop} stop",
        _ => $", with {readout.Travel.Text(left.Value)} of damper travel left to the {stop} stop",
    };
}
