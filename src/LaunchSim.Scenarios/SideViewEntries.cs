using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios;

/// <summary>
/// What a file says of the side view, as entered: as much of it as could be read, also of a file with errors, so that a
/// drawing can show a mistake that stops everything else.
/// </summary>
public sealed record SideViewEntries
{
    /// <summary>What the set-up is called; empty when that was not read.</summary>
    public string Name { get; init; } = "";

    /// <summary>Whose units most of the values are written in.</summary>
    public UnitSystem UnitSystem { get; init; }

    /// <summary>Wheelbase, m; null when it was not read.</summary>
    public double? Wheelbase { get; init; }

    /// <summary>Scale reading of the front axle, N; null when it was not read.</summary>
    public double? FrontScale { get; init; }

    /// <summary>Scale reading of the rear axle, N; null when it was not read.</summary>
    public double? RearScale { get; init; }

    /// <summary>Height of the whole car's centre of gravity above the floor, m; null when it was not read.</summary>
    public double? CentreOfGravityHeight { get; init; }

    /// <summary>Height of the front wheel centre above the floor, m; null when it was not read.</summary>
    public double? FrontLoadedRadius { get; init; }

    /// <summary>Height of the rear wheel centre above the floor, m; null when it was not read.</summary>
    public double? RearLoadedRadius { get; init; }

    /// <summary>The linkage with the holes in use; null when one of its points was not read.</summary>
    public Linkage? Linkage { get; init; }

    /// <summary>All points that were read, in the order of the file format; of a bracket each hole.</summary>
    public IReadOnlyList<EnteredPoint> Points { get; init; } = [];

    /// <summary>Doubts by path, as in <see cref="Scenario.Doubts"/>.</summary>
    public IReadOnlyDictionary<string, Doubt> Doubts { get; init; } = new Dictionary<string, Doubt>();

    /// <summary>Paths that the side view needs and that are not there or were refused.</summary>
    public IReadOnlyList<string> NotRead { get; init; } = [];
}

/// <summary>A point as entered.</summary>
/// <param name="Path">Where it stands in the file, such as <c>rear.linkage.upper.body</c>; of a bracket the bracket's path.</param>
/// <param name="Hole">The hole's name; empty when the point is no hole.</param>
/// <param name="IsInUse">Whether it is the hole in use; true when the point is no hole.</param>
/// <param name="At">The point.</param>
/// <param name="Text">As it was written, with its unit.</param>
public sealed record EnteredPoint(string Path, string Hole, bool IsInUse, Point At, string Text);
