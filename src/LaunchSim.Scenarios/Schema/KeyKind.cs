using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Schema;

/// <summary>What stands after a key's colon.</summary>
internal abstract record KeyKind;

/// <summary>One number of a kind.</summary>
internal sealed record NumberKind(QuantityKind Quantity, Limits Limits) : KeyKind;

/// <summary>A point, ahead and up; where <paramref name="Holes"/>, a bracket with holes may stand in its place.</summary>
internal sealed record PointKind(bool Holes) : KeyKind;

/// <summary>
/// Several numbers: a table's first row when <paramref name="Rising"/>, else one for each number of <paramref name="Against"/>, or a
/// plain list. Where <paramref name="Doubted"/>, each number may have its own ±.
/// </summary>
internal sealed record RowKind(QuantityKind Quantity, Limits Limits, bool Rising = false, string? Against = null, int Least = 1, bool Doubted = false) : KeyKind;

/// <summary>A damper's force rows by click, each against the row of speeds.</summary>
internal sealed record ClicksKind(QuantityKind Quantity, Limits Limits, string Against) : KeyKind;

/// <summary>Free text.</summary>
internal sealed record TextKind : KeyKind;

/// <summary>When something was seen: a time, a frame of a video, a bound, or that it never was where <paramref name="Never"/>.</summary>
internal sealed record MomentKind(bool Never) : KeyKind;

/// <summary>A day, with the time of day or without.</summary>
internal sealed record DateKind : KeyKind;

/// <summary>One of a few words.</summary>
internal sealed record WordKind(IReadOnlyList<string> Words) : KeyKind;

/// <summary>A section with keys of its own.</summary>
internal sealed record SectionKind(Section Section) : KeyKind;

/// <summary>A list of sections.</summary>
internal sealed record ListKind(Section Item) : KeyKind;

/// <summary>Paths with the values they are changed to.</summary>
internal sealed record ChangeKind : KeyKind;

/// <summary>Paths with what may be chosen there.</summary>
internal sealed record ChoicesKind : KeyKind;
