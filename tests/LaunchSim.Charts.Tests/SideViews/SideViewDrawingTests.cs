using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Tests.SideViews;

public class SideViewDrawingTests
{
    private const string DoorCar = "scenarios/door-car.yaml", Part = "tests/LaunchSim.Cli.Tests/Scenarios/part.yaml";
    private static readonly OxyRect Area = new(0, 0, 1144, 420);
    private static readonly Readout Shop = new(UnitSystem.Shop);

    [Fact]
    public void Draw_SideView_IsToScale()
    {
        Scenario scenario = Shipped.Read(DoorCar);
        var scene = SideViewScene.Of(scenario);

        Projection projection = SideViewDrawing.Draw(new Recorder(), Area, scene, Shop).Projection;

        ScreenPoint rear = projection.At(0, 0), front = projection.At(scene.Wheelbase!.Value, 0), centre = projection.At(scene.CentreOfGravity!.Value);
        Assert.Equal(scene.CentreOfGravity.Value.Up / scene.Wheelbase.Value, (rear.Y - centre.Y) / (front.X - rear.X), 12);
    }

    [Fact]
    public void Draw_NeutralLine_IsLongDashedInTheTextColourAndReachesTheHeightOfTheCentreOfGravity()
    {
        var scene = SideViewScene.Of(Shipped.Read(DoorCar));
        var recorder = new Recorder();

        Projection projection = SideViewDrawing.Draw(recorder, Area, scene, Shop).Projection;

        var neutral = Assert.Single(recorder.Lines, line => ReferenceEquals(line.Dash, Theme.LongDash));
        Assert.Equal(Theme.Ink, neutral.Color);
        Assert.Equal(0, neutral.Points[0].DistanceTo(projection.At(0, 0)), 9);
        Assert.Equal(0, neutral.Points[1].DistanceTo(projection.At(scene.Wheelbase!.Value, scene.CentreOfGravity!.Value.Up)), 9);
    }

    [Fact]
    public void Of_StandingCarWithoutChanges_PutsPointsWhereTheyWereEntered()
    {
        Scenario scenario = Shipped.Read(DoorCar, ("car.ballast[0].mass", "0 lb"));

        var standing = SideViewScene.Of(scenario);
        var entered = SideViewScene.AsEntered(scenario.SideView);

        Assert.True(standing.IsStanding);
        Assert.False(entered.IsStanding);
        Assert.Equal(entered.Holes.Count, standing.Holes.Count);
        IEnumerable<Point?> All(SideViewScene scene) => scene.Bars.SelectMany(bar => new[] { bar.Axle, bar.Body })
            .Concat(scene.Holes.Select(hole => (Point?)hole.At)).Concat(scene.Units.SelectMany(unit => new Point?[] { unit.Axle, unit.Body }))
            .Append(scene.CentreOfGravity).Append(scene.WheelieBar).Append(scene.RearWheel!.Centre).Append(scene.FrontWheel!.Centre);
        Assert.All(All(standing).Zip(All(entered)), pair =>
        {
            Assert.Equal(pair.Second!.Value.Ahead, pair.First!.Value.Ahead, 9);
            Assert.Equal(pair.Second.Value.Up, pair.First.Value.Up, 9);
        });
    }

    [Theory]
    [InlineData("scenarios/door-car-rear-raised.yaml")]
    [InlineData("scenarios/sixty-percent.yaml")]
    [InlineData("scenarios/wheelstand.yaml")]
    public void Of_StandingCar_BarsMeetInItsInstantCentre(string path)
    {
        var scene = SideViewScene.Of(Shipped.Read(path));

        // Two lines through two points each, intersected: independent of the linkage's velocity map.
        Point a = scene.Bars[0].Axle!.Value, b = scene.Bars[0].Body!.Value, c = scene.Bars[1].Axle!.Value, d = scene.Bars[1].Body!.Value;
        double x1 = b.Ahead - a.Ahead, z1 = b.Up - a.Up, x2 = d.Ahead - c.Ahead, z2 = d.Up - c.Up;
        double share = (((c.Ahead - a.Ahead) * z2) - ((c.Up - a.Up) * x2)) / ((x1 * z2) - (z1 * x2));
        Assert.Equal(scene.Line!.InstantCentreAhead, a.Ahead + (share * x1), 9);
        Assert.Equal(scene.Line.InstantCentreUp, a.Up + (share * z1), 9);
    }

    [Fact]
    public void Draw_HoleInUse_IsAtTheBarsEnd()
    {
        var scene = SideViewScene.Of(Shipped.Read(DoorCar));

        SceneHole used = Assert.Single(scene.Holes, hole => hole.IsInUse);
        Assert.Equal("2", used.Name);
        Assert.Equal(scene.Bars.Single(bar => bar.Name == "upper bar").Body, used.At);
    }

    [Theory]
    [InlineData("14.0 17.2 in", "outside the picture")] // all but parallel: far ahead
    [InlineData("12.5 17.7 in", "parallel")]
    [InlineData("12.5 18.4 in", "behind the axle")]
    public void Draw_InstantCentreFarOrBehind_IsSaidAndTheCarStaysLarge(string upper, string words)
    {
        var scene = SideViewScene.Of(Shipped.Read(DoorCar, ("rear.linkage.upper.body", $"{{holes: {{a: {upper}}}, use: a}}")));

        DrawnSideView drawn = SideViewDrawing.Draw(new Recorder(), Area, scene, Shop);

        Assert.Contains(drawn.Labels.Placed, label => label.Text.Contains(words, StringComparison.Ordinal));
        Assert.True(drawn.Projection.Scale * scene.Wheelbase > 0.35 * Area.Width);
    }

    [Fact]
    public void Draw_PartFile_HasMarksInThePlaceOfTyres()
    {
        var scene = SideViewScene.Of(Shipped.Read(Part));

        DrawnSideView drawn = SideViewDrawing.Draw(new Recorder(), Area, scene, new Readout(UnitSystem.Si));

        Assert.Null(scene.RearWheel);
        Assert.Contains(drawn.Labels.Placed, label => label.Text.Contains("height not in the file", StringComparison.Ordinal));
    }

    [Fact]
    public void EnteredPicture_MistypedPoint_ShowsWhatWasWrittenAtTheEdge()
    {
        ReadResult result = StandingCheck.Reader(ReadPurpose.Check).ReadText(
            """
            car: {wheelbase: 105.5 in, scales: {front: 1560 lb, rear: 1440 lb}, cg_height: 21 in}
            rear:
              linkage:
                type: four-link
                lower: {axle: 1.0 7.6 in, body: 2100 9-1/8 in}
                upper: {axle: 2.5 17.0 inn, body: 14.0 14.6 in}
            """,
            "text");

        Assert.Null(result.Scenario);
        SideViewEntries entries = result.FindSideView()!;
        Picture picture = EnteredPicture.Of(entries, "text", Shop)!;
        Recorder recorder = Recorder.Of(picture);
        Assert.Contains(recorder.Texts, text => text.Text.Contains("2100 9-1/8 in: outside the picture", StringComparison.Ordinal));
        Assert.Contains(recorder.Texts, text => text.Text.Contains("Not there or refused: rear.linkage.upper.axle", StringComparison.Ordinal));
        Assert.Contains("cannot be worked out", picture.Title, StringComparison.Ordinal);
        recorder.IsReadable(picture);
    }

    [Fact]
    public void EnteredPicture_NothingRead_IsNone() =>
        Assert.Null(EnteredPicture.Of(new SideViewEntries(), "nothing", Shop));
}
