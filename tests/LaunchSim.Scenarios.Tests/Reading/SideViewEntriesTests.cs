namespace LaunchSim.Scenarios.Tests.Reading;

public class SideViewEntriesTests
{
    private const string Whole = """
        car: {wheelbase: 105.5 in, scales: {front: 1560 lb, rear: 1440 lb}, cg_height: 21 ±1 in}
        rear:
          linkage:
            type: four-link
            lower: {axle: 1.0 7.6 in, body: 21.0 9-1/8 in}
            upper: {axle: 2.5 17.0 in, body: {holes: {1: 14.0 15.4 in, 2: 14.0 14.6 in}, use: 2}}
        """;

    [Fact]
    public void FindSideView_PartFile_HasEveryPointAsWritten()
    {
        ReadResult result = Read(Whole);

        SideViewEntries entries = result.FindSideView()!;
        Assert.Equal(result.Scenario!.SideView.Points, entries.Points);
        Assert.Equal(["1.0 7.6 in", "21.0 9-1/8 in", "2.5 17.0 in", "14.0 15.4 in", "14.0 14.6 in"], entries.Points.Select(point => point.Text));
        Assert.Equal(["", "", "", "1", "2"], entries.Points.Select(point => point.Hole));
        Assert.Equal([true, true, true, false, true], entries.Points.Select(point => point.IsInUse));
        Assert.Equal(9.125 * 0.0254, entries.Points[1].At.Up, 12);
        Assert.NotNull(entries.Linkage);
        Assert.Empty(entries.NotRead);
        Assert.Contains("car.cg_height", entries.Doubts.Keys);
    }

    [Theory]
    [InlineData("21.0 9-1/8 in", "21.0 9-1/8", "rear.linkage.lower.body", 4)] // no unit
    [InlineData("21.0 9-1/8 in", "21.0 -9 in", "rear.linkage.lower.body", 4)] // below the floor
    [InlineData("14.0 15.4 in,", "14.0 in,", "rear.linkage.upper.body", 3)] // one hole spoils its bracket
    [InlineData("cg_height: 21 ±1 in", "cg_hight: 21 in", "car.cg_height", 5)]
    [InlineData("type: four-link", "type: four-lnk", "rear.linkage.type", 5)]
    public void FindSideView_OneMistake_LosesOnlyThat(string part, string mistake, string lost, int points)
    {
        Assert.Contains(part, Whole, StringComparison.Ordinal);

        ReadResult result = Read(Whole.Replace(part, mistake, StringComparison.Ordinal));

        Assert.Null(result.Scenario);
        SideViewEntries entries = result.FindSideView()!;
        Assert.Equal([lost], entries.NotRead);
        Assert.Equal(points, entries.Points.Count);
        Assert.Equal(105.5 * 0.0254, entries.Wheelbase!.Value, 12);
    }

    [Fact]
    public void FindSideView_PartsSetApart_TellsBoth()
    {
        ReadResult result = new ScenarioReader { Purpose = ReadPurpose.Geometry }.ReadText(Whole, "text", [("rear.linkage.lower.body.up", "230 mm")]);

        EnteredPoint point = result.Scenario!.SideView.Points.Single(point => point.Path == "rear.linkage.lower.body");
        Assert.Equal("21 in ahead, 230 mm up", point.Text);
        Assert.Equal(0.23, point.At.Up, 12);
    }

    [Fact]
    public void FindSideView_NoKeysAtAll_IsNone() => Assert.Null(Read("- one\n- two\n").FindSideView());

    private static ReadResult Read(string text) => new ScenarioReader { Purpose = ReadPurpose.Check }.ReadText(text, "text");
}
