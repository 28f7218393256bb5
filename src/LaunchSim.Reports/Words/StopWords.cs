using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Which dampers top out or bottom, when and how hard.</summary>
internal static class StopWords
{
    private static readonly (LaunchEventKind Kind, string Key, string What)[] Stops =
    [
        (LaunchEventKind.RearTopStop, "stop.rear_top", "The rear dampers top out"),
        (LaunchEventKind.RearBottomStop, "stop.rear_bottom", "The rear dampers bottom"),
        (LaunchEventKind.FrontTopStop, "stop.front_top", "The front dampers top out"),
        (LaunchEventKind.FrontBottomStop, "stop.front_bottom", "The front dampers bottom"),
    ];

    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        int before = said.Count;
        Say(figures, Stops, readout, said);
        if (said.Count == before)
        {
            said.Add(new("stop.none", "No damper reaches a stop."));
        }
    }

    /// <summary>The rear's alone; nothing when they reach none.</summary>
    public static void Rear(FigureSet figures, Readout readout, List<Sentence> said) => Say(figures, Stops.AsSpan(0, 2), readout, said);

    private static void Say(FigureSet figures, ReadOnlySpan<(LaunchEventKind Kind, string Key, string What)> stops, Readout readout, List<Sentence> said)
    {
        foreach ((LaunchEventKind kind, string key, string what) in stops)
        {
            if (figures.Events.CountOf(kind) > 0)
            {
                said.Add(new(key, Text(figures.Events, kind, what, readout)));
            }
        }
    }

    private static string Text(LaunchEvents events, LaunchEventKind kind, string what, Readout readout)
    {
        LaunchEvent first = events.First(kind)!.Value, hardest = events.Hardest(kind)!.Value;
        string hard = hardest.Amount is { } force ? $", with {readout.Force.Text(force)} a side on the stop at the hardest" : "";
        return events.CountOf(kind) == 1
            ? $"{what} at {Readout.Time.Text(first.Time)}{hard}."
            : $"{what} {Counted(events.CountOf(kind))}, first at {Readout.Time.Text(first.Time)}{hard}.";
    }

    private static string Counted(int count) => count == 2 ? "twice" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count} times");
}
