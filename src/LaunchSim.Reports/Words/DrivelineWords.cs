using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>When the clutch locks and the gearbox shifts; nothing for a car without an engine.</summary>
internal static class DrivelineWords
{
    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures["clutch_locks_s"] is { } locks)
        {
            said.Add(new("driveline.clutch_locks", $"The clutch locks at {Readout.Time.Text(locks)}."));
        }

        foreach (LaunchEvent shift in figures.Events)
        {
            if (shift.Kind != LaunchEventKind.Shift)
            {
                continue;
            }

            string gear = shift.Amount is { } number ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $" to gear {number:0}") : "";
            said.Add(new("driveline.shift", $"The shift{gear} begins at {Readout.Time.Text(shift.Time)}."));
        }
    }
}
