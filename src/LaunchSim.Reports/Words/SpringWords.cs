using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Springs that go loose; nothing when none does.</summary>
internal static class SpringWords
{
    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        foreach ((LaunchEventKind kind, string which) in new[] { (LaunchEventKind.RearSpringLoose, "rear"), (LaunchEventKind.FrontSpringLoose, "front") })
        {
            if (figures.Events.First(kind) is { } loose)
            {
                said.Add(new($"spring.{which}_loose", $"The {which} springs go loose at {Readout.Time.Text(loose.Time)}: they are at their free length and push no more."));
            }
        }
    }
}
