using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Comparing;

namespace LaunchSim.Studies.Tests.Comparing;

public class ComparisonTests
{
    private static readonly Readout Shop = new(UnitSystem.Shop);

    [Fact]
    public void Comparison_OfOneFileTwice_FindsNothing()
    {
        Comparison comparison = Of(Files.DoorCar, Files.DoorCar);

        Assert.Empty(comparison.Written);
        Assert.False(comparison.Differences[0].Cause.IsOfNote);
        Assert.Equal(Verdict.NoMatter, comparison.Differences[0].Verdict);
        Assert.All(comparison.Figures, row => Assert.True(row.Difference(1) is null or 0));
        Assert.Equal(["B says the same as A: nothing differs."], ComparisonWords.Of(comparison, comparison.Differences[0], Shop));
    }

    [Theory]
    [InlineData("car.cg_height", "21.001 in")]
    [InlineData("rear.tire.rolling_resistance", "0.0201")]
    public void Comparison_OfATrifle_SaysThatNothingOfNoteChanges(string path, string value)
    {
        Comparison comparison = Set((path, value));

        Assert.Single(comparison.Written);
        Assert.Contains("Nothing of note changes from A to B", ComparisonWords.Of(comparison, comparison.Differences[0], Shop)[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Written_OtherSpellingOfOneNumber_IsNoDifference()
    {
        Assert.Empty(Set(("car.wheelbase", "2679.7 mm"), ("rear.linkage.lower.body", "533.4 228.6 mm")).Written);

        WrittenDifference hole = Assert.Single(Set(("rear.linkage.upper.body.use", "3")).Written);
        Assert.Equal("rear.linkage.upper.body.use", hole.Path);
        Assert.Equal(["2", "3"], hole.Texts);

        WrittenDifference up = Assert.Single(Set(("rear.linkage.lower.body", "21.0 9.5 in")).Written);
        Assert.Equal("rear.linkage.lower.body.up", up.Path);
    }

    [Fact]
    public void Written_LeftOutInOne_IsToldAsSuch()
    {
        WrittenDifference[] written = [.. Set(("track", "{distance: 0 30 60 ft, grip: 1.0 0.9 1.0}")).Written];

        Assert.Contains(written, one => one.Path == "track.distance" && one.Texts[0] is null && one.Texts[1] == "0 30 60 ft");
    }

    [Fact]
    public void Loads_AtEveryMoment_AddUpToTheChangeOfTheLoad()
    {
        foreach ((string one, string other) in new[] { (Files.DoorCar, Files.Test("ladder")), (Files.Test("tops-out"), Files.Test("wheelstand")), (Files.Test("clutch"), Files.Test("spins")) })
        {
            Comparison comparison = Of(one, other);
            Cause cause = comparison.Differences[0].Cause;
            Assert.Equal(3, cause.Loads.Count);
            foreach (LoadChange load in cause.Loads)
            {
                Assert.Equal(load.Change, Enum.GetValues<LoadPath>().Sum(load.Of), 1e-6);
                Assert.True(Math.Sign(load.Change) * load.Of(load.Reason) > 0);
            }

            LoadChange hit = cause.Loads[0], low = cause.Loads[2];
            Assert.Equal(comparison.SetUps[1].Run.Figures["hit_n"]!.Value, hit.After.Load, 1e-3);
            Assert.Equal(comparison.SetUps[0].Run.Figures["lowest_rear_load_after_hit_n"]!.Value, low.Before.Load, 1e-3);
        }
    }

    // The trace's rows, summed by the trapezium rule, know nothing of the solution's steps; kinks and jumps make up the rest.
    [Theory]
    [InlineData("clutch")]
    [InlineData("tops-out")]
    public void Dampers_OverAStretch_TakeWhatTheTraceSays(string name)
    {
        LaunchSolution solution = Of(Files.Test(name), Files.DoorCar).SetUps[0].Run.Solution;
        const double Until = 0.3, Step = 1e-4;
        DamperWork[] work = DamperWork.Of(solution, 0, Until);
        double impulse = 0, energy = 0;
        for (int i = 0; i < Until / Step; i++)
        {
            solution.At((i + 0.5) * Step, out Observation seen);
            impulse += seen.RearDamperSpeed > 0 ? 2 * Math.Abs(seen.RearDamperForce) * Step : 0;
            energy += seen.RearDamperSpeed > 0 ? 2 * Math.Abs(seen.RearDamperForce * seen.RearDamperSpeed) * Step : 0;
        }

        Assert.Equal(1, work[(int)DamperMotion.RearOpening].Impulse / impulse, 2e-3);
        Assert.Equal(1, work[(int)DamperMotion.RearOpening].Energy / energy, 2e-3);
    }

    [Fact]
    public void Mean_OfTheLoad_IsThatOfAFineSum()
    {
        LaunchSolution solution = Of(Files.DoorCar, Files.DoorCar).SetUps[0].Run.Solution;
        double whole = 0;
        const double Step = 1e-5;
        for (int i = 0; i < 15000; i++)
        {
            solution.At((i + 0.5) * Step, out Observation seen);
            whole += seen.RearLoad * Step;
        }

        Assert.Equal(whole / 0.15, LoadShares.Mean(solution, 0.15).Load, 0.5);
    }

    [Theory]
    [InlineData("0", DamperMotion.RearOpening, -1)]
    [InlineData("12", DamperMotion.RearOpening, 1)]
    public void Cause_ExtensionClicked_IsTheRearDampersOpening(string click, DamperMotion motion, int sign)
    {
        Comparison comparison = Set(("rear.damper.extension.set", click));
        DamperChange damper = comparison.Differences[0].Cause.NotedDamper!;

        Assert.Equal(motion, damper.Motion);
        Assert.Equal(sign, Math.Sign(damper.MeanForce));
        Assert.True(comparison.Differences[0].Cause.Parting is { IsRear: true, IsOpening: true });
        Assert.Contains(sign > 0 ? "the rear dampers, opening, hold against it with" : "less on the mean", CauseWords.Of(comparison.Differences[0], Shop)[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Cause_LowerHole_IsTheLinksInTheHit()
    {
        SetUpDifference difference = Set(("rear.linkage.upper.body.use", "3")).Differences[0];

        Assert.Equal(LoadPath.Links, difference.Cause.Loads[0].Reason);
        Assert.Contains("because the links give", CauseWords.Of(difference, Shop)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Cause_OtherWayRound_IsTheSameWithTheOtherSign()
    {
        Cause there = Of(Files.DoorCar, Files.Test("ladder")).Differences[0].Cause, back = Of(Files.Test("ladder"), Files.DoorCar).Differences[0].Cause;

        Assert.Equal(there.Parting!.Time, back.Parting!.Time);
        for (int i = 0; i < there.Loads.Count; i++)
        {
            Assert.Equal(there.Loads[i].Change, -back.Loads[i].Change, 1e-9);
        }
    }

    [Fact]
    public void Settings_OfDifferentRuns_AreTheShortestWithTheFirstsMarks()
    {
        Comparison comparison = Set(("run.duration", "0.4 s"), ("run.marks", "30 ft"));

        Assert.True(comparison.ChangesRuns);
        Assert.All(comparison.SetUps, setUp => Assert.Equal(0.4, setUp.Run.Solution.Duration, 1e-12));
        Assert.Equal(comparison.SetUps[0].Run.Scenario.Run.Marks, comparison.Settings.Marks);
    }

    [Fact]
    public void Verdict_OfALaunchThatStopped_IsNotKnown()
    {
        Comparison comparison = Of(Files.Test("clutch"), Files.Test("stalls"));

        Assert.Equal(Verdict.Unknown, comparison.Differences[0].Verdict);
        Assert.Contains("cannot be said, for B did not come to its end", ComparisonWords.Of(comparison, comparison.Differences[0], Shop)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Verdict_OfAims_FollowsTheirPointsAndScale()
    {
        Aim lag = AimProfiles.All[0].Aims[0];
        AimPart At(Aim aim, double value) => new(aim, value, aim.PointsOf(value));

        Assert.Equal(Verdict.Better, AimVerdict.Of(At(lag, 0.047), At(lag, 0.013)).Verdict);
        Assert.Equal(Verdict.Worse, AimVerdict.Of(At(lag, 0.013), At(lag, double.NaN)).Verdict);
        Assert.Equal(Verdict.NoMatter, AimVerdict.Of(At(lag, 0.013), At(lag, 0.017)).Verdict);
        Assert.Equal(Verdict.NoMatter, AimVerdict.Of(At(lag, 0.013), At(lag, -0.013)).Verdict);
        Assert.Equal(Verdict.Worse, AimVerdict.Of(new AimScore(5, 0), new AimScore(1, 0.1)));
        Assert.Equal(Verdict.Unknown, AimVerdict.Of(new AimScore(5, 0), AimScore.None));
    }

    [Fact]
    public void Letters_GoOnBehindZ() =>
        Assert.Equal(["A", "Z", "AA", "AZ", "BA"], new[] { 0, 25, 26, 51, 52 }.Select(ComparedSetUp.LetterOf));

    private static Comparison Of(params string[] files) => Of([.. files.Select(file => Read(file))]);

    private static Comparison Set(params (string Path, string Value)[] values) => Of([Read(Files.DoorCar), Read(Files.DoorCar, values)]);

    private static Comparison Of(Scenario[] scenarios) =>
        Comparison.Of(scenarios, AimSet.Of(scenarios[0].Aims, null, out _)!, null, CancellationToken.None);

    private static Scenario Read(string file, params (string Path, string Value)[] values)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(file, values);
        Assert.Empty(read.Errors);
        return read.Scenario!;
    }
}
