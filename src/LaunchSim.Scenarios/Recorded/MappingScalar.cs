using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Texts of a log as a mapping file holds them.</summary>
public static class MappingScalar
{
    /// <summary>A text as a YAML scalar on one line: reads back as the same text.</summary>
    /// <param name="text">The text, such as a column's name.</param>
    public static string Of(string text) => YamlScalar.Of(text);
}
