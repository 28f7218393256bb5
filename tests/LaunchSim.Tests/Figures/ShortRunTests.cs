using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using Xunit;

namespace LaunchSim.Tests.Figures;

/// <summary>Runs that end before a figure's window, or before they begin.</summary>
public sealed class ShortRunTests
{
    [Theory]
    [InlineData(0.0004)]
    [InlineData(0.02)]
    [InlineData(0.05)]
    [InlineData(0.2345)]
    public void Read_ShortRun_GivesWhatWasReached(double duration)
    {
        FigureSet f = DoorCarLaunch.Read(DoorCar.Create(), new RunSettings { Duration = duration, Marks = [1], Rollout = 0.3 });
        Assert.Equal(duration, f["run_end_s"]!.Value, 1e-12);
        Assert.Equal(duration >= 0.1, f["front_rise_at_100ms_m"] is not null);
        Assert.Equal(duration >= 0.2, f["front_rise_at_200ms_m"] is not null);
        Assert.Null(f["front_rise_at_300ms_m"]);
        Assert.Equal("the run ended before", f.Get("front_rise_at_300ms_m").Reason);
        Assert.Equal(duration >= 0.05, f["load_unrest_n"] is not null);
        Assert.InRange(f["hit_time_s"]!.Value, 0, duration);
        Assert.InRange(f["lowest_rear_load_after_hit_time_s"]!.Value, f["hit_time_s"]!.Value, duration);
        Assert.All(f, figure => Assert.Equal(figure.Value is null, figure.Reason is not null));
    }

    [Fact]
    public void Read_RunThatDidNotBegin_GivesTheStaticFigures()
    {
        LaunchSolution solution = LaunchSimulation.Solve(DoorCar.Create(), DoorCarLaunch.Settings, new CancellationToken(canceled: true));
        FigureSet f = LaunchFigures.Read(solution, DoorCarLaunch.Settings);
        Assert.Equal(140.764, f["standing_anti_squat_percent"]!.Value, 1e-3);
        Assert.Null(f["hit_n"]);
        Assert.Equal("the launch did not begin", f.Get("hit_n").Reason);
        Assert.Empty(f.Events);
        Assert.All(f, figure => Assert.Equal(figure.Value is null, figure.Reason is not null));
    }
}
