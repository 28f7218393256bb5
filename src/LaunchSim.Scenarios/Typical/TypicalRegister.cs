using LaunchSim.Scenarios.Typical.Groups;

namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// The register of what is typical and what has to be measured: one line a group, one line a value in the group. A value
/// is known by its path.
/// </summary>
public static class TypicalRegister
{
    /// <summary>The groups in the order of the file's reference.</summary>
    public static IReadOnlyList<RegisterGroup> Groups { get; } =
    [
        new("The whole car", CarValues.All),
        new("The bars", LinkageValues.All),
        new("Springs and their mounts", SpringValues.All),
        new("Dampers", DamperValues.All),
        new("Damper travel and stops", StopValues.All),
        new("Front tyres", TireValues.Front),
        new("Rear tyres", TireValues.Rear),
        new("Carcass and what spins at the rear", CarcassValues.All),
        new("Tyre pressure", PressureValues.All),
        new("Wheelie bar", WheelieBarValues.All),
        new("Torque at the axle", TorqueValues.All),
        new("Engine, clutch, converter, gears", EngineValues.All),
        new("Track and clock", TrackValues.All),
    ];

    private static readonly Dictionary<string, RegisterEntry> ByPath = Groups.SelectMany(group => group.Entries).ToDictionary(entry => entry.Path, StringComparer.Ordinal);

    /// <summary>Everything in the register, group by group.</summary>
    public static IEnumerable<RegisterEntry> All => Groups.SelectMany(group => group.Entries);

    /// <summary>The entry of a path: a <see cref="TypicalValue"/>, a <see cref="MeasuredValue"/> or a <see cref="SetValue"/>; null when the register does not know it.</summary>
    /// <param name="path">The path of a number, a row or a point, such as <c>rear.tire.vertical_rate</c>.</param>
    public static RegisterEntry? Find(string path) => ByPath.GetValueOrDefault(path);
}

/// <summary>Entries that belong together.</summary>
/// <param name="Title">What they are about, as a heading.</param>
/// <param name="Entries">The entries.</param>
public sealed record RegisterGroup(string Title, IReadOnlyList<RegisterEntry> Entries);
