using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>Whether the rear tyres spin, or how near they come to it.</summary>
internal static class GripWords
{
    public static IEnumerable<string> Of(FigureSet figures, Readout readout)
    {
        if (figures["slip_beyond_peak_first_s"] is { } first && figures["slip_beyond_peak_time_s"] is { } total)
        {
            string speed = figures["slip_speed_largest_mps"] is { } slip ? $"; the tread slides by {readout.Speed.Text(slip)} at the most" : "";
            yield return $"The rear tyres spin: they slip beyond the peak of their grip from {Readout.Time.Text(first)}, for {Readout.Time.Text(total)} in all{speed}.";
        }
        else if (figures["grip_margin_lowest_ratio"] is { } margin && figures["grip_margin_lowest_time_s"] is { } at)
        {
            yield return $"The rear tyres hold: at {Readout.Time.Text(at)} they are nearest to spinning, with {Readout.Percent.Text(100 * margin)} of their grip to spare.";
        }
    }
}
