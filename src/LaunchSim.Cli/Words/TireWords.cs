using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>Tyres that leave the ground.</summary>
internal static class TireWords
{
    public static IEnumerable<string> Front(FigureSet figures, Readout readout)
    {
        if (figures.Events.First(LaunchEventKind.FrontTireOff) is null)
        {
            if (figures["front_load_lowest_n"] is { } lowest && figures["front_load_lowest_time_s"] is { } at)
            {
                yield return $"The front tyres stay on the ground; they carry {readout.Force.Text(lowest)} at the least, at {Readout.Time.Text(at)}.";
            }

            yield break;
        }

        yield return Off(figures, LaunchEventKind.FrontTireOff, "front", readout);
    }

    public static IEnumerable<string> Rear(FigureSet figures, Readout readout)
    {
        if (figures.Events.First(LaunchEventKind.RearTireOff) is not null)
        {
            yield return Off(figures, LaunchEventKind.RearTireOff, "rear", readout);
        }
    }

    private static string Off(FigureSet figures, LaunchEventKind kind, string which, Readout readout)
    {
        LaunchEvents events = figures.Events;
        LaunchEvent first = events.First(kind)!.Value;
        LaunchEvent last = events.Last(one => one.Kind == kind);
        int count = events.CountOf(kind);
        double total = events.TotalTime(kind, figures["run_end_s"] ?? 0);
        string often = count == 1 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $" {count} times, first");
        string high = events.Hardest(kind)?.Amount is { } height ? $", at most {readout.Travel.Text(height)} clear" : "";
        string end = last.Until is { } until ? $", and {(count == 1 ? "land" : "land for good")} at {Readout.Time.Text(until)}" : ", and are still up where the run ends";
        return $"The {which} tyres leave the ground{often} at {Readout.Time.Text(first.Time)}, are up for {Readout.Time.Text(total)}{(count == 1 ? "" : " in all")}{high}{end}.";
    }
}
