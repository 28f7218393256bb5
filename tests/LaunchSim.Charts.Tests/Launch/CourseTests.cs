using LaunchSim.Charts.Launch;
using LaunchSim.Dynamics;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Tests.Launch;

public class CourseTests
{
    public static TheoryData<string> Names => [.. Launches.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Course_AnyLaunch_IsDenseFromReleaseToEnd(string name)
    {
        LaunchView view = Launches.Of(name);
        Observation[] seen = view.Course.Seen.ToArray();

        Assert.Equal(0, seen[0].Time);
        Assert.Equal(view.Duration, seen[^1].Time);
        for (int i = 1; i < seen.Length; i++)
        {
            Assert.InRange(seen[i].Time - seen[i - 1].Time, 0, 1e-3 + 1e-12);
        }
    }

    [Fact]
    public void Course_Shift_HasBothValuesAtOneInstant()
    {
        LaunchView view = Launches.Of("clutch-car");
        double shift = view["first_shift_s"]!.Value;
        Observation[] there = [.. view.Course.Seen.ToArray().Where(one => Math.Abs(one.Time - shift) < 1e-9)];

        Assert.Contains(there, one => one.AxleTorque > 1000);
        Assert.Contains(there, one => one.AxleTorque == 0);
        Assert.Equal(there[0].Time, there[^1].Time);
    }

    [Fact]
    public void Against_ValueWithoutMeaning_IsNotANumber()
    {
        LaunchView view = Launches.Of("ladder-bar");

        Assert.All(view.Course.Against((in Observation o) => o.UpperLinkForce, view.Readout.Force), point => Assert.True(double.IsNaN(point.Y)));
    }

    /// <summary>What is stacked up less what is stacked down is the tyre's load: the paths sum to it exactly (docs/model.md).</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Stack_AnyLaunch_SumsToTheLoad(string name)
    {
        LaunchView view = Launches.Of(name);
        double standing = view.Run.Solution.Car.Standing.RearLoad;
        (double[] Upper, double[] Lower)[] edges = LoadPathChart.Stack(view.Course, standing);
        for (int i = 0; i < view.Course.Seen.Length; i++)
        {
            for (int path = 1; path < edges.Length; path++)
            {
                Assert.True(edges[path].Upper[i] >= edges[path - 1].Upper[i] && edges[path].Lower[i] <= edges[path - 1].Lower[i]);
                Assert.True(edges[path].Upper[i] == edges[path - 1].Upper[i] || edges[path].Lower[i] == edges[path - 1].Lower[i]);
            }

            Assert.Equal(view.Course.Seen[i].RearLoad, edges[^1].Upper[i] + edges[^1].Lower[i] - standing, 1e-6 * standing);
        }
    }

    /// <summary>A locked clutch turns engine and gearbox as one: the input speed that is drawn has to lie on the engine's.</summary>
    [Fact]
    public void InputSpeed_ClutchLocked_IsTheEngines()
    {
        LaunchView view = Launches.Of("clutch-car");
        double locks = view["clutch_locks_s"]!.Value, shift = view["first_shift_s"]!.Value;
        var line = (LaunchSim.Vehicle.EngineDriveline)view.Car.Driveline;
        Observation[] locked = [.. view.Course.Seen.ToArray().Where(one => one.Time > locks && one.Time < shift)];

        Assert.True(locked.Length > 100);
        Assert.All(locked, one => Assert.Equal(one.EngineSpeed, DrivelineChart.Input(line, one), 1e-9 * one.EngineSpeed));
    }
}
