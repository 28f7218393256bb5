using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>The study file: what is varied, on which scenario, and what is wanted.</summary>
internal static class StudyKeys
{
    /// <summary>All its keys.</summary>
    public static Section Study { get; } = Rooted(new Section(
        Text("name", "Where the upper bar goes", "What this study is called", Need.Optional, "the file's name"),
        Text("notes", "Before the next meeting.", "Anything worth remembering", Need.Optional, "none"),
        Text("scenario", "door-car.yaml", "The scenario file that is varied, seen from this file's folder", Need.Geometry, null),
        new SchemaKey("vary", new ChangeKind(), Need.Optional, "Paths of the scenario, each with the values that it takes", "", "", "the scenario's choices"),
        Part("aims", "What is wanted of the launch", AimKeys.Aims(), Need.Optional, "the scenario's"),
        Optional("budget", QuantityKind.Number, Limits.Within(1, 1e9, "1 to 1,000,000,000"), "20000", "20000", "How many launches the study may take", "Some thousand a second")));

    private static Section Rooted(Section section)
    {
        section.Hang("");
        return section;
    }
}
