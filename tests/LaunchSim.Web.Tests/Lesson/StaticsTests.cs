using System.Text.Json;
using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Web.Lesson;
using LaunchSim.Web.Tests.Front;

namespace LaunchSim.Web.Tests.Lesson;

/// <summary>The statics that the reader's browser computes, against the engine, against free bodies cut in another way, and by hand.</summary>
public class StaticsTests
{
    private const double Inch = 0.0254, Pound = 4.4482216152605;

    /// <summary>
    /// By hand, in inches and pounds. Wheelbase 100, centre of gravity 20 up: the neutral line climbs 1 in 5. Lower bar level at
    /// 7.5; upper bar from (2, 17) to the instant centre. A thrust of 3000 moves 3000/5 = 600.
    /// (37.5, 7.5): slope 1/5, 100 %. The upper bar runs 35.5 ahead and 9.5 down, 36.749 long; about the contact point it has the
    /// lever (37.5·9.5 + 7.5·35.5)/36.749 = 16.939, the lower one 7.5. Turning: 7.5·L = −16.939·U. Forward: L + 0.96601·U = −3000.
    /// So U = 3000/(2.2586 − 0.96601) = 2321 pull, L = −5242 push; down 2321·9.5/36.749 = 600.
    /// (23.4375, 7.5): slope 0.32, 160 %, the bars press 960, 360 are over.
    /// (−25, 10): slope −0.4, −200 %, the bars pull 1200 down at the body and lift the tyres with it.
    /// </summary>
    [Theory]
    [InlineData(37.5, 7.5, 100, 600)]
    [InlineData(23.4375, 7.5, 160, 960)]
    [InlineData(-25, 10, -200, -1200)]
    public void Statics_OfTheLessonsCar_AreThoseByHand(double ahead, double up, double percent, double push)
    {
        using var script = new FrontScript("lesson/statics.js");
        script.Execute($"const s = tested.staticsOf({FrontScript.Of(up / ahead)}, 20, 100, 3000);");
        Assert.Equal([percent, 600, push, push - 600], script.Numbers("[s.percent, s.transfer, s.barsPush, s.apart]"), Near.To(1e-9));
    }

    [Fact]
    public void BarForces_OfTheNeutralCar_AreThoseByHand()
    {
        using var script = new FrontScript("lesson/statics.js");
        script.Execute("const f = tested.barForces({ lowerAxle: [1, 7.5], lowerBody: [21, 7.5], upperAxle: [2, 17], upperBody: [37.5, 7.5] }, 3000);");
        Assert.Equal([-5242, 2321, 600], script.Numbers("[f.lower, f.upper, f.press]"), Near.To(0.5));
    }

    /// <summary>
    /// By hand: 600 lb over two springs of 140 lb/in at the wheel (they stand over the axle) are 2.143 in, over two tyres of
    /// 800 lb/in 0.375 in; in front two springs of 140·0.95² = 126.35 lb/in are 2.374 in and two tyres of 1100 lb/in 0.273 in.
    /// At 160 % 360 lb are over: the gap opens by 360/280 = 1.286 in, and the body rises by 1.286 − 0.375 = 0.911 in.
    /// </summary>
    [Fact]
    public void AtRest_OfTheLessonsCar_IsThatByHand()
    {
        using FrontScript script = WithDocument();
        script.Execute($"const s = tested.staticsOf(0.32, {FrontScript.Of(20 * Inch)}, {FrontScript.Of(100 * Inch)}, {FrontScript.Of(3000 * Pound)}); const m = tested.atRest(s, lesson.car), n = tested.firstInstant(s, lesson.car);");
        Assert.Equal([2000, 1000, -360], script.Numbers("[m.load, m.front, m.springs]").Select(force => force / Pound), Near.To(0.01));
        Assert.Equal([1.2857, 0.375, 0.9107, 2.3744 + 0.2727], script.Numbers("[m.gap, m.squash, m.rise, m.frontRise]").Select(length => length / Inch), Near.To(1e-3));
        Assert.Equal([2360, 1600, 0, 0], script.Numbers("[n.load, n.front, n.springs, n.gap]").Select(force => force / Pound), Near.To(0.01));
    }

