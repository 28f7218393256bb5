using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Tyres that leave the ground.</summary>
internal static class TireWords
{
    public static void Front(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures.Events.First(LaunchEventKind.FrontTireOff) is null)
        {
            string least = figures["front_load_lowest_n"] is { } lowest && figures["front_load_lowest_time_s"] is { } at
                ? $"; they carry {readout.Force.Text(lowest)} at the least, at {Readout.Time.Text(at)}" : "";
            said.Add(new("tire.front_stays", $"The front tyres stay on the ground{least}."));
            return;
        }

        said.Add(Off(figures, LaunchEventKind.FrontTireOff, "front", readout));
    }

    public static void Rear(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures.Events.First(LaunchEventKind.RearTireOff) is not null)
        {
            said.Add(Off(figures, LaunchEventKind.RearTireOff, "rear", readout));
        }
    }

    private static Sentence Off(FigureSet figures, LaunchEventKind kind, string which, Readout readout)
    {
        LaunchEvents events = figures.Events;
        LaunchEvent first = events.First(kind)!.Value;
        LaunchEvent last = first;
        foreach (LaunchEvent one in events)
        {
            last = one.Kind == kind ? one : last;
        }

        int count = events.CountOf(kind);
        double total = events.TotalTime(kind, figures["run_end_s"] ?? 0);
        string often = count == 1 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $" {count} times, first");
        string high = events.Hardest(kind)?.Amount is { } height ? $", at most {readout.Travel.Text(height)} clear" : "";
        string key = last.Until is null ? $"tire.{which}_off_at_end" : $"tire.{which}_off";
        string end = last.Until is { } until ? $", and {(count == 1 ? "land" : "land for good")} at {Readout.Time.Text(until)}" : ", and are still up where the run ends";
        return new(key, $"The {which} tyres leave the ground{often} at {Readout.Time.Text(first.Time)}, are up for {Readout.Time.Text(total)}{(count == 1 ? "" : " in all")}{high}{end}.");
    }
}
