using LaunchSim.Passes.After;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Passes.Tests.After;

public sealed class AfterTests
{
    private static readonly SeenFacts Video = new() { FramesPerSecond = 240, ReleaseFrame = 118 };

    [Theory]
    [InlineData(0.2195, true, "rear gap fully open by 0.220 s (frame 171), now 0.270 s")]
    [InlineData(0.2195, false, "rear gap fully open not before 0.219 s (frame 171), now 0.270 s")]
    public void Sign_OfATime_NamesTheBoundThatIsKept(double bound, bool earlier, string words) =>
        Assert.Equal(words, AfterWords.Sign(new VideoSign("rear_open", "rear gap fully open", bound, earlier, 0.27, 0.9, false, 1 / 240.0), Video));

    [Theory]
    [InlineData(0.0196, true, "front moves no later than 0.020 s after the rear, now 0.041 s after")]
    [InlineData(0.0196, false, "front moves at least 0.019 s after the rear, now 0.041 s after")]
    [InlineData(-0.0104, true, "front moves at least 0.010 s before the rear, now 0.041 s after")]
    [InlineData(-0.0104, false, "front moves no more than 0.011 s before the rear, now 0.041 s after")]
    public void Sign_OfALag_SaysWhichEndAndWhichSide(double bound, bool earlier, string words) =>
        Assert.Equal(words, AfterWords.Sign(new VideoSign("lag", "front", bound, earlier, 0.041, 0.9, true, 1 / 240.0), Video));

    [Fact]
    public void Signs_OfAChangeThatMovesTheRear_AreKeptByNineCarsInTen()
    {
        // Twelve clicks for six hold the separation back: the rear is open later, on every plausible car.
        using var folder = new Folder();
        PassFile pass = folder.Pass("pass.yaml", $"car: {Files.Shipped("season/car.yaml")}\nchanged: {{rear.damper.extension.set: 0}}\nseen: {{frames_per_second: 240, rear_moves: frame 14}}\n");
        LaunchSim.Scenarios.Scenario changed = pass.Scenario.With([("rear.damper.extension.set", "12")]).Scenario!;
        IReadOnlyList<VideoSign> signs = VideoSigns.Of(pass.Scenario, changed, pass.Run, pass.Seen, new(), default);
        Assert.NotEmpty(signs);
        Assert.All(signs, sign => Assert.InRange(sign.Share, 0.8, 1));
        Assert.Equal(signs.OrderByDescending(sign => sign.Share).Select(sign => sign.Key), signs.Select(sign => sign.Key));
    }

    /// <summary>Another bound than now, by a frame at least: otherwise it would be kept without the change as well.</summary>
    [Theory]
    [InlineData("frames_per_second: 240, rear_moves: frame 14, front_moves: frame 20", 6 / 240.0)]
    [InlineData("rear_moves: 0.06 s, front_moves: 0.10 s", 0.04)]
    public void Signs_OfWhatWasSeen_AreCountedFromThere(string seen, double lag)
    {
        using var folder = new Folder();
        PassFile pass = folder.Pass("pass.yaml", $"car: {Files.Shipped("season/car.yaml")}\nchanged: {{rear.linkage.upper.body.use: 1}}\nseen: {{{seen}}}\n");
        LaunchSim.Scenarios.Scenario changed = pass.Scenario.With([("rear.linkage.upper.body.use", "2")]).Scenario!;
        IReadOnlyList<VideoSign> signs = VideoSigns.Of(pass.Scenario, changed, pass.Run, pass.Seen, new(), default);

        VideoSign sign = Assert.Single(signs, one => one.IsLag);
        Assert.Equal(lag, sign.Now, 1e-9);
        Assert.False(sign.IsEarlier);
        Assert.All(signs, one => Assert.True(Math.Abs(one.Bound - one.Now) >= one.Within));
    }

