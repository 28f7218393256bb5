using LaunchSim.Scenarios.Typical.Groups;

namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// The register of what is typical and what has to be measured: one line a group, one line a value in the group. A value
/// is known by its path.
/// </summary>
public static class TypicalRegister
{
    private static readonly RegisterEntry[] Entries =
    [
        .. CarValues.All,
        .. LinkageValues.All,
        .. SpringValues.All,
        .. DamperValues.All,
        .. StopValues.All,
        .. TireValues.Front,
        .. TireValues.Rear,
        .. CarcassValues.All,
        .. PressureValues.All,
        .. WheelieBarValues.All,
        .. TorqueValues.All,
        .. EngineValues.All,
    ];

    private static readonly Dictionary<string, RegisterEntry> ByPath = Entries.ToDictionary(entry => entry.Path, StringComparer.Ordinal);

    /// <summary>Everything in the register, group by group.</summary>
    public static IReadOnlyList<RegisterEntry> All => Entries;

    /// <summary>The entry of a path: a <see cref="TypicalValue"/> or a <see cref="MeasuredValue"/>; null when the register does not know it.</summary>
    /// <param name="path">The path of a number, a row or a point, such as <c>rear.tire.vertical_rate</c>.</param>
    public static RegisterEntry? Find(string path) => ByPath.GetValueOrDefault(path);
}
