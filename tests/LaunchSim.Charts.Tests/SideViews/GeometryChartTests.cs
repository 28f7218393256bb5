using LaunchSim.Charts.SideViews;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using OxyPlot;
using SkiaSharp;

namespace LaunchSim.Charts.Tests.SideViews;

public class GeometryChartTests
{
    private const string DoorCar = "scenarios/door-car.yaml", Sedan = "scenarios/sixty-percent.yaml";

    [Theory]
    [MemberData(nameof(Shipped.All), MemberType = typeof(Shipped))]
    public void Of_ShippedScenario_AllAreReadable(string path)
    {
        (GeometryReport report, Readout readout) = Shipped.Report(path);

        IReadOnlyList<GeometryChart> charts = GeometryCharts.Of(report, readout);

        Assert.Equal(GeometryCharts.Names, charts.Select(chart => chart.Name));
        Assert.All(charts, chart => Assert.Equal(chart.Picture is null, chart.Lacks.Length > 0));
        foreach (Picture picture in charts.Select(chart => chart.Picture).OfType<Picture>())
        {
            Recorder.Of(picture).IsReadable(picture);
            Assert.NotEmpty(picture.Drawn());
        }
    }

    [Fact]
    public void Drawn_EveryText_LeavesInkWhereItStands()
    {
        (GeometryReport report, Readout readout) = Shipped.Report(DoorCar);
        foreach (Picture picture in GeometryCharts.Of(report, readout).Select(chart => chart.Picture!))
        {
            using var bitmap = SKBitmap.Decode(picture.Drawn());
            double scale = bitmap.Width / picture.Width;
            foreach ((string text, OxyRect area) in Recorder.Of(picture).Texts.Where(text => text.Text.Length > 0))
            {
                int ink = 0;
                for (int x = (int)(area.Left * scale); x < area.Right * scale; x++)
                {
                    for (int y = (int)(area.Top * scale); y < area.Bottom * scale; y++)
                    {
                        ink += bitmap.GetPixel(Math.Min(x, bitmap.Width - 1), Math.Min(y, bitmap.Height - 1)).Green < 160 ? 1 : 0;
                    }
                }

                // A letter of 12 units at two pixels a unit has some 40 dark pixels; a dash or a point far fewer.
                Assert.True(ink >= 12 * text.Count(char.IsLetterOrDigit), $"`{text}` has {ink} dark pixels");
            }
        }
    }

    [Fact]
    public void HoleMap_HundredsOfHoles_AreThinnedAndTheRuleIsTold()
    {
        string Holes(string axis, int count) => $"{{holes: {{{string.Join(", ", Enumerable.Range(0, count).Select(i => FormattableString.Invariant($"n{i}: {axis} {14 + (0.3 * i)} in")))}}}, use: n3}}";
        (GeometryReport report, Readout readout) = Shipped.Report(DoorCar,
            ("rear.linkage.upper.body", Holes("14", 15)), ("rear.linkage.upper.axle", Holes("2.5", 14)));

        Picture picture = HoleMapPicture.Of(report, readout)!;
        Recorder recorder = Recorder.Of(picture);

        recorder.IsReadable(picture);
        Assert.Contains(recorder.Texts, text => text.Text.Contains("have no name for want of room", StringComparison.Ordinal));
        Assert.Contains(recorder.Texts, text => text.Text.StartsWith("n3 / n3, now", StringComparison.Ordinal));
    }

    [Fact]
    public void HoleMap_ChoicesOnOneLineThroughTheContactPatch_HaveTheSamePercent()
    {
        (GeometryReport report, _) = Shipped.Report("scenarios/ladder-bar.yaml");

        Assert.All(report.Holes, row => Assert.Equal(
            row.Line!.Percent, 100 * row.Line.InstantCentreUp / row.Line.InstantCentreAhead / report.View.Line.NeutralSlope, 9));
    }

    [Fact]
    public void Doubt_OfTheCentreOfGravityAlone_LeavesTheInstantCentre()
    {
        (GeometryReport report, _) = Shipped.Report(Sedan);

        GeometryDoubt doubt = GeometryDoubt.Of(report.Scenario)!;

        // The standing car's tyres carry a changed height of the centre of gravity the same way: only rounding is left.
        Assert.False(doubt.MovesInstantCentre);
        Assert.All(doubt.Lines, line => Assert.Equal(report.View.Line.InstantCentreAhead, line.InstantCentreAhead, 4));

        // Percent goes with 1/h: 0.03 m of 0.56 m, nineteen times in twenty. 400 draws put the edges within a fifth of the width.
        double percent = report.View.Line.Percent, height = report.View.CentreOfGravityHeight;
        Assert.Equal(percent * height / (height + 0.03), doubt.LowPercent, 0.2 * (percent - doubt.LowPercent));
        Assert.Equal(percent * height / (height - 0.03), doubt.HighPercent, 0.2 * (doubt.HighPercent - percent));
    }

    [Fact]
    public void Doubt_OfABarsEnd_MovesTheInstantCentreAndAgreesWithTheSensitivity()
    {
        const double Half = 0.002;
        (GeometryReport report, _) = Shipped.Report(Sedan, ("car.cg_height", "0.56 m"), ("rear.linkage.upper.body", "420 405 ±2 mm"));

        GeometryDoubt doubt = GeometryDoubt.Of(report.Scenario)!;

        double perMetre = report.Ends.Single(end => end.Point == LinkagePoint.UpperBody).PercentUp / report.EndStep;
        Assert.True(doubt.MovesInstantCentre);
        Assert.Equal(2 * Math.Abs(perMetre) * Half, doubt.HighPercent - doubt.LowPercent, 0.25 * Math.Abs(perMetre) * Half);
    }

    [Fact]
    public void Doubt_NoneEntered_IsNone() => Assert.Null(GeometryDoubt.Of(Shipped.Read(DoorCar)));

    [Fact]
    public void Travel_WholeCar_EndsAtTheDampersStops()
    {
        (GeometryReport report, _) = Shipped.Report(DoorCar);

        TravelCourse course = TravelCourse.Of(report)!;

        StandingCar standing = StandingCar.Find(report.Scenario.Car!);
        foreach ((double way, double wanted) in new[] { (course.Top!.Value, standing.Model.TopLength), (course.Bottom!.Value, standing.Model.BottomLength) })
        {
            // The body as much higher by Newton's method of our own: one step of the secant is not enough, a few are.
            standing.Map.Pose(standing.Standing.Lambda, out LinkagePose at);
            double height = at.Z, lambda = standing.Standing.Lambda;
            (double sin, double cos) = Math.SinCos(standing.Standing.Pitch);
            double start = (sin * at.X) + (cos * at.Z);
            for (int i = 0; i < 50; i++)
            {
                standing.Map.Pose(lambda, out at);
                lambda -= ((sin * at.X) + (cos * at.Z) - (start - way)) / ((sin * at.X1) + (cos * at.Z1));
            }

            standing.Map.Pose(lambda, out at);
            standing.Model.Damper.At(at, out double length, out _, out _, out _);
            Assert.NotEqual(height, at.Z);
            Assert.Equal(wanted, length, 6);
        }
    }

    [Fact]
    public void Travel_PartFile_HasNoPicture()
    {
        (GeometryReport report, Readout readout) = Shipped.Report("tests/LaunchSim.Cli.Tests/Scenarios/part.yaml");

        Assert.Null(TravelPicture.Of(report, readout));
        Assert.Contains("loaded_radius", GeometryCharts.Of(report, readout)[^1].Lacks, StringComparison.Ordinal);
    }
}
