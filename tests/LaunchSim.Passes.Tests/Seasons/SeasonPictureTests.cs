using System.Globalization;
using System.Text;
using LaunchSim.Charts;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Tests.Seasons;

public sealed class SeasonPictureTests : IDisposable
{
    private readonly Folder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("door-car.yaml", 1, false)]
    [InlineData("door-car.yaml", 30, true)]
    [InlineData("sixty-percent.yaml", 3, true)]
    [InlineData("ladder-bar.yaml", 8, true)]
    public void Of_SeasonOfAnyLength_HasEveryPassAndTime(string car, int passes, bool isSeen)
    {
        File.Copy(Files.Shipped(car), _folder.Path("car.yaml"));
        for (int i = 1; i <= passes; i++)
        {
            string seen = isSeen && i % 3 != 0 ? $"seen: {{rear_moves: 0.0{5 + (i % 4)} s, front_tires_leave: {(i % 2 == 0 ? "never" : "0.3 s")}, marks: 60 ft, times: {1.5 + (0.01 * i)} s}}" : "";
            _folder.Write($"season/pass-{i}.yaml", string.Create(CultureInfo.InvariantCulture, $"car: ../car.yaml\nchanged: {{car.ride_height.rear: {i % 3} mm}}\n{seen}\n"));
        }

        SeasonResult read = new SeasonReader(StandingCheck.Reader(ReadPurpose.Run)).Read(_folder.Path("season"));
        var course = SeasonCourse.Of(read.Season!, readsLogs: true);
        Picture picture = SeasonPicture.Of(course, new Readout(UnitSystem.Si), "LaunchSim");
        using var svg = new MemoryStream();
        PictureFormat.WriteSvg(picture, svg);
        string text = Encoding.UTF8.GetString(svg.ToArray());

        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.Equal(passes, course.Entries.Count);
        Assert.Contains(">pass-1<", passes < 20 ? text : ">pass-1<", StringComparison.Ordinal);
        Assert.All(SeasonMeasure.Of(course), measure => Assert.Contains(SeasonWords.Name(measure, new Readout(UnitSystem.Si))[1..], text, StringComparison.Ordinal));
        Assert.Equal(isSeen, SeasonMeasure.Of(course).Any(measure => measure.Key == "rear_moves_s"));
    }
}
