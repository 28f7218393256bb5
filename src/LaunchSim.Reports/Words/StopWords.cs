using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Which dampers top out or bottom, when and how hard.</summary>
internal static class StopWords
{
    private static readonly (LaunchEventKind Kind, string What)[] Stops =
    [
        (LaunchEventKind.RearTopStop, "The rear dampers top out"),
        (LaunchEventKind.RearBottomStop, "The rear dampers bottom"),
        (LaunchEventKind.FrontTopStop, "The front dampers top out"),
        (LaunchEventKind.FrontBottomStop, "The front dampers bottom"),
    ];

    public static void Say(FigureSet figures, Readout readout, List<string> said)
    {
        LaunchEvents events = figures.Events;
        bool any = false;
        foreach ((LaunchEventKind kind, string what) in Stops)
        {
            if (events.CountOf(kind) > 0)
            {
                any = true;
                said.Add(Sentence(events, kind, what, readout));
            }
        }

        if (!any)
        {
            said.Add("No damper reaches a stop.");
        }
    }

    private static string Sentence(LaunchEvents events, LaunchEventKind kind, string what, Readout readout)
    {
        LaunchEvent first = events.First(kind)!.Value, hardest = events.Hardest(kind)!.Value;
        string hard = hardest.Amount is { } force ? $", with {readout.Force.Text(force)} a side on the stop at the hardest" : "";
        return events.CountOf(kind) == 1
            ? $"{what} at {Readout.Time.Text(first.Time)}{hard}."
            : $"{what} {Counted(events.CountOf(kind))}, first at {Readout.Time.Text(first.Time)}{hard}.";
    }

    private static string Counted(int count) => count == 2 ? "twice" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count} times");
}
