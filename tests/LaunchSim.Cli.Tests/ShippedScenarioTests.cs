using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Cli.Tests;

/// <summary>Every shipped scenario runs, closes its energy, looks like a car, and does what its notes say it teaches.</summary>
public sealed class ShippedScenarioTests
{
    private const double Inch = 0.0254, Pound = 4.4482216152605, Foot = 0.3048;

    private static readonly string[] ScenarioNames =
        [.. Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)!).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Names { get; } = [.. ScenarioNames];

    [Theory]
    [MemberData(nameof(Names))]
    public void ShippedScenario_Read_HasNoFindingsAndSaysWhatItTeaches(string name)
    {
        ReadResult read = new ScenarioReader().Read(PathOf(name));
        Assert.Empty(read.Errors);
        Assert.Empty(read.Warnings);
        Assert.NotEmpty(read.Scenario!.Notes);
        Assert.NotEmpty(read.Scenario.Name);
        // Editors find the schema by the first line.
        Assert.Equal("# yaml-language-server: $schema=../docs/scenario.schema.json", File.ReadLines(PathOf(name)).First());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ShippedScenario_Run_CompletesWithItsEnergyClosed(string name)
    {
        Launched launch = Launch(name);
        Assert.True(launch.Solution.End.Completed, $"{launch.Solution.End.Status} at {launch.Solution.End.Time} s");
        // The default tolerance: a file that needs a tighter one would hide a missing term.
        Assert.Equal(1e-8, launch.Scenario.Run.Tolerance);
        Assert.InRange(launch["energy_residual_ratio"], 0, 1e-8);
    }

    /// <summary>
    /// Bounds of what a drag car shows, wide: a shipped example with absurd numbers would teach that absurd numbers are
    /// fine. 60 ft in 1.1 to 1.8 s by the beam (common practice, no source); slip speeds below the car's own top speed.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void ShippedScenario_Run_LooksLikeACar(string name)
    {
        Launched launch = Launch(name);
        FigureSet figures = launch.Figures;
        Assert.InRange(launch["front_rise_peak_m"], 0.02, 0.25);
        Assert.InRange(launch["rear_rise_peak_m"], -0.05, 0.10);
        Assert.InRange(launch["separation_peak_m"], 0, 0.10);
        Assert.InRange(launch["squat_peak_m"], -0.06, 0);
        Assert.InRange(launch["pitch_nose_up_largest_rad"], 0.005, 0.15);
        Assert.InRange(launch["acceleration_largest_mps2"] / 9.80665, 0.8, 2.5);
        Assert.InRange(launch["hit_n"] / launch["rear_tire_load_static_n"], 1.2, 2.2);
        Assert.InRange(launch["slip_speed_largest_mps"], 0, 20);
        Assert.Equal(0, launch["rear_tire_zero_load_time_s"]);
        for (int mark = 1; mark <= launch.Scenario.Run.Marks.Count; mark++)
        {
            bool sixty = Math.Abs(launch[$"mark_{mark}_distance_m"] - (60 * Foot)) < 1e-9;
            if (sixty && figures[$"mark_{mark}_beam_time_s"] is { } time)
            {
                Assert.InRange(time, 1.1, 1.8);
            }
        }
    }

    [Fact]
    public void ShippedScenarios_Together_UseBothSystemsOfUnitsAndAllKindsOfParts()
    {
        Scenario[] all = [.. ScenarioNames.Select(name => Read(name))];
        Assert.True(all.Count(s => s.UnitSystem == UnitSystem.Si) >= 3);
        Assert.True(all.Count(s => s.UnitSystem == UnitSystem.Shop) >= 3);
        Assert.Contains(all, s => s.Car!.Rear.Linkage is LadderBar);
        Assert.Contains(all, s => s.Car!.Driveline is EngineDriveline { Coupling: Clutch });
        Assert.Contains(all, s => s.Car!.Driveline is EngineDriveline { Coupling: Converter });
        Assert.Contains(all, s => s.Car!.TrackGrip.Count > 1);
        Assert.Contains(all, s => s.Doubts.Count > 0);
        Assert.Contains(all, s => s.Car!.Rear.Tire.Pressure is { } p && p.Set != p.Measured);
    }

    [Fact]
    public void HoleLower_AgainstTheDoorCar_HitsHarderUnloadsMoreAndSpins()
    {
        Launched door = Launch("door-car"), lower = Launch("door-car-hole-lower");
        Assert.InRange(door["standing_anti_squat_percent"], 140, 142);
        Assert.InRange(lower["standing_anti_squat_percent"], 164, 166);
        Assert.True(lower["hit_n"] > door["hit_n"] + (100 * Pound));
        Assert.True(lower["lowest_rear_load_after_hit_n"] < door["lowest_rear_load_after_hit_n"] - (300 * Pound));
        Assert.True(Math.Abs(lower["rise_lag_s"]) < Math.Abs(door["rise_lag_s"]));
        Assert.InRange(lower["slip_beyond_peak_first_s"], 0.3, 0.4);
        Assert.Null(door.Figures["slip_beyond_peak_first_s"]);
    }

    [Fact]
    public void HoleLowerHeld_WithStiffExtension_Holds()
    {
        Launched door = Launch("door-car"), spins = Launch("door-car-hole-lower"), held = Launch("door-car-hole-lower-held");
        Assert.Equal(spins["standing_anti_squat_percent"], held["standing_anti_squat_percent"], 12);
        Assert.Null(held.Figures["slip_beyond_peak_first_s"]);
        Assert.InRange(held["grip_margin_lowest_ratio"], 0.02, door["grip_margin_lowest_ratio"]);
    }

    [Fact]
    public void Dampers_SoftThroughStiff_CalmTheLoadAndHoldTheRearDown()
    {
        Launched soft = Launch("door-car-dampers-soft"), middle = Launch("door-car"), stiff = Launch("door-car-dampers-stiff");
        Falls("rear_rise_peak_m");
        Falls("load_unrest_n");
        Falls("rear_gap_at_200ms_m");
        Assert.True(soft["lowest_rear_load_after_hit_n"] < middle["lowest_rear_load_after_hit_n"]);
        Assert.True(middle["lowest_rear_load_after_hit_n"] < stiff["lowest_rear_load_after_hit_n"]);
        Assert.True(soft["hit_time_s"] < middle["hit_time_s"] && middle["hit_time_s"] < stiff["hit_time_s"]);
        Assert.InRange(soft["rise_lag_s"], -0.005, 0.005);

        void Falls(string key) =>
            Assert.True(soft[key] > middle[key] && middle[key] > stiff[key], $"{key}: {soft[key]}, {middle[key]}, {stiff[key]}");
    }

    [Fact]
    public void RearRaised_ByHalfAnInch_MovesThePercentAndTheBarTouchesEarlier()
    {
        Launched door = Launch("door-car"), raised = Launch("door-car-rear-raised");
        Assert.InRange(raised["standing_anti_squat_percent"] - door["standing_anti_squat_percent"], 1, 4);
        Assert.True(raised["standing_lower_bar_climb_rad"] > door["standing_lower_bar_climb_rad"]);
        Assert.True(raised["wheelie_bar_first_s"] < door["wheelie_bar_first_s"] - 0.02);
        Assert.True(raised["wheelie_bar_force_n"] > 1.4 * door["wheelie_bar_force_n"]);
    }

    [Fact]
    public void TopsOut_AgainstTheSameWithTravel_TakesTheLoadFromTheTires()
    {
        Launched travel = Launch("door-car-dampers-soft"), tops = Launch("door-car-tops-out");
        Assert.Equal(0, travel.Figures.Events.CountOf(LaunchEventKind.RearTopStop));
        Assert.Equal(3, tops.Figures.Events.CountOf(LaunchEventKind.RearTopStop));
        Assert.InRange(tops["rear_top_stop_first_s"], 0.07, 0.10);
        Assert.InRange(tops["separation_peak_m"], 0.7 * Inch, 0.9 * Inch);

        // Between 0.2 and 0.3 s, when the front comes up, the topped-out dampers pull the tyres' load down.
        tops.Solution.At(0.24, out Observation inStop);
        travel.Solution.At(0.24, out Observation free);
        Assert.True(inStop.LoadViaDampers < -300 * Pound, $"{inStop.LoadViaDampers} N");
        Assert.True(inStop.RearLoad < free.RearLoad - (250 * Pound), $"{inStop.RearLoad} against {free.RearLoad} N");
    }

    [Fact]
    public void TrackFallsOff_FromThirtyFeet_SlipsThereAndNotBefore()
    {
        Launched door = Launch("door-car"), track = Launch("door-car-track-falls-off");
        LaunchEvent slip = track.Figures.Events.First(LaunchEventKind.RearSlipPastPeak)!.Value;
        track.Solution.At(slip.Time, out Observation there);
        Assert.InRange(there.RearWheelPlace / Foot, 30, 40);
        Assert.Equal(1, track.Figures.Events.CountOf(LaunchEventKind.RearSlipPastPeak));
        Assert.NotNull(slip.Until);
        foreach (string same in (ReadOnlySpan<string>)["hit_n", "rise_lag_s", "front_rise_peak_m", "rear_rise_peak_m"])
        {
            // The table's segments make other steps: alike to the tolerance, not to the bit.
            Assert.InRange(track[same] / door[same], 1 - 1e-7, 1 + 1e-7);
        }
    }

    [Fact]
    public void LadderBar_ThroughItsHoles_KeepsTheLengthAndStraddlesOneHundredPercent()
    {
        (string Hole, double From, double To)[] holes = [("bottom", 70, 90), ("middle", 97, 107), ("top", 115, 135)];
        foreach ((string hole, double from, double to) in holes)
        {
            Scenario scenario = Read("ladder-bar", ("rear.linkage.pivot.use", hole));
            StaticLine line = StandingCar.Find(scenario.Car!).Line;
            Assert.InRange(line.Percent, from, to);
            // The pivot's own distance, but for the pressure that turned the standing car a hair.
            Assert.Equal(34 * Inch, line.InstantCentreAhead, 3);
        }

        Launched launch = Launch("ladder-bar");
        Assert.Null(launch.Figures["upper_link_pull_n"]);
        Assert.True(launch["separation_peak_m"] > Inch);
    }

    [Fact]
    public void SixtyPercent_Launched_SquatsSlowlyAndOnce()
    {
        Launched launch = Launch("sixty-percent");
        Assert.InRange(launch["standing_anti_squat_percent"], 55, 65);
        Assert.InRange(launch["squat_peak_m"], -0.03, -0.01);
        Assert.True(launch["separation_peak_m"] < 0.002);
        Assert.True(launch["squat_peak_time_s"] > 1.5);
        Assert.Equal("the rear end rose less than 2 mm in the first 0.4 s: a squat", launch.Figures.Get("rise_lag_s").Reason);
    }

    [Fact]
    public void ClutchCar_Launched_SlipsLocksBeforeSixtyFeetAndShiftsBehindIt()
    {
        Launched launch = Launch("clutch-car");
        double sixty = launch["mark_1_time_s"];
        Assert.InRange(launch["clutch_locks_s"], 1.2, sixty);
        Assert.True(launch["first_shift_s"] > sixty);
        Assert.Equal(1, launch["shift_count"]);

        // Locking ends what the clutch alone decides: the torque falls to what the engine makes.
        launch.Solution.At(launch["clutch_locks_s"] - 0.01, out Observation slipping);
        launch.Solution.At(launch["clutch_locks_s"] + 0.2, out Observation locked);
        Assert.True(locked.AxleTorque < 0.9 * slipping.AxleTorque);
    }

    [Fact]
    public void ConverterCar_Launched_PullsAtOnceFadesAndShifts()
    {
        Launched launch = Launch("converter-car");
        launch.Solution.At(0, out Observation release);
        launch.Solution.At(launch["first_shift_s"] - 0.01, out Observation beforeShift);
        launch.Solution.At(launch["first_shift_s"] + 0.04, out Observation inShift);
        Assert.True(release.AxleTorque > 3000);
        Assert.True(beforeShift.AxleTorque < 0.6 * 7000 && launch["axle_torque_largest_nm"] > 7000);
        Assert.Equal(0, inShift.AxleTorque);
        Assert.True(inShift.RearLoad < beforeShift.RearLoad);
        Assert.Equal(1, launch["shift_count"]);
        Assert.True(launch["first_shift_s"] > launch["mark_1_time_s"]);
    }

    [Fact]
    public void Wheelstand_Launched_StandsOnItsBar()
    {
        Launched launch = Launch("wheelstand");
        Assert.InRange(launch["front_tire_leaves_s"], 0.2, 0.3);
        Assert.True(launch["wheelie_bar_first_s"] < launch["front_tire_leaves_s"]);
        Assert.True(launch["wheelie_bar_force_n"] > 2000);
        Assert.True(launch["front_tire_zero_load_time_s"] > 0.5 * launch["run_end_s"]);
        Assert.True(launch["hit_n"] - launch["lowest_rear_load_after_hit_n"] > 4500);
    }

    private static string PathOf(string name) => Path.Combine(Files.Root, "scenarios", name + ".yaml");

    private static Scenario Read(string name, params (string Path, string Value)[] changes)
    {
        ReadResult read = new ScenarioReader().Read(PathOf(name), changes);
        Assert.Empty(read.Errors);
        return read.Scenario!;
    }

    private static Launched Launch(string name)
    {
        Scenario scenario = Read(name);
        LaunchSolution solution = LaunchSimulation.Solve(scenario.Car!, scenario.Run);
        return new Launched(scenario, solution, LaunchFigures.Read(solution, scenario.Run));
    }

    private sealed record Launched(Scenario Scenario, LaunchSolution Solution, FigureSet Figures)
    {
        public double this[string key] => Figures[key] ?? throw new InvalidOperationException($"{key}: {Figures.Get(key).Reason}");
    }
}
