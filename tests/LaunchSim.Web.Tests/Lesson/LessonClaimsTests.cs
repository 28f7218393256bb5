using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Web.Lesson;

namespace LaunchSim.Web.Tests.Lesson;

/// <summary>What the lesson's sentences say besides numbers, held to the runs: when one of these fails, the text has to be written anew.</summary>
public class LessonClaimsTests
{
    private static LessonRuns Runs => TheLesson.Runs;

    private static readonly LessonCase[] Three = [Runs.Below, Runs.At, Runs.Above];

    [Fact]
    public void ThreeCars_FromTheSameTorque_PushWithTheSameThrustAndNeverSlipPastThePeak()
    {
        foreach (LessonCase one in Runs.Clicks.Concat(Three))
        {
            Assert.Equal(0, Figure(one, "slip_beyond_peak_time_s"));
            Assert.Equal(1, Figure(one, "axle_torque_largest_nm") / Figure(Runs.Above, "axle_torque_largest_nm"), 1e-9);
            foreach (double time in new[] { 0.03, 0.05, 0.2, 0.7 })
            {
                Assert.InRange(At(one, time).RearThrust / At(Runs.Above, time).RearThrust, 0.97, 1.03);
            }

            Assert.Null(one.Run.Figures.Events.First(LaunchEventKind.FrontTireOff));
            Assert.Equal(0, Figure(one, "rear_top_stop_count") + Figure(one, "front_top_stop_count") + Figure(one, "rear_bottom_stop_count"));
        }
    }

    [Fact]
    public void FirstTenth_WithASteeperLine_HasMoreLoadAndMoreGripAndHoldsMore()
    {
        for (int i = 1; i < Three.Length; i++)
        {
            Assert.True(At(Three[i], 0.05).RearLoad > At(Three[i - 1], 0.05).RearLoad);
            Assert.True(At(Three[i], 0.1).RearLoad > At(Three[i - 1], 0.1).RearLoad);
            Assert.True(Figure(Three[i], "grip_margin_lowest_ratio") > Figure(Three[i - 1], "grip_margin_lowest_ratio"));
            Assert.True(Figure(Three[i], "lowest_rear_load_after_hit_n") < Figure(Three[i - 1], "lowest_rear_load_after_hit_n"));
            Assert.True(Three[i].HeldTorque(default) > Three[i - 1].HeldTorque(default));
        }

        Assert.All(Three, one => Assert.True(Figure(one, "grip_margin_lowest_time_s") < 0.1));
    }

    [Fact]
    public void End_OfTheThreeCars_HasNearlyOneLoadAndHasComeToRest()
    {
        double[] loads = [.. Three.Select(one => At(one, one.Run.Solution.Duration).RearLoad)];
        Assert.InRange(loads.Max() / loads.Min(), 1, 1.015);
        Assert.All(Three, one => Assert.True(Math.Abs(At(one, one.Run.Solution.Duration).SeparationRate) < 0.02));
        Assert.All(Three, one => Assert.True(one.CentreRise(one.Run.Solution.Duration) > 0));
    }

    [Fact]
    public void Squat_IsTheBelowCarsAlone()
    {
        Assert.True(Figure(Runs.Below, "squat_peak_m") < -0.005);
        Assert.Equal(0, Figure(Runs.At, "squat_peak_m"));
        Assert.Equal(0, Figure(Runs.Above, "squat_peak_m"));
        Assert.True(Lowest(Runs.Below) < Lowest(Runs.At) && Lowest(Runs.At) < -0.003);
    }

    [Fact]
    public void Soft_HitsHardestOpensFarthestAndIsNearestToSpinningInTheHole()
    {
        Assert.Equal(Runs.Soft, Runs.Clicks.MaxBy(one => Figure(one, "hit_n")));
        Assert.Equal(Runs.Soft, Runs.Clicks.MaxBy(one => Figure(one, "separation_peak_m")));
        Assert.Equal(Runs.Soft, Runs.Clicks.MaxBy(one => Figure(one, "load_unrest_n")));
        Assert.Equal(Figure(Runs.Soft, "lowest_rear_load_after_hit_time_s"), Figure(Runs.Soft, "grip_margin_lowest_time_s"), 0.01);
        Assert.True(At(Runs.Soft, Figure(Runs.Soft, "lowest_rear_load_after_hit_time_s")).LoadViaSprings < -1000);
    }

