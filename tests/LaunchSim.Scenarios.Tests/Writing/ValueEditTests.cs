using CsCheck;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Scenarios.Tests.Writing;

public class ValueEditTests
{
    private static readonly (string, string)[] Scaled =
    [
        ("car.wheelbase", "105.6 ±0.1 in"), ("car.scales.front", "1550 ±3 lb"), ("car.scales.rear", "1450 ±3 lb"), ("car.cg_height", "20.4 ±0.6 in"),
    ];

    [Fact]
    public void Apply_CommentedFile_ChangesNothingButTheValues()
    {
        string text = "# mine\r\n" + Samples.Part.ReplaceLineEndings("\r\n")
            .Replace("21 ±1 in", "'21 ±1 in'   # guessed, camshaft", StringComparison.Ordinal)
            .Replace("wheelbase: 105.5 in", "wheelbase:   105.5 in # tape", StringComparison.Ordinal);
        ValueEditResult result = ValueEdit.Apply(text, "a.yaml", ".", Scaled);
        Assert.Empty(result.Errors);
        string expected = text.Replace("'21 ±1 in'", "20.4 ±0.6 in", StringComparison.Ordinal).Replace("105.5 in", "105.6 ±0.1 in", StringComparison.Ordinal)
            .Replace("1560 lb", "1550 ±3 lb", StringComparison.Ordinal).Replace("1440 lb", "1450 ±3 lb", StringComparison.Ordinal);
        Assert.Equal(expected, result.Text);
        Assert.Equal(["car.wheelbase", "car.scales.front", "car.scales.rear", "car.cg_height"], result.Changes.Select(change => change.Path));
        Assert.Equal(new ValueChange("car.cg_height", 5, "21 ±1 in", "20.4 ±0.6 in"), result.Changes[^1]);
    }

    [Fact]
    public void Apply_DoorCar_OnlyTheseLinesDiffer()
    {
        string text = File.ReadAllText(Files.DoorCar);
        ValueEditResult result = ValueEdit.Apply(text, Files.DoorCar, Path.GetDirectoryName(Files.DoorCar)!, Scaled);
        Assert.Empty(result.Errors);
        string[] before = text.Split('\n'), after = result.Text!.Split('\n');
        Assert.Equal(before.Length, after.Length);
        Assert.Equal(result.Changes.Select(change => change.Line).Distinct().Order(), Enumerable.Range(0, before.Length).Where(i => before[i] != after[i]).Select(i => i + 1));
        Assert.Equal("20.4 ±0.6 in", new ScenarioReader().ReadText(result.Text, "a.yaml").Scenario!.Find("car.cg_height")!.ToString());
    }

    [Fact]
    public void Apply_ValueThatStandsThere_IsNoChange()
    {
        ValueEditResult result = ValueEdit.Apply(Samples.Part, "a.yaml", ".", [("car.cg_height", "21 ±1 in")]);
        Assert.Equal(Samples.Part, result.Text);
        Assert.Empty(result.Changes);
    }

    [Fact]
    public void Apply_Variant_ChangesItsOwnLinesOnly()
    {
        string folder = Path.GetDirectoryName(Files.DoorCar)!;
        const string Variant = "base: door-car.yaml\nchange:\n  car.cg_height: 22 in # high\n";
        ValueEditResult own = ValueEdit.Apply(Variant, "v.yaml", folder, [("car.cg_height", "20.4 ±0.6 in")]);
        Assert.Equal("base: door-car.yaml\nchange:\n  car.cg_height: 20.4 ±0.6 in # high\n", own.Text);

        ValueEditResult inBase = ValueEdit.Apply(Variant, "v.yaml", folder, Scaled);
        Assert.Null(inBase.Text);
        Assert.Contains("v.yaml:1:1: error: car.wheelbase: found no `car.wheelbase` under `change`: it stands in `door-car.yaml:", inBase.Errors[0].ToString(), StringComparison.Ordinal);
        Assert.Contains("name that file", inBase.Errors[0].Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("car.cg_height", "20 lb", "a mass")]
    [InlineData("car.cg_height", "-1 in", "above 0")]
    [InlineData("car.scales", "1 lb", "one value is to be replaced")]
    [InlineData("car.ride_height.front", "1 in", "no `car.ride_height.front`")]
    public void Apply_WhatDoesNotFit_IsRefused(string path, string value, string expected)
    {
        ValueEditResult result = ValueEdit.Apply(Samples.Part, "a.yaml", ".", [(path, value)]);
        Assert.Null(result.Text);
        Assert.Contains(result.Errors, error => error.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Apply_ValueOverSeveralLines_IsRefused()
    {
        string text = Samples.Part.Replace("cg_height: 21 ±1 in", "cg_height: >\n    21 ±1\n    in", StringComparison.Ordinal);
        ValueEditResult result = ValueEdit.Apply(text, "a.yaml", ".", [("car.cg_height", "20 in")]);
        Assert.Null(result.Text);
        Assert.Contains("one line", result.Errors[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_FileWithErrors_TellsThem() =>
        Assert.NotEmpty(ValueEdit.Apply(Samples.Part.Replace("105.5 in", "105.5", StringComparison.Ordinal), "a.yaml", ".", Scaled).Errors);

    [Fact]
    public void Apply_AnyNumbers_ReadBackAsThey() => Gen.Select(Gen.Double[10, 40], Gen.Double[0.001, 3], Gen.Bool).Sample((height, doubt, isQuoted) =>
    {
        string value = FormattableString.Invariant($"{height:R} ±{doubt:R} in");
        string text = isQuoted ? Samples.Part.Replace("21 ±1 in", "\"21 ±1 in\"", StringComparison.Ordinal) : Samples.Part;
        ValueEditResult result = ValueEdit.Apply(text, "a.yaml", ".", [("car.cg_height", value)]);
        Assert.Empty(result.Errors);
        Scenario read = new ScenarioReader { Purpose = ReadPurpose.Geometry }.ReadText(result.Text!, "a.yaml").Scenario!;
        Assert.Equal(height * 0.0254, read.Find("car.cg_height")!.Si(), 1e-12);
        Assert.Equal(doubt * 0.0254, read.Doubts["car.cg_height"].HalfWidth, 1e-12);
    });
}
