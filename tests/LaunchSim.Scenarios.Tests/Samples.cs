namespace LaunchSim.Scenarios.Tests;

internal static class Samples
{
    public const string Part = """
        car:
          wheelbase: 105.5 in
          scales: {front: 1560 lb, rear: 1440 lb}
          cg_height: 21 ±1 in
        rear:
          linkage:
            type: four-link
            lower: {axle: 1.0 7.6 in, body: 21.0 9.0 in}
            upper: {axle: 2.5 17.0 in, body: {holes: {a: 14.0 15.4 in, b: 14.0 14.6 in}, use: b}}
        """;

    public const string EngineClutch = """
        driveline:
          type: engine
          engine: {speed: 2000 3000 4500 6000 7000 rpm, torque: 480 600 680 650 560 lb-ft, inertia: 0.35 kg·m², launch_speed: 4200 rpm}
          clutch: {time: 0 0.05 0.6 s, capacity: 220 430 800 lb-ft}
          gears: {ratios: 2.10 1.45 1.0, shift_at: 6800 rpm, shift_time: 0.05 s}
          final_drive: 3.70
          efficiency: 0.95

        """;

    public const string EngineConverter = """
        driveline:
          type: engine
          engine: {speed: 2000 3000 4500 6000 7000 rpm, torque: 480 600 680 650 560 lb-ft, inertia: 0.35 kg·m², launch_speed: 4200 rpm}
          converter: {speed_ratio: 0 0.4 0.7 0.85 0.95, capacity_factor: 190 196 218 265 410 rpm/√(lb-ft), torque_ratio: 2.0 1.55 1.2 1.0 1.0}
          gears: {ratios: 2.10 1.45 1.0, shift_at: 6800 6500 rpm, shift_time: 0.05 s}
          final_drive: 3.70
          power: {time: 0 0.3 s, share: 0.9 1.0 ±5 %}

        """;

    /// <summary>The door car with another driveline.</summary>
    public static string WithDriveline(string driveline)
    {
        string text = Files.DoorCarText;
        int from = text.IndexOf("driveline:", StringComparison.Ordinal);
        int to = text.IndexOf("track:", StringComparison.Ordinal);
        return text[..from] + driveline + text[to..];
    }

    public static Scenario Read(string text)
    {
        ReadResult result = new ScenarioReader().ReadText(text, "x.yaml");
        Assert.Empty(result.Errors);
        return result.Scenario!;
    }
}
