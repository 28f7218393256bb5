using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>The wheelie bar on the ground; nothing when it never is.</summary>
internal static class WheelieBarWords
{
    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures["wheelie_bar_first_s"] is { } first && figures["wheelie_bar_time_s"] is { } total)
        {
            string hard = figures["wheelie_bar_force_n"] is { } force ? $", and carries {readout.Force.Text(force)} at the most" : "";
            said.Add(new("wheelie_bar.on_ground", $"The wheelie bar is on the ground from {Readout.Time.Text(first)}, for {Readout.Time.Text(total)} in all{hard}."));
        }
    }
}
