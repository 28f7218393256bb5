using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Short words to declare keys with.</summary>
internal static class Keys
{
    public static SchemaKey Number(string name, QuantityKind kind, Limits range, string example, string what, string measure, Need need = Need.Run) =>
        new(name, new NumberKind(kind, range), need, what, measure, example, null);

    public static SchemaKey Optional(string name, QuantityKind kind, Limits range, string example, string leftOut, string what, string measure) =>
        new(name, new NumberKind(kind, range), Need.Optional, what, measure, example, leftOut);

    public static SchemaKey Point(string name, string example, string what, string measure, bool holes = true, Need need = Need.Run, string? leftOut = null) =>
        new(name, new PointKind(holes), need, what, measure, example, leftOut);

    public static SchemaKey Row(string name, QuantityKind kind, Limits range, string example, string what, string measure, bool rising = false, string? against = null, Need need = Need.Run, string? leftOut = null, int least = 1) =>
        new(name, new RowKind(kind, range, rising, against, least), need, what, measure, example, leftOut);

    public static SchemaKey Text(string name, string example, string what, Need need, string? leftOut) =>
        new(name, new TextKind(), need, what, "", example, leftOut);

    public static SchemaKey Word(string name, string what, Need need, string? leftOut, params string[] words) =>
        new(name, new WordKind(words), need, what, "", words[0], leftOut);

    public static SchemaKey Moment(string name, string example, string what, string measure, bool never) =>
        new(name, new MomentKind(never), Need.Optional, what, measure, example, "not seen");

    public static SchemaKey Date(string name, string example, string what, string? leftOut) =>
        new(name, new DateKind(), leftOut is null ? Need.Geometry : Need.Optional, what, "", example, leftOut);

    public static SchemaKey Part(string name, string what, Section section, Need need = Need.Run, string? leftOut = null) =>
        new(name, new SectionKind(section), need, what, "", "", leftOut);
}
