using LaunchSim.Figures;
using LaunchSim.Launch;

namespace LaunchSim.Scenarios.Tests;

/// <summary>Chosen figures of the repository's scenarios are those of the whole reading, to the bit.</summary>
public sealed class ChosenFiguresTests
{
    private static readonly string[] Keys =
    [
        "standing_anti_squat_percent", "rear_tire_load_static_n", "rise_lag_s", "front_rise_peak_m", "rear_rise_peak_m", "gap_lag_s",
        "separation_peak_m", "separation_peak_travel_left_m", "squat_peak_m", "hit_n", "hit_time_s", "lowest_rear_load_after_hit_n",
        "load_unrest_n", "grip_margin_lowest_ratio", "slip_beyond_peak_time_s", "front_tire_leaves_s",
        "front_top_stop_first_s", "front_top_stop_force_n", "front_bottom_stop_first_s", "front_bottom_stop_force_n",
        "rear_top_stop_first_s", "rear_top_stop_force_n", "rear_bottom_stop_first_s", "rear_bottom_stop_force_n",
        "acceleration_largest_mps2", "pitch_nose_up_largest_rad", "run_end_s",
    ];

    public static TheoryData<string> Scenarios => [.. Folder("scenarios"), .. Folder("tests/LaunchSim.Cli.Tests/Scenarios")];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Read_Scenario_GivesWhatTheWholeReadingGives(string file)
    {
        Scenario scenario = StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(Files.Root, file)).Scenario!;
        string[] keys = [.. Keys, .. Enumerable.Range(1, scenario.Run.Marks.Count).Select(mark => $"mark_{mark}_time_s")];
        using var reader = new FigureReader(FigureSelection.Of(scenario.Run.Marks.Count, keys));
        var values = new double[keys.Length];
        foreach (double tolerance in new[] { 1e-6, 1e-8 })
        {
            LaunchSolution solution = LaunchRunner.Create(StandingCar.Find(scenario.Car!), tolerance).Solve(scenario.Run);
            reader.Read(solution, scenario.Run, values);
            FigureSet whole = LaunchFigures.Read(solution, scenario.Run);
            for (int i = 0; i < keys.Length; i++)
            {
                Assert.Equal(whole[keys[i]] ?? double.NaN, values[i]);
                Assert.Equal(whole.Get(keys[i]).Reason, reader.Reason(i));
            }
        }
    }

    private static IEnumerable<string> Folder(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Files.Root, folder), "*.yaml").Where(IsWhole).Order(StringComparer.Ordinal).Select(file => Path.GetRelativePath(Files.Root, file));

    /// <summary>Not a car that is measured in part, which can be drawn and not launched.</summary>
    private static bool IsWhole(string file) => Path.GetFileName(file) != "part.yaml";
}
