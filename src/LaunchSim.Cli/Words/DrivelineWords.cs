using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>When the clutch locks and the gearbox shifts; nothing for a car without an engine.</summary>
internal static class DrivelineWords
{
    public static IEnumerable<string> Of(FigureSet figures, Readout readout)
    {
        if (figures["clutch_locks_s"] is { } locks)
        {
            yield return $"The clutch locks at {Readout.Time.Text(locks)}.";
        }

        foreach (LaunchEvent shift in figures.Events.Where(one => one.Kind == LaunchEventKind.Shift))
        {
            string gear = shift.Amount is { } number ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $" to gear {number:0}") : "";
            yield return $"The shift{gear} begins at {Readout.Time.Text(shift.Time)}.";
        }
    }
}
