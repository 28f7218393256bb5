using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports;

namespace LaunchSim.Web.Tests.Front;

/// <summary>
/// The drawn car against the engine's: the browser turns and shifts the standing car, and what it draws so has to be what the
/// equations of motion say. Tolerances are those of single-precision columns, 7 digits of places up to some 40 m.
/// </summary>
public class PoseTests
{
    private const double Close = 1e-5;

    public static TheoryData<string> Names => Shipped.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Pose_OfAnyInstant_KeepsBarsAsLongAsTheyAre(string name)
    {
        (FrontScript posed, LaunchOutcome run) = Posed(name);
        using FrontScript script = posed;
        for (int bar = 0; bar < script.Number("pose.launch.car.bars.length"); bar++)
        {
            double standing = Length(script, bar, 0);
            foreach (double time in Instants(run))
            {
                Assert.Equal(standing, Length(script, bar, time), Close);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pose_OfAnyInstant_PutsTheWheelsWhereTheEngineHasThem(string name)
    {
        (FrontScript posed, LaunchOutcome run) = Posed(name);
        using FrontScript script = posed;
        foreach (double time in Instants(run))
        {
            run.Solution.At(time, out Observation seen);
            script.Execute($"pose.seek({FrontScript.Of(time)})");
            Assert.Equal(seen.FrontWheelHeight, script.Numbers("pose.frontWheel()")[1], Close);
            Assert.Equal(seen.RearWheelHeight, script.Numbers("pose.housing(0, pose.launch.car.rear.height)")[1], Close);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pose_OfAnyInstant_LetsTheBarsMeetAtTheInstantCentre(string name)
    {
        (FrontScript posed, LaunchOutcome run) = Posed(name);
        using FrontScript script = posed;
        if (script.Number("pose.launch.car.bars.length") != 2)
        {
            return;
        }

        foreach (double time in Instants(run))
        {
            run.Solution.At(time, out Observation seen);
            if (!(Math.Abs(seen.InstantCentreAhead) < 10))
            {
                continue;
            }

            script.Execute($"pose.seek({FrontScript.Of(time)})");
            double[] lower = Ends(script, 0), upper = Ends(script, 1);
            (double ahead, double up) = Crossing(lower, upper);
            Assert.Equal(seen.InstantCentreAhead, ahead, 1e-3);
            Assert.Equal(seen.InstantCentreUp, up, 1e-3);
        }
    }

    [Fact]
    public void Pose_OfTheRelease_IsTheStandingCar()
    {
        (FrontScript posed, _) = Posed("door-car");
        using FrontScript script = posed;
        script.Execute("pose.seek(0)");
        Assert.Equal([1.2, 0.4], script.Numbers("pose.body(1.2, 0.4)"), Near.To(Close));
        Assert.Equal([-0.1, 0.3], script.Numbers("pose.housing(-0.1, 0.3)"), Near.To(Close));
    }

    private static (FrontScript Script, LaunchOutcome Run) Posed(string name)
    {
        LaunchOutcome run = Shipped.Run(name);
        var script = new FrontScript("scene/pose.js");

        // Both modules in one engine: the pose's with the document's result.
        script.Set("text", Shipped.Document(run));
        script.Execute(DecodeSource);
        script.Execute("const pose = tested.createPose(decodeDocument(JSON.parse(text)).launches[0]);");
        return (script, run);
    }

    private static string DecodeSource => $"const decodeDocument = (() => {{ {LaunchSim.Web.Pages.FrontBundle.Script("document.js").Replace("'use strict';", "", StringComparison.Ordinal)}\nreturn m0.decode; }})();";

    private static double[] Instants(LaunchOutcome run) => [.. Enumerable.Range(0, 21).Select(i => Math.Round(i * run.Solution.Duration / 20, 3)).Where(time => time <= run.Solution.Duration)];

    private static double[] Ends(FrontScript script, int bar) => script.Numbers($"[...pose.housing(...pose.launch.car.bars[{bar}].axle), ...pose.body(...pose.launch.car.bars[{bar}].body)]");

    private static double Length(FrontScript script, int bar, double time)
    {
        script.Execute($"pose.seek({FrontScript.Of(time)})");
        double[] ends = Ends(script, bar);
        return Math.Sqrt(((ends[2] - ends[0]) * (ends[2] - ends[0])) + ((ends[3] - ends[1]) * (ends[3] - ends[1])));
    }

    private static (double Ahead, double Up) Crossing(double[] one, double[] other)
    {
        double ax = one[2] - one[0], az = one[3] - one[1], bx = other[2] - other[0], bz = other[3] - other[1];
        double share = (((other[0] - one[0]) * bz) - ((other[1] - one[1]) * bx)) / ((ax * bz) - (az * bx));
        return (one[0] + (share * ax), one[1] + (share * az));
    }
}

/// <summary>Compares numbers within a tolerance.</summary>
internal sealed class Near(double tolerance) : IEqualityComparer<double>
{
    public static Near To(double tolerance) => new(tolerance);

    public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

    public int GetHashCode(double obj) => 0;
}
