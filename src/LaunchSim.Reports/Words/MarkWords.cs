using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Times at the marks.</summary>
internal static class MarkWords
{
    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        for (int i = 1; figures.TryGet(Key(i, "distance_m"), out Figure? place); i++)
        {
            // A mark is a round number in the units in which it was entered.
            string where = readout.Distance.Text(place.Value.Value ?? 0).Replace(".0 ", " ", StringComparison.Ordinal).Replace(".00 ", " ", StringComparison.Ordinal);
            if (figures[Key(i, "time_s")] is not { } time)
            {
                said.Add(new("mark.not_reached", $"{where} is not reached in this run."));
                continue;
            }

            string beam = figures["rollout_time_s"] is > 0 && figures[Key(i, "beam_time_s")] is { } clock ? $", {Readout.Time.Text(clock)} on the timing clock" : "";
            string speed = figures[Key(i, "speed_mps")] is { } fast ? $", at {readout.Speed.Text(fast)}" : "";
            said.Add(new("mark.reached", $"{where} comes {Readout.Time.Text(time)} after release{beam}{speed}."));
        }
    }

    private static string Key(int mark, string what) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"mark_{mark}_{what}");
}
