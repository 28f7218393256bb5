using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using Xunit;

namespace LaunchSim.Tests.Figures;

public sealed class FigureSetTests(DoorCarLaunch launch) : IClassFixture<DoorCarLaunch>
{
    [Fact]
    public void Read_OtherTraceSample_GivesTheSameBits()
    {
        FigureSet fine = LaunchFigures.Read(launch.Solution, DoorCarLaunch.Settings with { Sample = 1e-4 });
        FigureSet coarse = LaunchFigures.Read(launch.Solution, DoorCarLaunch.Settings with { Sample = 0.03 });
        Assert.Equal(fine.AsEnumerable(), coarse);
        Assert.Equal(fine.Events.AsEnumerable(), coarse.Events);
    }

    [Fact]
    public void Figures_WithoutValue_SayWhy()
    {
        FigureSet figures = launch.Read();
        Assert.All(figures, f => Assert.Equal(f.Value is null, f.Reason is not null));
    }

    [Fact]
    public void Get_UnknownKey_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => launch.Read().Get("rise_lag_ms"));
        Assert.False(launch.Read().TryGet("rise_lag_ms", out Figure? none));
        Assert.Null(none);
    }

    [Fact]
    public void LoadPaths_AtTheHit_SumToItsRise()
    {
        FigureSet f = launch.Read();
        double sum = f["hit_via_links_n"]!.Value + f["hit_via_springs_n"]!.Value + f["hit_via_dampers_n"]!.Value + f["hit_via_other_n"]!.Value;
        Assert.Equal(f["hit_n"]!.Value - f["rear_tire_load_static_n"]!.Value, sum, 1e-8);
    }

    [Fact]
    public void EnergyResidual_DoorCar_IsSmall() => Assert.InRange(launch.Read()["energy_residual_ratio"]!.Value, 0, 1e-8);

    [Fact]
    public void LoadUnrest_DoorCar_AgreesWithItsDefinition()
    {
        double[] load = [.. Trace.Of(launch.Solution, 1e-3).Column("rear_tire_load_n")];
        double squares = 0;
        for (int i = 50; i < load.Length; i++)
        {
            double[] around = load[(i - 50)..Math.Min(load.Length, i + 51)];
            squares += Math.Pow(load[i] - around.Average(), 2);
        }

        Assert.Equal(1001, load.Length);
        Assert.Equal(Math.Sqrt(squares / (load.Length - 50)), launch.Read()["load_unrest_n"]!.Value, 1e-6);
    }

    [Fact]
    public void DamperTimes_DoorCar_FillTheRun()
    {
        FigureSet f = launch.Read();
        foreach (string end in new[] { "front", "rear" })
        {
            double sum = f[$"{end}_damper_opening_time_s"]!.Value + f[$"{end}_damper_closing_time_s"]!.Value + f[$"{end}_damper_still_time_s"]!.Value;
            Assert.Equal(1, sum, 1e-12);
        }
    }

    [Fact]
    public void GapsAndRises_AtTenths_AreTheTrace()
    {
        Trace trace = Trace.Of(launch.Solution, 0.1);
        FigureSet f = launch.Read();
        for (int i = 1; i <= 3; i++)
        {
            Assert.Equal(trace.Column("front_rise_m")[i], f[$"front_rise_at_{i}00ms_m"]!.Value, 1e-15);
            Assert.Equal(trace.Column("rear_rise_m")[i], f[$"rear_rise_at_{i}00ms_m"]!.Value, 1e-15);
            Assert.Equal(-trace.Column("front_travel_m")[i], f[$"front_gap_at_{i}00ms_m"]!.Value, 1e-15);
            Assert.Equal(trace.Column("separation_m")[i], f[$"rear_gap_at_{i}00ms_m"]!.Value, 1e-15);
        }
    }

    [Theory]
    [InlineData(15.4)]
    [InlineData(17.5)]
    public void RiseLag_SquattingCar_HasNoneAndSaysSo(double pivot)
    {
        FigureSet f = DoorCarLaunch.Read(DoorCar.WithUpperPivotAt(pivot));
        foreach (string key in new[] { "rise_lag_s", "rear_rise_t10_s", "rear_rise_t50_s", "rear_rise_t90_s" })
        {
            Assert.Null(f[key]);
            Assert.Contains("a squat", f.Get(key).Reason, StringComparison.Ordinal);
        }

        Assert.NotNull(f["front_rise_t50_s"]);
    }

    [Fact]
    public void Squat_BelowHundredPercent_IsNegativeSeparation()
    {
        FigureSet f = DoorCarLaunch.Read(DoorCar.WithUpperPivotAt(17.5));
        Assert.InRange(f["squat_peak_m"]!.Value, -0.08, -0.005);
        Assert.NotNull(f["squat_peak_time_s"]);
        double travel = 7.5 * 0.0254;
        Assert.InRange(f["squat_peak_travel_left_m"]!.Value, 0, travel);
    }

    [Fact]
    public void Bars_LadderBar_HaveNoForces()
    {
        Car door = DoorCar.Create();
        FigureSet f = DoorCarLaunch.Read(door with { Rear = door.Rear with { Linkage = new LadderBar { Pivot = DoorCar.P(36, 11) } } });
        Assert.Null(f["upper_link_pull_n"]);
        Assert.Equal("a ladder bar has no separate bars", f.Get("lower_link_push_n").Reason);
        Assert.NotNull(f["standing_ladder_bar_climb_rad"]);
        Assert.Null(f["standing_upper_bar_climb_rad"]);
    }

    [Fact]
    public void InstantCentre_LevelBars_IsAtInfinity()
    {
        Car door = DoorCar.Create();
        var level = new FourLink { LowerAxle = DoorCar.P(0, 8), LowerBody = DoorCar.P(20, 8), UpperAxle = DoorCar.P(0, 17), UpperBody = DoorCar.P(20, 17) };
        var chassis = door.Chassis with { Ballast = [] };
        FigureSet f = DoorCarLaunch.Read(door with { Chassis = chassis, Rear = door.Rear with { Linkage = level } });
        foreach (string key in new[] { "standing_instant_centre_ahead_m", "standing_instant_centre_up_m", "standing_neutral_line_up_m" })
        {
            Assert.Null(f[key]);
            Assert.Contains("at infinity", f.Get(key).Reason, StringComparison.Ordinal);
        }

        Assert.Equal(0, f["standing_anti_squat_percent"]!.Value, 1e-6);
    }
}