    /// <summary>Nothing that a fiftieth of a second would tell: then what a phone's slow motion would, and it is said that one is needed.</summary>
    [Fact]
    public void Signs_WithoutAFrameRate_AreThoseOfSlowMotionWhereThereAreNoOthers()
    {
        using var folder = new Folder();
        PassFile pass = folder.Pass("pass.yaml", $"car: {Files.Shipped("season/fitted.yaml")}\nseen: {{shake: none}}\n");
        LaunchSim.Scenarios.Scenario changed = pass.Scenario.With([("rear.linkage.upper.body.use", "3")]).Scenario!;
        IReadOnlyList<VideoSign> signs = VideoSigns.Of(pass.Scenario, changed, pass.Run, pass.Seen, new(), default);

        Assert.NotEmpty(signs);
        Assert.All(signs, one => Assert.Equal(1 / VideoSigns.PhoneFrames, one.Within));
    }

    [Fact]
    public void Signs_OfNoChange_AreNone()
    {
        using var folder = new Folder();
        PassFile pass = folder.Pass("pass.yaml", $"car: {Files.Shipped("season/car.yaml")}\nseen: {{rear_moves: 0.06 s}}\n");
        Assert.Empty(VideoSigns.Of(pass.Scenario, pass.Scenario, pass.Run, pass.Seen, new(), default));
    }

    [Fact]
    public void After_APassThatWasOnlySeen_NamesOneChangeThatHelpsAndHowToPutItBack()
    {
        PassFile pass = new PassReader(Scenarios.StandingCheck.Reader(Scenarios.ReadPurpose.Run)).Read(Files.Shipped("season/05-hole-3.yaml")).Pass!;
        AfterResult result = AfterStudy.Run(pass, LaunchOutcome.Of(pass.Scenario, pass.Run, default), [], AimSet.Of(pass.Scenario.Aims, null, out _)!, default);
        Assert.NotNull(result.Fit);
        Assert.NotNull(result.Change);
        Assert.True(result.Next.Helps(result.Change));
        Assert.InRange(result.Help!.Helps.Share, 0.5, 1);
        Assert.Contains(result.Change.Changes[0].Edit.Path, AfterWords.PutBack(result.Change, result.Learned), StringComparison.Ordinal);
        Assert.Contains("7 seen facts", AfterWords.Conclusion(result, new Readout(UnitSystem.Shop)), StringComparison.Ordinal);

        // Cars are drawn as the fit's numbers hang together; what nothing is known of hangs together with nothing.
        int count = result.Fit.Values.Count;
        Assert.Equal(result.Fit.Values.Select(value => value.Parameter.Path), result.Fit.Together().Names);
        double[,] unknown = (double[,])result.Fit.Correlations.Clone();
        for (int i = 0; i < count; i++)
        {
            (unknown[0, i], unknown[i, 0]) = (double.NaN, double.NaN);
        }

        Assert.Equal(count, (result.Fit with { Correlations = unknown }).Together().Names.Count);

        // What was learned is nearer to what was seen than what was predicted.
        double before = result.Seen.Sum(fact => Math.Abs(fact.Residual)), after = result.Fit.Seen[0].After.Sum(fact => Math.Abs(fact.Residual));
        Assert.True(after < before, $"{after} and {before}");
    }

    [Fact]
    public void After_APassOfWhichNothingWasSeen_SaysSo()
    {
        using var folder = new Folder();
        PassFile pass = folder.Pass("pass.yaml", $"car: {Files.DoorCar}\n");
        AfterResult result = AfterStudy.Run(pass, LaunchOutcome.Of(pass.Scenario, pass.Run, default), [], AimSet.Of(pass.Scenario.Aims, null, out _)!, default);
        Assert.Null(result.Fit);
        Assert.StartsWith("Nothing was seen or logged", AfterWords.Conclusion(result, new Readout(UnitSystem.Shop)), StringComparison.Ordinal);
    }
}
