using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using Xunit;

namespace LaunchSim.Tests.Figures;

public sealed class MarkFigureTests
{
    [Fact]
    public void Mark_Reached_IsThePlaceOfTheRearWheel()
    {
        var settings = new RunSettings { Marks = [1, 3], Rollout = 0.3048 };
        LaunchSolution solution = LaunchSimulation.Solve(DoorCar.Create(), settings);
        FigureSet f = LaunchFigures.Read(solution, settings);
        for (int mark = 1; mark <= 2; mark++)
        {
            double time = f[$"mark_{mark}_time_s"]!.Value;
            solution.At(time, out Observation seen);
            Assert.Equal(settings.Marks[mark - 1], seen.RearWheelPlace, 1e-10);
            Assert.Equal(seen.Speed, f[$"mark_{mark}_speed_mps"]!.Value, 1e-12);
            Assert.Equal(time - f["rollout_time_s"]!.Value, f[$"mark_{mark}_beam_time_s"]!.Value, 1e-15);
            Assert.Equal(settings.Marks[mark - 1], f[$"mark_{mark}_distance_m"]);
        }

        solution.At(f["rollout_time_s"]!.Value, out Observation rolled);
        Assert.Equal(0.3048, rolled.RearWheelPlace, 1e-10);
    }

    [Fact]
    public void Mark_NotReached_HasNoTimeAndSaysSo()
    {
        FigureSet f = DoorCarLaunch.Read(DoorCar.Create(), DoorCarLaunch.Settings);
        Assert.Equal(18.288, f["mark_2_distance_m"]);
        foreach (string part in new[] { "time_s", "beam_time_s", "speed_mps" })
        {
            Assert.Null(f[$"mark_2_{part}"]);
            Assert.Equal("not reached in this run", f.Get($"mark_2_{part}").Reason);
        }
    }

    [Fact]
    public void BeamTime_WithoutRollout_IsTheTimeFromRelease()
    {
        FigureSet f = DoorCarLaunch.Read(DoorCar.Create(), new RunSettings { Marks = [1] });
        Assert.Equal(0, f["rollout_time_s"]);
        Assert.Equal(f["mark_1_time_s"], f["mark_1_beam_time_s"]);
    }

    [Fact]
    public void BeamTime_MarkWithinRollout_HasNone()
    {
        FigureSet f = DoorCarLaunch.Read(DoorCar.Create(), new RunSettings { Duration = 0.5, Marks = [0.1], Rollout = 0.3 });
        Assert.NotNull(f["mark_1_time_s"]);
        Assert.Equal("the mark lies within the rollout", f.Get("mark_1_beam_time_s").Reason);
    }
}
