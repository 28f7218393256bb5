using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Recorded;

public class MappingReaderTests
{
    private static readonly RecordedQuantity[] Quantities =
    [
        new("rear_ride_height", "rear ride height", QuantityKind.Length),
        new("driveshaft_speed", "driveshaft speed", QuantityKind.AngularSpeed) { Driveline = true },
        new("wheel_speed", "rear wheel speed", QuantityKind.AngularSpeed) { Rolls = true },
        new("acceleration", "acceleration", QuantityKind.Acceleration),
    ];

    private const string Whole = """
        name: Dash logger
        table: {separator: semicolon, decimal: comma, comment: "#", header_line: 14, missing: -999 n/a}
        time: {column: Time, unit: ms, release: 12.4 ±0.02 s}
        columns:
          - {column: Rear RH, quantity: rear_ride_height, unit: mm, scale: 2, zero: 118 mm, reversed: yes, noise: 0.5 mm}
          - {column: DS, quantity: driveshaft_speed, unit: rpm, ratio: 4.10}
          - {column: WS, quantity: wheel_speed, unit: mph, radius: 13 in}
          - {column: "#7", quantity: acceleration, unit: g}
        parallax: {doubt: 3 %, note: none}
        """;

    [Fact]
    public void ReadText_WholeMapping_GivesEveryValueInSi()
    {
        LogMapping mapping = Read(Whole).Mapping!;

        Assert.Equal((';', true, '#', 14), (mapping.Table.Separator, mapping.Table.DecimalComma, mapping.Table.Comment, mapping.Table.HeaderLine));
        Assert.Equal(["-999", "n/a"], mapping.Table.Missing);
        TimeColumn clock = Assert.IsType<TimeColumn>(mapping.Clock);
        Assert.Equal(("Time", 1e-3, 12.4), (clock.Column, clock.Seconds, clock.Release!.Value));
        Assert.Equal(0.02, clock.ReleaseDoubt!.Value, 1e-12);
        LogColumn height = mapping.Columns[0], wheel = mapping.Columns[2];
        Assert.Equal(-0.002, height.Factor, 1e-12);
        Assert.Equal(0.118, height.Zero!.Value, 1e-12);
        Assert.Equal(0.0005, height.Noise!.Value, 1e-12);
        Assert.Equal(4.1, mapping.Columns[1].Ratio!.Value, 1e-12);
        Assert.True(wheel.IsRolling);
        Assert.Equal(0.44704, wheel.Factor, 1e-12);
        Assert.Equal(0.3302, wheel.Radius!.Value, 1e-12);
        Assert.Equal(0.03, mapping.ParallaxDoubt, 1e-12);
    }

    [Fact]
    public void ReadText_FramesAndPixels_CountDownwardUnlessSaidOtherwise()
    {
        LogMapping mapping = Read("""
            time: {frame: Frame, frames_per_second: 240, release_frame: 96 ±1}
            columns:
              - {column: y, quantity: rear_ride_height, pixel: 2.0 ±0.1 mm}
              - {column: z, quantity: rear_ride_height, pixel: 2.0 mm, rows: up}
            """).Mapping!;

        FrameColumn clock = Assert.IsType<FrameColumn>(mapping.Clock);
        Assert.Equal(0.4, clock.Release!.Value, 1e-12);
        Assert.Equal(1 / 240.0, clock.ReleaseDoubt!.Value, 1e-12);
        Assert.Equal([-0.002, 0.002], mapping.Columns.Select(column => column.Factor));
        Assert.Equal(0.05, mapping.Columns[0].PixelDoubt, 1e-12);
    }

    [Theory]
    [InlineData("quantity: rear_ride_height", "quantiy: rear_ride_height", 5, "did you mean `quantity`?")]
    [InlineData("unit: ms", "unit: msec", 3, "did you mean `ms`?")]
    [InlineData("quantity: rear_ride_height", "quantity: rear_ride_hight", 5, "did you mean `rear_ride_height`?")]
    [InlineData("unit: mm, scale", "unit: MM, scale", 5, "did you mean `mm`?")]
    [InlineData("unit: mm, scale", "unit: V, scale", 5, "volts are not a length")]
    [InlineData("unit: mm, scale", "unit: psi, scale", 5, "the unit of a pressure")]
    [InlineData("unit: mm, scale", "unit: psi, scale", 5, "write the unit in which the column's numbers are")]
    [InlineData("unit: mm, scale", "scale", 5, "unit")]
    [InlineData("zero: 118 mm", "zero: 118", 5, "without a unit")]
    [InlineData("noise: 0.5 mm", "noise: 0 mm", 5, "above 0")]
    [InlineData("scale: 2", "scale: -2", 5, "above 0")]
    [InlineData("unit: rpm, ratio: 4.10", "unit: rpm, ratio: 4.10, radius: 13 in", 6, "a rolling radius at driveshaft speed")]
    [InlineData("scale: 2, zero", "ratio: 4, zero", 5, "a ratio at rear ride height")]
    [InlineData("column: DS", "column: Rear RH", 6, "a second time")]
    [InlineData("separator: semicolon", "separator: comma", 2, "a comma both between cells and before decimals")]
    [InlineData("comment: \"#\"", "comment: \"##\"", 2, "one character")]
    [InlineData("header_line: 14", "header_line: 14, header: none", 2, "a header that there is none of")]
    [InlineData("doubt: 3 %", "doubt: 90 %", 9, "0 to 50 %")]
    public void ReadText_OneMistake_IsToldWithItsPlaceAndMend(string right, string wrong, int line, string said)
    {
        Assert.Contains(right, Whole, StringComparison.Ordinal);
        MappingResult read = Read(Whole.Replace(right, wrong, StringComparison.Ordinal));

        Assert.Null(read.Mapping);
        Diagnostic error = Assert.Single(read.Errors);
        Assert.Equal(line, error.Line);
        Assert.True(error.Column > 0);
        Assert.Contains(said, error.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(error.Mend);
    }

    [Fact]
    public void ReadText_SeveralMistakes_AreAllToldAtOnce()
    {
        MappingResult read = Read(Whole.Replace("unit: ms", "unit: msec", StringComparison.Ordinal).Replace("quantity: acceleration", "quantity: accel", StringComparison.Ordinal).Replace("separator: semicolon", "separator: ;;", StringComparison.Ordinal));

        Assert.Equal([2, 3, 8], read.Errors.Select(error => error.Line));
    }

    [Theory]
    [InlineData("")]
    [InlineData("- a\n- b\n")]
    [InlineData("time: {rate: 200 Hz}\ncolumns: []\n")]
    [InlineData("time: {rate: 200 Hz}\n")]
    [InlineData("columns:\n  - {column: a, quantity: acceleration, unit: g}\n")]
    [InlineData("time: {rate: 0 Hz}\ncolumns:\n  - {column: a, quantity: acceleration, unit: g}\n")]
    [InlineData("time: {rate: 200 Hz, column: t, unit: s}\ncolumns:\n  - {column: a, quantity: acceleration, unit: g}\n")]
    public void ReadText_MappingOfNothing_IsRefused(string text)
    {
        MappingResult read = Read(text);

        Assert.Null(read.Mapping);
        Assert.All(read.Errors, error => Assert.NotEmpty(error.Mend));
        Assert.NotEmpty(read.Errors);
    }

    private static MappingResult Read(string text) => new MappingReader(Quantities).ReadText(text, "mapping.yaml");
}
