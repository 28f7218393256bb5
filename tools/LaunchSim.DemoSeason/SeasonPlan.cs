namespace LaunchSim.DemoSeason;

/// <summary>The six passes of the invented season: one thing changed at a time.</summary>
internal static class SeasonPlan
{
    /// <summary>The passes in their order.</summary>
    public static IReadOnlyList<PlannedPass> Passes { get; } =
    [
        new("as-measured", "As measured", "2026-05-09 10:20", [], "left lane, dry", "14 °C, overcast", Logger.Dash, "First pass with the height sensors."),
        new("extension-8", "Rear extension two clicks stiffer", "2026-05-09 11:45", [("rear.damper.extension.set", "8")], "left lane, dry", "16 °C, overcast", Logger.Dash, "Came up more gently."),
        new("hole-1", "Upper bar one hole up", "2026-05-09 14:05", [("rear.damper.extension.set", "8"), ("rear.linkage.upper.body.use", "1")], "right lane, dry", "18 °C, sun", Logger.None, "Logger left in the trailer; video from the wall."),
        new("15-psi", "One psi less", "2026-05-23 10:10", [("rear.damper.extension.set", "8"), ("rear.tire.pressure.set", "15 psi")], "left lane, dry", "17 °C, sun", Logger.Box, "Borrowed logger."),
        new("hole-3", "Upper bar one hole down", "2026-05-23 11:30", [("rear.damper.extension.set", "8"), ("rear.linkage.upper.body.use", "3")], "left lane, dry", "19 °C, sun", Logger.None, "Went up hard; video only."),
        new("hole-3-extension-10", "One hole down, ten clicks", "2026-05-23 13:15", [("rear.damper.extension.set", "10"), ("rear.linkage.upper.body.use", "3")], "left lane, dry", "21 °C, sun", Logger.Dash, "The hit is as hard, the front follows sooner."),
    ];
}
