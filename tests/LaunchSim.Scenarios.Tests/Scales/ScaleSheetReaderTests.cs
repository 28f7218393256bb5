using LaunchSim.Scenarios.Scales;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Scales;

public class ScaleSheetReaderTests
{
    private const string Whole = """
        name: Door car, blocked
        wheelbase: 105.5 ±1/8 in
        loaded_radius: {front: 12.6 ±1/8 in, rear: 13.1 in}
        level: {front_left: 790 lb, front_right: 770 lb, rear: 1440 lb}
        """;

    private const string Good = """
        wheelbase: 105.5 ±1/8 in
        loaded_radius: {front: 12.6 ±1/8 in, rear: 13.1 in}
        track: {front: 60 in, rear: 58 in}
        level: {front_left: 790 lb, front_right: 770 lb, rear_left: 735 lb, rear_right: 705 lb}
        lifts:
          - {raised: rear, height: 36 in, left: 810 lb, right: 790 lb}
          - raised: front
            height: 33 ±1/4 in
            standing_height: 12.9 in
            load: 1490 ±2 lb
            raised_load: 1512 lb
        """;

    [Fact]
    public void Read_Sheet_GivesItsNumbersInSi()
    {
        ScaleSheetResult result = ScaleSheetReader.ReadText(Good, "sheet.yaml");
        Assert.Empty(result.Errors);
        ScaleSheet sheet = result.Sheet!;
        Assert.Equal("sheet", sheet.Name);
        Assert.Equal(UnitSystem.Shop, sheet.UnitSystem);
        Assert.Equal(105.5 * 0.0254, sheet.Wheelbase.Value, 1e-12);
        Assert.Equal(0.0254 / 8, sheet.Wheelbase.HalfWidth!.Value, 1e-12);
        Assert.Null(sheet.RearRadius.HalfWidth);
        Assert.Equal("sheet.yaml:1:12", sheet.Wheelbase.Place);
        Assert.Equal(3000 * 4.4482216152605, sheet.Weight, 1e-9);
        Assert.Equal(20 * 4.4482216152605, sheet.Front.LeftLessRight!.Value, 1e-9);
        Assert.Equal(2, sheet.Lifts.Count);
        Assert.False(sheet.Lifts[0].RaisesFront);
        Assert.Equal(2, sheet.Lifts[0].Load.Pads.Count);
        Assert.Equal(12.9 * 0.0254, sheet.Lifts[1].StandingHeight!.Value, 1e-12);
        Assert.Equal(1512 * 4.4482216152605, sheet.Lifts[1].RaisedLoad!.Value, 1e-9);
        Assert.Null(sheet.Lifts[1].Load.LeftLessRight);
    }

    [Theory]
    [InlineData("height: 36 in", "height: 12 in", "sheet.yaml:6:28: error: lifts[0].height: found `12 in`, no higher than on the level (13.1 in)")]
    [InlineData("height: 36 in", "height: 36 m", "`36 m`, nearly as high as the wheelbase is long")]
    [InlineData("height: 36 in", "hieght: 36 in", "did you mean `height`?")]
    [InlineData("left: 810 lb, right: 790 lb", "left: 1810 lb, right: 1790 lb", "all of the car's weight on one axle")]
    [InlineData("left: 810 lb, right: 790 lb", "left: 810 lb, load: 1600 lb", "together")]
    [InlineData("left: 810 lb, right: 790 lb", "left: 810 lb", "no `right`")]
    [InlineData("raised: front", "raised: nose", "front or rear")]
    [InlineData("wheelbase: 105.5 ±1/8 in", "wheelbase: 105.5 ±0 in", "a doubt of nothing")]
    [InlineData("wheelbase: 105.5 ±1/8 in", "wheelbase: 105.5 lb", "a mass")]
    [InlineData("wheelbase: 105.5 ±1/8 in", "wheelbase: -105.5 in", "above 0")]
    public void Read_WrongSheet_SaysWhere(string from, string to, string expected)
    {
        Assert.Contains(from, Good, StringComparison.Ordinal);
        ScaleSheetResult result = ScaleSheetReader.ReadText(Good.Replace(from, to, StringComparison.Ordinal), "sheet.yaml");
        Assert.Null(result.Sheet);
        Assert.Contains(result.Errors, error => error.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_SeveralMistakes_TellsAllOfThem()
    {
        ScaleSheetResult result = ScaleSheetReader.ReadText(Whole, "sheet.yaml");
        string all = string.Join('\n', result.Errors);
        Assert.Contains("together", all, StringComparison.Ordinal);
        Assert.Contains("no `lifts`", all, StringComparison.Ordinal);
        Assert.Contains("no lift", string.Join('\n', ScaleSheetReader.ReadText(Whole.Replace(", rear: 1440 lb}", ", rear_left: 1 lb, rear_right: 2 lb}", StringComparison.Ordinal) + "\nlifts: []", "sheet.yaml").Errors), StringComparison.Ordinal);
        Assert.NotEmpty(ScaleSheetReader.ReadText("", "sheet.yaml").Errors);
        Assert.NotEmpty(ScaleSheetReader.ReadText("- 1", "sheet.yaml").Errors);
        Assert.NotEmpty(ScaleSheetReader.ReadText("a: [", "sheet.yaml").Errors);
        Assert.NotEmpty(ScaleSheetReader.Read("no such file.yaml").Errors);
    }

    [Fact]
    public void ReadOptions_OneLift_IsTheSheet()
    {
        (string, string, string)[] options =
        [
            ("--wheelbase", "wheelbase", "105.5 in"), ("--front-radius", "loaded_radius.front", "12.6 in"), ("--rear-radius", "loaded_radius.rear", "13.1 in"),
            ("--front-scale", "level.front", "1560 lb"), ("--rear-scale", "level.rear", "1440 lb"), ("--raised", "lifts.raised", "rear"), ("--height", "lifts.height", "36 in"), ("--load", "lifts.load", "1600 ±2 lb"),
        ];
        ScaleSheetResult read = ScaleSheetReader.ReadOptions(options);
        Assert.Empty(read.Errors);
        Assert.Equal(1600 * 4.4482216152605, read.Sheet!.Lifts[0].Load.Total, 1e-9);
        Assert.Equal("--load 1600 ±2 lb", read.Sheet.Lifts[0].Load.Pads[0].Place);

        options[^2] = ("--height", "lifts.height", "36 lb");
        Assert.StartsWith("--height 36 lb: error: lifts[0].height: found", ScaleSheetReader.ReadOptions(options).Errors[0].ToString(), StringComparison.Ordinal);
    }
}
