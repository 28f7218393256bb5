using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Whether the rear tyres spin, or how near they come to it.</summary>
internal static class GripWords
{
    // Faster than this a torque given by time has run away with the tyres, m/s.
    private const double RunAway = 20;

    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures["slip_beyond_peak_first_s"] is { } first && figures["slip_beyond_peak_time_s"] is { } total)
        {
            string speed = figures["slip_speed_largest_mps"] is { } slip && !readout.Speed.IsZero(slip) ? $"; the tread slides by {readout.Speed.Text(slip)} at the most" : "";
            said.Add(new("grip.spin", $"The rear tyres spin: they slip beyond the peak of their grip from {Readout.Time.Text(first)}, for {Readout.Time.Text(total)} in all{speed}."));
            if (figures["slip_speed_largest_mps"] is > RunAway && figures["driveshaft_torque_largest_nm"] is null)
            {
                said.Add(new("grip.run_away", "A torque given by time does not fall off as the tyres spin up, as an engine's would: from there on the numbers are no guide."));
            }
        }
        else if (figures["grip_margin_lowest_ratio"] is { } margin && figures["grip_margin_lowest_time_s"] is { } at)
        {
            said.Add(new("grip.hold", $"The rear tyres hold: at {Readout.Time.Text(at)} they are nearest to spinning, with {(Readout.Percent.IsZero(100 * margin) ? "next to nothing" : Readout.Percent.Text(100 * margin))} of their grip to spare."));
        }
    }
}
