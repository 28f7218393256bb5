using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>The file <c>season.yaml</c> beside the passes of a season.</summary>
internal static class SeasonKeys
{
    /// <summary>All its keys.</summary>
    public static Section Season { get; } = Rooted(new Section(
        Text("name", "Door car, 2026", "What this season is called", Need.Optional, "the folder's name"),
        Text("notes", "New springs since May.", "Anything worth remembering", Need.Optional, "none"),
        Text("car", "../door-car.yaml", "The car's file for passes to come, seen from this file's folder", Need.Optional, "that of the last pass"),
        Text("fitted", "../door-car-fitted.yaml", "The car as fitted to its passes: it stands beside the prediction in `season trend`", Need.Optional, "no fit is shown")));

    private static Section Rooted(Section section)
    {
        section.Hang("");
        return section;
    }
}
