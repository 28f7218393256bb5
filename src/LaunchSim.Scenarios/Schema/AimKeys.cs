using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of what a person wants of the launch.</summary>
internal static class AimKeys
{
    /// <summary>The aims by their names, in the order of tables.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Each().Select(key => key.Name)];

    public static Section Aims() => new(
    [
        Word("profile", "The ready set of aims to begin from: both ends coming up in step, or the car staying down", Need.Optional, "in-step", "in-step", "stay-down"),
        .. Each(),
    ]);

    private static SchemaKey[] Each() =>
    [
        Aim("rise_lag", "Front and rear come up together",
            Optional("near", QuantityKind.Time, Limits.Any, "0 ms", "the profile's", "The rise lag that is wanted; positive when the front is late", "0 for both ends in step"),
            Optional("within", QuantityKind.Time, Limits.Positive, "20 ms", "the profile's", "How much off it counts one point, or as a limit how much is allowed", "A frame of a 50 Hz video is 20 ms")),
        Aim("separation", "The largest separation of body and rear axle lies in a band",
            Optional("from", QuantityKind.Length, Limits.Any, "1/2 in", "the profile's", "The least that is wanted", "What the damper's travel and the driver like"),
            Optional("to", QuantityKind.Length, Limits.Any, "3 in", "the profile's", "The most that is wanted", "Less than the damper's travel"),
            Point(QuantityKind.Length, "1/4 in")),
        Aim("rear_stops", "The rear dampers reach neither of their stops"),
        Aim("rear_load", "The rear tyres stay loaded after the hit",
            Optional("least", QuantityKind.Number, Limits.NotNegative, "1.0", "the profile's", "The lowest rear tyre load after the hit that is wanted, as a share of the standing load", "1 is the standing load"),
            Point(QuantityKind.Number, "0.05")),
        Aim("load_unrest", "The rear tyres are loaded evenly",
            Optional("most", QuantityKind.Number, Limits.NotNegative, "0.0", "the profile's", "The most load unrest that is wanted, as a share of the standing load", "0 asks for as little as can be had"),
            Point(QuantityKind.Number, "0.05")),
        Aim("slip_past_peak", "The rear tyres do not spin",
            Optional("most", QuantityKind.Time, Limits.NotNegative, "50 ms", "the profile's", "How long the slip may be past the tyre's peak", "0 for never"),
            Point(QuantityKind.Time, "50 ms")),
        Aim("front_height", "The front stays low",
            Optional("most", QuantityKind.Length, Limits.NotNegative, "6 in", "the profile's", "The most that the front may rise", "Seen on video beside the front wheel's arch"),
            Point(QuantityKind.Length, "1 in")),
    ];

    private static SchemaKey Aim(string name, string what, params SchemaKey[] own) => Part(name, what, new Section(
    [
        .. own,
        Optional("weight", QuantityKind.Number, Limits.NotNegative, "1", "the profile's", "How much a point of this aim counts; 0 leaves the aim out", "1 as a start, 2 for what matters twice as much"),
        Word("limit", "Whether it is a limit: what is beyond it is not weighed, it comes last", Need.Optional, "no", "yes", "no"),
    ]), Need.Optional, "the profile's");

    private static SchemaKey Point(QuantityKind kind, string example) =>
        Optional("point", kind, Limits.Positive, example, "the profile's", "How much beyond counts one point", "What you would notice");
}
