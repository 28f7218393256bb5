using LaunchSim.Figures;
using LaunchSim.Tests.Cars;
using Xunit;

namespace LaunchSim.Tests.Figures;

/// <summary>
/// The example car against an independent program in absolute coordinates with multipliers. That program finds the place
/// of an extremum and the end of a window to 1e-5 s only, which sets the tolerance of times; its values at extrema are
/// good to nine digits.
/// </summary>
public sealed class DoorCarFigureTests(DoorCarLaunch launch) : IClassFixture<DoorCarLaunch>
{
    private const double TimeTolerance = 2e-5, RelativeTolerance = 1e-7;

    [Theory]
    [InlineData("standing_anti_squat_percent", 140.76424754331993)]
    [InlineData("standing_instant_centre_ahead_m", 0.9106615404392504)]
    [InlineData("standing_instant_centre_up_m", 0.2545246215555644)]
    [InlineData("standing_cg_height_m", 0.5320681745943822)]
    [InlineData("standing_wheelbase_m", 2.679704101298351)]
    [InlineData("rear_tire_load_static_n", 6625.879451855003)]
    [InlineData("front_tire_load_static_n", 6896.714258536889)]
    [InlineData("separation_peak_m", 0.036209465103972605)]
    [InlineData("hit_n", 11155.376076745168)]
    [InlineData("lowest_rear_load_after_hit_n", 8695.343719314542)]
    [InlineData("front_tire_highest_clearance_m", 0.009240662202744498)]
    [InlineData("front_rise_peak_m", 0.12277062066322786)]
    public void Value_DoorCar_AgreesWithIndependentProgram(string key, double expected) =>
        Assert.Equal(expected, launch.Read()[key]!.Value, RelativeTolerance * Math.Abs(expected));

    [Theory]
    [InlineData("front_rise_t10_s", 0.10292547247191719)]
    [InlineData("front_rise_t50_s", 0.21953551833009569)]
    [InlineData("front_rise_t90_s", 0.3273725906844808)]
    [InlineData("rear_rise_t10_s", 0.18751686194131095)]
    [InlineData("rear_rise_t50_s", 0.2667106373457942)]
    [InlineData("rear_rise_t90_s", 0.3660720063119879)]
    [InlineData("rise_lag_s", -0.04717511901569851)]
    [InlineData("front_gap_6_35mm_s", 0.08950138582457942)]
    [InlineData("rear_gap_6_35mm_s", 0.05424060763663971)]
    [InlineData("gap_lag_s", 0.03526077818793971)]
    [InlineData("separation_peak_time_s", 0.8621257772491873)]
    [InlineData("hit_time_s", 0.11221046191198183)]
    [InlineData("lowest_rear_load_after_hit_time_s", 0.4082568833556442)]
    [InlineData("front_tire_zero_load_time_s", 0.12688494449867943)]
    [InlineData("front_tire_lands_s", 0.4635483227495868)]
    [InlineData("front_top_stop_first_s", 0.318460852249911)]
    [InlineData("wheelie_bar_first_s", 0.29714089785997255)]
    public void Time_DoorCar_AgreesWithIndependentProgram(string key, double expected) =>
        Assert.Equal(expected, launch.Read()[key]!.Value, TimeTolerance);

    [Theory]
    [InlineData("squat_peak_m")]
    [InlineData("front_load_lowest_n")]
    [InlineData("slip_beyond_peak_time_s")]
    public void Value_DoorCar_IsZero(string key) => Assert.Equal(0, launch.Read()[key]);

    // The peak lies at the window's end, where the independent program stops 1e-5 s short.
    [Fact]
    public void RearRise_DoorCar_AgreesWithIndependentProgram() =>
        Assert.Equal(0.021408840354806835, launch.Read()["rear_rise_peak_m"]!.Value, 0.1 * 1e-5);

    [Fact]
    public void Events_DoorCar_AgreeWithIndependentProgram()
    {
        LaunchEvents events = launch.Read().Events;
        Assert.Equal(
            [LaunchEventKind.WheelieBar, LaunchEventKind.FrontTopStop, LaunchEventKind.FrontTireOff, LaunchEventKind.WheelieBar],
            events.Select(e => e.Kind));
        Assert.Equal([0.29714089785997255, 0.318460852249911], events.Take(2).Select(e => e.Time), (a, b) => Math.Abs(a - b) < 1e-7);
        Assert.Equal([0.5878371022011695, 0.4952920635118614, 0.4635483227495868], events.Take(3).Select(e => e.Until!.Value), (a, b) => Math.Abs(a - b) < 1e-7);
        Assert.Equal(0.7558064607514917, events[3].Time, 1e-7);
        Assert.Null(events[3].Until);
    }

    /// <summary>
    /// Row 28(e) of the validation table: the upper bar's body pivot lowered step by step. At 15.4 in the rear rises by
    /// less than 2 mm, so that there is no rise lag.
    /// </summary>
    [Theory]
    [InlineData(15.4, 116, null, 10825, 10192, 26)]
    [InlineData(15.0, 128, -72, 10941, 9691, 32)]
    [InlineData(14.6, 141, -47, 11155, 8695, 35)]
    [InlineData(14.2, 153, -29, 11438, 7698, 38)]
    [InlineData(13.8, 165, -13, 11749, 6768, 40)]
    [InlineData(13.4, 176, -4, 12066, 5868, 42)]
    [InlineData(13.0, 188, 1, 12384, 5034, 44)]
    public void PivotLowered_DoorCar_AgreesWithIndependentProgram(
        double pivot, double percent, int? riseLag, double hit, double lowest, double gapLag)
    {
        FigureSet figures = DoorCarLaunch.Read(DoorCar.WithUpperPivotAt(pivot));

        // The table prints whole percents, 176.52 as 176.
        Assert.Equal(percent, figures["standing_anti_squat_percent"]!.Value, 0.6);
        Assert.Equal(hit, figures["hit_n"]!.Value, 0.005 * hit);
        Assert.Equal(lowest, figures["lowest_rear_load_after_hit_n"]!.Value, 0.005 * lowest);
        Assert.Equal(gapLag, 1e3 * figures["gap_lag_s"]!.Value, 3.0);
        Assert.Equal(riseLag is null, figures["rise_lag_s"] is null);
        if (riseLag is { } lag)
        {
            Assert.Equal(lag, 1e3 * figures["rise_lag_s"]!.Value, 3.0);
        }
    }
}
