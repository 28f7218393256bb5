namespace LaunchSim.Studies.Aims;

/// <summary>
/// A ready set of aims. The bands, points and weights are a choice of this project, by what a person sees on a video, with a
/// tape and on scales, and what the trade asks for (common practice, no source).
/// </summary>
/// <param name="Name">Its name in files.</param>
/// <param name="Words">What it is for, as in <c>both ends coming up in step</c>.</param>
/// <param name="Aims">The aims.</param>
public sealed record AimProfile(string Name, string Words, IReadOnlyList<Aim> Aims);

/// <summary>The register of profiles: the default first.</summary>
public static class AimProfiles
{
    private const double Inch = 0.0254;

    /// <summary>All profiles.</summary>
    public static IReadOnlyList<AimProfile> All { get; } =
    [
        new("in-step", "both ends coming up in step",
        [
            Aim("rise_lag", 0, 0, 0.020, 2),
            Aim("separation", 0.25 * Inch, 3 * Inch, 0.25 * Inch, 1),
            Limit("rear_stops", 0, 0.1),
            Aim("rear_load", 1, double.PositiveInfinity, 0.05, 1),
            Aim("load_unrest", double.NegativeInfinity, 0, 0.05, 1),
            Aim("slip_past_peak", double.NegativeInfinity, 0.050, 0.050, 2),
        ]),
        new("stay-down", "the car staying down",
        [
            Aim("separation", -1 * Inch, 0.5 * Inch, 0.25 * Inch, 1),
            Limit("rear_stops", 0, 0.1),
            Aim("rear_load", 1, double.PositiveInfinity, 0.05, 1),
            Aim("load_unrest", double.NegativeInfinity, 0, 0.05, 2),
            Aim("slip_past_peak", double.NegativeInfinity, 0.050, 0.050, 2),
            Aim("front_height", double.NegativeInfinity, 3 * Inch, 0.5 * Inch, 2),
        ]),
    ];

    /// <summary>A profile by its name, or null.</summary>
    /// <param name="name">Its name in files.</param>
    public static AimProfile? Find(string name) => All.FirstOrDefault(profile => profile.Name == name);

    private static Aim Aim(string name, double from, double to, double point, double weight) =>
        new() { Subject = AimSubjects.Find(name), From = from, To = to, Point = point, Weight = weight };

    private static Aim Limit(string name, double to, double point) =>
        new() { Subject = AimSubjects.Find(name), To = to, Point = point, IsLimit = true, Weight = 0 };
}