    [Fact]
    public void Stiff_TakesAtOnceHitsLateAndStillTakesAtTheLowPoint()
    {
        Observation first = At(Runs.Stiff, 0.05);
        Assert.True(first.LoadViaDampers < -0.5 * first.LoadViaLinks);
        Assert.True(Figure(Runs.Stiff, "hit_time_s") > Figure(Runs.Above, "hit_time_s") + 0.02);
        Observation low = At(Runs.Stiff, Figure(Runs.Stiff, "lowest_rear_load_after_hit_time_s"));
        Assert.True(low.LoadViaDampers < -1000 && low.RearDamperSpeed > 0);
        Assert.True(Figure(Runs.Stiff, "grip_margin_lowest_time_s") < 0.1);
        Assert.True(Figure(Runs.Stiff, "grip_margin_lowest_ratio") < Figure(Runs.At, "grip_margin_lowest_ratio"));
    }

    [Fact]
    public void Mean_OverTheWholeRun_IsTheSameWithEveryClick()
    {
        double[] means = [.. Runs.Clicks.Select(one => one.MeanLoadGain(one.Run.Solution.Duration))];
        Assert.InRange(means.Max() / means.Min(), 1, 1.02);
    }

    [Fact]
    public void Clicks_NearestToInStep_LieBesideTheBestLowPointAndTheMostGrip()
    {
        LessonCase low = Runs.Clicks.MaxBy(one => Figure(one, "lowest_rear_load_after_hit_n"))!, grip = Runs.Clicks.MaxBy(one => Figure(one, "grip_margin_lowest_ratio"))!;
        Assert.InRange(Math.Abs(low.Click - Runs.Above.Click), 0, 2);
        Assert.InRange(Math.Abs(grip.Click - Runs.Above.Click), 0, 2);
        Assert.DoesNotContain(Runs.Above.Click, new[] { Runs.Soft.Click, Runs.Stiff.Click });

        // The farther from these, the worse: the low point rises to its best and falls from there, and so does the grip.
        Assert.True(RisesThenFalls([.. Runs.Clicks.Select(one => Figure(one, "lowest_rear_load_after_hit_n"))]));
        Assert.True(RisesThenFalls([.. Runs.Clicks.Select(one => Figure(one, "grip_margin_lowest_ratio"))]));
    }

    [Fact]
    public void Front_WhateverTheRearDoes_HasItsHalfAtTheSameTime()
    {
        double[] times = [.. Runs.Clicks.Select(one => Figure(one, "front_rise_t50_s"))];
        Assert.InRange(times.Max() - times.Min(), 0, 0.01);
    }

    [Fact]
    public void OutOfStep_TurnsFirstAndPitchesMore()
    {
        double at = Figure(Runs.OutOfStep, "front_rise_t50_s");
        Assert.True(At(Runs.OutOfStep, at).RearRise < 0.25 * At(Runs.Above, at).RearRise);
        Assert.True(At(Runs.OutOfStep, at).Pitch > At(Runs.Above, at).Pitch);
        Assert.True(Figure(Runs.OutOfStep, "pitch_nose_up_largest_rad") > Figure(Runs.Above, "pitch_nose_up_largest_rad"));
        Assert.True(Math.Abs(Runs.OutOfStep.Lag) > 0.02 && Math.Abs(Runs.Above.Lag) < 0.01);
    }

    [Fact]
    public void Bars_OfTheAboveCar_PushBelowAndPullAbove()
    {
        Assert.Equal(0, Figure(Runs.Above, "lower_link_pull_n"), 500.0);
        Assert.True(2 * (Figure(Runs.Above, "lower_link_push_n") + Figure(Runs.Above, "upper_link_pull_n")) > 2 * At(Runs.Above, 0.1).RearThrust);
    }

    private static double Figure(LessonCase one, string key) => one.Run.Figures[key] ?? throw new InvalidOperationException($"{one.Key}: {key}");

    private static Observation At(LessonCase one, double time)
    {
        one.Run.Solution.At(time, out Observation seen);
        return seen;
    }

    private static double Lowest(LessonCase one) => Enumerable.Range(0, 801).Min(i => At(one, i * 0.001).RearRise);

    private static bool RisesThenFalls(double[] values)
    {
        int best = Array.IndexOf(values, values.Max());
        return Enumerable.Range(1, values.Length - 1).All(i => i <= best ? values[i] >= values[i - 1] : values[i] <= values[i - 1]);
    }
}
