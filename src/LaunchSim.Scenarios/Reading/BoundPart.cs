using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Reading;

/// <summary>What one section gave when it was bound without a finding.</summary>
internal sealed record BoundPart(
    Section Section,
    string Path,
    ReadPurpose Purpose,
    Bound[] Values,
    KeyValuePair<string, Place>[] Sections,
    KeyValuePair<string, int>[] Lists,
    string[] Missing);

/// <summary>How much had been bound at some moment.</summary>
internal readonly record struct BoundMark(int Values, int Sections, int Lists, int Missing);