    [Fact]
    public void CheckPoints_OfTheDocument_AreTheEnginesInTheBrowser()
    {
        using FrontScript script = WithDocument();
        Assert.True(script.Number("lesson.checks.length") >= 8);
        for (int i = 0; i < script.Number("lesson.checks.length"); i++)
        {
            script.Execute($"globalThis.c = lesson.checks[{i}]; globalThis.centre = tested.instantCentre(c.bars); globalThis.s = tested.staticsOf(tested.slopeOf(c.bars), c.cgHeight, c.wheelbase, c.thrust); globalThis.f = tested.barForces(c.bars, c.thrust);");
            double scale = script.Number("c.thrust");
            Assert.Equal(script.Number("c.engine.percent"), script.Number("s.percent"), 1e-6);
            Assert.Equal(script.Numbers("[c.engine.transfer, c.engine.barsPush, c.engine.apart]"), script.Numbers("[s.transfer, s.barsPush, s.apart]"), Near.To(1e-8 * scale));
            Assert.Equal(script.Number("c.engine.barsPush"), script.Number("f.press"), 1e-8 * scale);
            Assert.Equal(script.Holds("c.engine.ahead === null"), script.Holds("centre === null"));
            if (!script.Holds("centre === null"))
            {
                Assert.Equal(script.Numbers("[c.engine.ahead, c.engine.up]"), script.Numbers("centre"), Near.To(1e-7));
            }
        }
    }

    /// <summary>
    /// Any bars, any thrust: what the bars press is thrust times slope; forward they hold the thrust; and about a third point,
    /// which the solution does not use, nothing turns.
    /// </summary>
    [Fact]
    public void BarForces_OfAnyBars_HoldTheAxle()
    {
        using var script = new FrontScript("lesson/statics.js");
        Gen<(double, double, double, double, double, double, double)> bars = Gen.Select(
            Gen.Double[-0.1, 0.2], Gen.Double[0.05, 0.25], Gen.Double[-0.6, 0.6], Gen.Double[-0.1, 0.2], Gen.Double[0.35, 0.6], Gen.Double[-0.6, 0.6], Gen.Double[-2e4, 2e4]);
        bars.Sample(
            one =>
            {
                (double lx, double lz, double lower, double ux, double uz, double upper, double thrust) = one;
                script.Execute($"globalThis.b = {{ lowerAxle: [{N(lx)}, {N(lz)}], lowerBody: [{N(lx + 0.5)}, {N(lz + (0.5 * lower))}], upperAxle: [{N(ux)}, {N(uz)}], upperBody: [{N(ux + 0.3)}, {N(uz + (0.3 * upper))}] }}; globalThis.f = tested.barForces(b, {N(thrust)}); globalThis.centre = tested.instantCentre(b);");
                double[] force = script.Numbers("[f.lower, f.upper, f.press, tested.slopeOf(b)]");
                double slope = force[3];
                if (!(Math.Abs(slope) < 20))
                {
                    return;
                }

                double size = Math.Max(1, force.Take(3).Max(Math.Abs));
                (double lc, double ls) = (1 / Math.Sqrt(1 + (lower * lower)), lower / Math.Sqrt(1 + (lower * lower)));
                (double uc, double us) = (1 / Math.Sqrt(1 + (upper * upper)), upper / Math.Sqrt(1 + (upper * upper)));
                Assert.Equal(-thrust, (force[0] * lc) + (force[1] * uc), 1e-8 * size);
                Assert.Equal(thrust * slope, force[2], 1e-7 * size);

                // About the lower joint: the upper bar, thrust and load at the contact point.
                double about = ((ux - lx) * force[1] * us) - ((uz - lz) * force[1] * uc) + (-lx * force[2]) + (lz * thrust);
                Assert.Equal(0, about, 1e-7 * size);
            },
            iter: 300, threads: 1);

        static string N(double value) => FrontScript.Of(value);
    }

