using LaunchSim.Figures;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Tests.Aims;

public class AimTests
{
    private static readonly Aim Band = new() { Subject = AimSubjects.Find("separation"), From = 0.01, To = 0.05, Point = 0.01, Weight = 2 };

    [Theory]
    [InlineData(0.01, 0)]
    [InlineData(0.03, 0)]
    [InlineData(0.05, 0)]
    [InlineData(0.065, 1.5)]
    [InlineData(0, 1)]
    [InlineData(-0.02, 3)]
    public void PointsOf_ValueAgainstABand_CountsWhatIsBeyondTheNearerEnd(double value, double points) => Assert.Equal(points, Band.PointsOf(value), 1e-12);

    [Fact]
    public void PointsOf_NoValue_CountsTen() => Assert.Equal(10, Band.PointsOf(double.NaN));

    [Theory]
    [InlineData(0.019, 0)]
    [InlineData(0.030, 0.5)]
    public void PointsOf_LimitOnOneValue_AllowsItsSlack(double lag, double points)
    {
        var aim = new Aim { Subject = AimSubjects.Find("rise_lag"), From = 0, To = 0, Point = 0.020, IsLimit = true, Weight = 0 };

        Assert.Equal(points, aim.PointsOf(lag), 1e-12);
        Assert.Equal(points, aim.PointsOf(-lag), 1e-12);
    }

    [Fact]
    public void Subjects_AndProfiles_AreThoseOfTheFile()
    {
        // Whatever a file can name has a subject, each subject stands in a profile, and each figure that one needs exists.
        Scenario scenario = Cars.Read(Files.DoorCar, [.. AimSubjects.All.Select(subject => ($"aims.{subject.Name}.weight", "1"))]);
        var catalog = FigureCatalog.For(1);

        Assert.Equal(AimSubjects.All.Select(subject => subject.Name), scenario.Aims!.Aims.Select(aim => aim.Name));
        Assert.All(AimSubjects.All, subject => Assert.Contains(AimProfiles.All, profile => profile.Aims.Any(aim => aim.Subject == subject)));
        Assert.All(AimSubjects.All.SelectMany(subject => subject.Keys), key => Assert.True(catalog.TryFind(key, out _), key));
        Assert.All(AimProfiles.All, profile => Assert.Equal(profile.Name, Cars.Read(Files.DoorCar, ("aims.profile", profile.Name)).Aims!.Profile));
    }

    [Fact]
    public void Of_NothingEntered_IsTheFirstProfile()
    {
        AimSet aims = Cars.Aims(Cars.Door);

        Assert.False(aims.IsEntered);
        Assert.Equal(AimProfiles.All[0].Aims, aims.Aims);
    }

    [Fact]
    public void Of_EnteredAims_TakeThePlaceOfTheProfiles()
    {
        Scenario scenario = Cars.Read(
            Files.DoorCar, ("aims.rise_lag.near", "-20 ms"), ("aims.rise_lag.within", "10 ms"), ("aims.separation.weight", "0"), ("aims.rear_stops.limit", "no"), ("aims.front_height.most", "5 in"));

        AimSet aims = Cars.Aims(scenario);

        Aim lag = aims.Aims.First(aim => aim.Subject.Name == "rise_lag");
        Assert.Equal((-0.020, -0.020, 0.010, 2.0), (lag.From, lag.To, lag.Point, lag.Weight));
        Assert.DoesNotContain(aims.Aims, aim => aim.Subject.Name == "separation");
        Assert.Equal((false, 1.0), aims.Aims.Where(aim => aim.Subject.Name == "rear_stops").Select(aim => (aim.IsLimit, aim.Weight)).Single());
        Assert.Equal(5 * 0.0254, aims.Aims.First(aim => aim.Subject.Name == "front_height").To, 1e-12);
    }

    [Theory]
    [InlineData("aims.separation.from", "9 in")]
    public void Of_BandThatContradictsTheProfiles_IsRefused(string path, string value)
    {
        Assert.Null(AimSet.Of(Cars.Read(Files.DoorCar, (path, value)).Aims, null, out string? problem));
        Assert.Contains("separation", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AllWeightsZero_IsRefused()
    {
        (string, string)[] none = [.. AimSubjects.All.Select(subject => ($"aims.{subject.Name}.weight", "0"))];

        Assert.Null(AimSet.Of(Cars.Read(Files.DoorCar, none).Aims, null, out string? problem));
        Assert.NotNull(problem);
    }

    [Fact]
    public void Score_OfParts_IsTheirSumAndLimitsComeFirst()
    {
        AimSet aims = Cars.Aims(Cars.Door);
        double[] figures = new double[aims.Keys.Count];
        for (int i = 0; i < figures.Length; i++)
        {
            figures[i] = aims.Keys[i] switch
            {
                "rise_lag_s" => 0.050,
                "separation_peak_m" => 4 * 0.0254,
                "rear_top_stop_count" => 1,
                "rear_top_stop_force_n" => 500,
                "rear_bottom_stop_force_n" => double.NaN,
                "rear_tire_load_static_n" => 5000,
                "lowest_rear_load_after_hit_n" => 4500,
                "load_unrest_n" => 250,
                "slip_beyond_peak_time_s" => 0.1,
                _ => 0,
            };
        }

        AimScore score = aims.Score(figures);

        // 2 · 2.5 for the lag, 4 for the separation, 2 for the load, 1 for the unrest, 2 · 1 for the slip.
        Assert.Equal(14, score.Points, 1e-9);

        // Touched is 1, and 1,000 N of both stops are a fifth of 5,000 N: 1.2 in tenths.
        Assert.Equal(12, score.Beyond, 1e-9);
        Assert.Equal(score.Points, aims.Parts(figures).Sum(part => part.Share), 1e-12);
        Assert.True(new AimScore(1000, 0) < score);
        Assert.True(score < AimScore.None);
    }
}
