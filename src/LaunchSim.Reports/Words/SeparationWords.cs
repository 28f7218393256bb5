using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Whether body and rear axle move apart or together, by how much and when.</summary>
internal static class SeparationWords
{
    // Less than this is not seen, m.
    private const double Seen = 0.0005;

    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        double apart = figures["separation_peak_m"] ?? 0, together = -(figures["squat_peak_m"] ?? 0);
        Sentence? first = null, second = null;
        double apartTime = double.PositiveInfinity, togetherTime = double.PositiveInfinity;
        if (apart >= Seen && figures["separation_peak_time_s"] is { } apartAt)
        {
            apartTime = apartAt;
            double? left = figures["separation_peak_travel_left_m"];
            first = new($"separation.apart{LeftKey(left, readout)}", $"The rear separates by {readout.Travel.Text(apart)} at most, at {Readout.Time.Text(apartAt)}{Left(left, "top", readout)}.");
        }

        if (together >= Seen && figures["squat_peak_time_s"] is { } togetherAt)
        {
            togetherTime = togetherAt;
            double? left = figures["squat_peak_travel_left_m"];
            second = new($"separation.squat{LeftKey(left, readout)}", $"The rear squats by {readout.Travel.Text(together)} at most, at {Readout.Time.Text(togetherAt)}{Left(left, "bottom", readout)}.");
        }

        if (togetherTime < apartTime)
        {
            (first, second) = (second, first);
        }

        said.Add(first ?? new("separation.neither", "The rear neither separates nor squats."));
        if (second is not null)
        {
            said.Add(second);
        }
    }

    private static string LeftKey(double? left, Readout readout) => left switch
    {
        { } way when readout.Travel.IsZero(way) => "_at_stop",
        < 0 => "_into_stop",
        _ => "",
    };

    private static string Left(double? left, string stop, Readout readout) => left switch
    {
        null => "",
        { } way when readout.Travel.IsZero(way) => $", just at the dampers' {stop} stop",
        < 0 => $", {readout.Travel.Text(-left.Value)} into the dampers' {stop} stop",
        _ => $", with {readout.Travel.Text(left.Value)} of damper travel left to the {stop} stop",
    };
}