    [Theory]
    [InlineData("false", 0.6, 0.2)]
    [InlineData("false", -0.9, 0.1)]
    [InlineData("true", 0.6, 0.2)]
    public void Reader_SetToAPercent_HasIt(string parallel, double ahead, double up)
    {
        using var script = new FrontScript("lesson/reader.js");
        script.Execute($"let told = 0; const reader = tested.createReader({{ ahead: {FrontScript.Of(ahead)}, up: {FrontScript.Of(up)}, parallel: {parallel}, climb: 0.1, cgHeight: 0.5, wheelbase: 2.5, thrust: 1e4, rest: false }}, {{ lowerAxle: [0.02, 0.2], upperAxle: [0.05, 0.43], lowerLength: 0.5, upperLength: 0.3 }}); reader.subscribe(() => told++);");
        foreach (int percent in new[] { -100, 0, 70, 100, 300 })
        {
            script.Execute($"reader.setPercent({percent})");
            Assert.Equal(percent, script.Number("reader.statics.percent"), 1e-9);
        }

        Assert.Equal(5, script.Number("told"));
    }

    [Fact]
    public void Reader_WithTheCentreOverTheContactPatch_HasNoPercentAndNoForces()
    {
        using var script = new FrontScript("lesson/reader.js");
        script.Execute("const reader = tested.createReader({ ahead: 0, up: 0.3, parallel: false, climb: 0, cgHeight: 0.5, wheelbase: 2.5, thrust: 1e4, rest: true }, { lowerAxle: [0.02, 0.2], upperAxle: [0.05, 0.43], lowerLength: 0.5, upperLength: 0.3 });");
        Assert.True(double.IsNaN(script.Number("reader.statics.percent")));
    }

    /// <summary>
    /// Come to rest, the engine obeys the drawing's rule with its own push: what the bars press beyond the gain of load is what
    /// the springs have given up. Left over are the damper's last creeping and the spring's slant once the housing has turned.
    /// </summary>
    [Fact]
    public void Engine_ComeToRest_ObeysTheDrawingsRule()
    {
        foreach (LessonCase one in new[] { TheLesson.Runs.Below, TheLesson.Runs.At, TheLesson.Runs.Above })
        {
            LaunchSolution launch = one.Run.Solution;
            launch.At(launch.Duration, out Observation last);
            double over = last.LoadViaLinks - (last.RearLoad - launch.Car.Standing.RearLoad);
            Assert.Equal(over / WheelRates.Of(launch.Car).Rear, last.Separation, 0.1 * Math.Max(0.02, Math.Abs(last.Separation)));
        }
    }

    /// <summary>
    /// Come to rest, the load that has moved is the drawing's, with the height that the centre of gravity has by then. Left over,
    /// under a tenth: wheels that spin up, and the couple of tyres that roll on a larger radius than their height.
    /// </summary>
    [Fact]
    public void Engine_ComeToRest_HasMovedTheDrawingsLoad()
    {
        foreach (LessonCase one in new[] { TheLesson.Runs.Below, TheLesson.Runs.At, TheLesson.Runs.Above })
        {
            LaunchSolution launch = one.Run.Solution;
            launch.At(launch.Duration, out Observation last);
            double height = launch.Car.Standing.CentreOfGravityHeight + one.CentreRise(launch.Duration);
            double drawn = last.RearThrust * height / launch.Car.Standing.Wheelbase;
            Assert.InRange((last.RearLoad - launch.Car.Standing.RearLoad) / drawn, 1, 1.1);
        }
    }

    private static FrontScript WithDocument()
    {
        var script = new FrontScript("lesson/statics.js");
        script.Set("text", LessonDocument.Text(TheLesson.Shop));
        script.Execute("globalThis.lesson = JSON.parse(text);");
        using var document = JsonDocument.Parse(LessonDocument.Text(TheLesson.Shop));
        Assert.True(document.RootElement.TryGetProperty("checks", out _));
        return script;
    }
}
