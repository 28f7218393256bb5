using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using Xunit;

namespace LaunchSim.Tests.Figures;

public sealed class LaunchEventsTests
{
    private const double PoundFoot = 1.3558179483314004, Rpm = Math.PI / 30;

    [Fact]
    public void RearTopStop_ShortDamper_SaysWhenHowHardAndUntilWhen()
    {
        Car door = DoorCar.WithUpperPivotAt(13);
        Car car = door with { Rear = door.Rear with { DamperTravel = door.Rear.DamperTravel with { Extend = 0.02 } } };
        LaunchSolution solution = LaunchSimulation.Solve(car, DoorCarLaunch.Settings);
        FigureSet f = LaunchFigures.Read(solution, DoorCarLaunch.Settings);
        LaunchEvent stop = f.Events.First(LaunchEventKind.RearTopStop)!.Value;
        solution.At(stop.Time, out Observation touch);
        solution.At(stop.AmountTime!.Value, out Observation hardest);
        Assert.Equal(0, touch.RearTopLeft, 1e-10);
        Assert.Equal(hardest.RearTopForce, stop.Amount!.Value, 1e-6);
        Assert.InRange(stop.AmountTime.Value, stop.Time, stop.Until ?? 1);
        Assert.Equal(stop.Time, f["rear_top_stop_first_s"]);
        Assert.Equal(f.Events.CountOf(LaunchEventKind.RearTopStop), f["rear_top_stop_count"]);
        Assert.Equal(f.Events.Hardest(LaunchEventKind.RearTopStop)!.Value.Amount, f["rear_top_stop_force_n"]);
        Assert.InRange(f["separation_peak_travel_left_m"]!.Value, -0.02, 0);
        Assert.Equal("the rear dampers never bottom", f.Get("rear_bottom_stop_force_n").Reason);
    }

    [Fact]
    public void FrontTireOff_DoorCar_LastsFromLeavingToLanding()
    {
        LaunchSolution solution = LaunchSimulation.Solve(DoorCar.Create(), DoorCarLaunch.Settings);
        FigureSet f = LaunchFigures.Read(solution, DoorCarLaunch.Settings);
        LaunchEvent off = f.Events.First(LaunchEventKind.FrontTireOff)!.Value;
        solution.At(off.Time - 1e-6, out Observation before);
        solution.At(off.Time + 1e-6, out Observation after);
        Assert.True(before.FrontLoad > 0);
        Assert.Equal(0, after.FrontLoad);
        Assert.Equal(off.Until - off.Time, f["front_tire_zero_load_time_s"]);
        Assert.Equal(off.Amount, f["front_tire_highest_clearance_m"]);
    }

    [Fact]
    public void SlipPastPeak_SlipperyTrack_IsCountedFromPeakToPeak()
    {
        LaunchSolution solution = LaunchSimulation.Solve(DoorCar.Create() with { TrackGrip = Table.Constant(0.6) }, DoorCarLaunch.Settings);
        FigureSet f = LaunchFigures.Read(solution, DoorCarLaunch.Settings);
        LaunchEvent slip = f.Events.First(LaunchEventKind.RearSlipPastPeak)!.Value;
        solution.At(slip.Time, out Observation seen);
        Assert.Equal(0.12, seen.RearSlipRatio, 1e-9);
        Assert.Equal(f.Events.TotalTime(LaunchEventKind.RearSlipPastPeak, 1), f["slip_beyond_peak_time_s"]);
        Assert.Equal(0, f["grip_margin_lowest_ratio"]!.Value, 1e-6);
    }

    [Fact]
    public void ClutchAndShift_EngineCar_AreSeen()
    {
        FigureSet f = DoorCarLaunch.Read(EngineCar(0.05), new RunSettings { Duration = 1.8 });
        LaunchEvent shift = f.Events.First(LaunchEventKind.Shift)!.Value, locked = f.Events.First(LaunchEventKind.ClutchLocked)!.Value;
        Assert.Equal(0.05, shift.Until!.Value - shift.Time, 1e-12);
        Assert.Equal(2, shift.Amount);
        Assert.Equal(shift.Time, f["first_shift_s"]);
        Assert.Equal(locked.Time, f["clutch_locks_s"]);
        Assert.Equal(f["axle_torque_largest_nm"]!.Value / 3.7, f["driveshaft_torque_largest_nm"]!.Value, 1e-9);
        Assert.Equal(f.Events.CountOf(LaunchEventKind.Shift), f["shift_count"]);
        Assert.True(f.Events.Zip(f.Events.Skip(1), (a, b) => a.Time <= b.Time).All(inOrder => inOrder));
    }

    [Fact]
    public void Shift_ThatTakesNoTime_IsSeen()
    {
        FigureSet f = DoorCarLaunch.Read(EngineCar(0), new RunSettings { Duration = 1.8 });
        LaunchEvent shift = f.Events.First(LaunchEventKind.Shift)!.Value;
        Assert.Equal(shift.Time, shift.Until);
    }

    private static Car EngineCar(double shiftTime) => DoorCar.Create() with
    {
        Driveline = new EngineDriveline
        {
            Engine = new Engine
            {
                Torque = new Table(new double[] { 2000, 3000, 4500, 6000, 7000 }.Select(n => n * Rpm), new double[] { 480, 600, 680, 650, 560 }.Select(t => t * PoundFoot)),
                Inertia = 0.35,
                LaunchSpeed = 4200 * Rpm,
            },
            Coupling = new Clutch { Capacity = new Table([0, 0.05, 0.6], new double[] { 220, 430, 800 }.Select(t => t * PoundFoot)) },
            Ratios = [2.1, 1.45, 1.0],
            ShiftAt = [5200 * Rpm, 6800 * Rpm],
            ShiftTime = shiftTime,
            FinalDrive = 3.7,
            Efficiency = 0.95,
        },
    };
}
