using LaunchSim.Geometry;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Reports.Tests.Words;

public class StaticLineWordsTests
{
    private const double Degree = Math.PI / 180;

    private static string Of(double percent, double ahead, double up, params BarAngle[] bars) =>
        StaticLineWords.Of(new StaticLine(percent, 0, ahead, up, 0, 0.2, bars), 2.7, new Readout(UnitSystem.Si));

    [Fact]
    public void Of_CentreBehindAndBelow_SaysSo() =>
        Assert.Equal("-20 %, instant centre 500 mm behind and 30 mm below the ground, lower bar falls 2.0°, upper is level",
            Of(-20, -0.5, -0.03, new BarAngle("lower bar", -2 * Degree, 0.5), new BarAngle("upper bar", 1e-9, 0.3)));

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NaN)]
    [InlineData(-1e6)]
    public void Of_ParallelBars_SaysThatTheCentreIsFarAway(double ahead) =>
        Assert.StartsWith("35 %, bars parallel or nearly so: the instant centre is far away, lower bar climbs 4.0°", Of(35, ahead, 1, new BarAngle("lower bar", 4 * Degree, 0.5)), StringComparison.Ordinal);

    [Fact]
    public void Of_ContactPointThatMovesLevel_HasNoPercent() =>
        Assert.StartsWith("no percent", Of(double.NegativeInfinity, 0, 0.3), StringComparison.Ordinal);

    [Theory]
    [InlineData(0, "10.00 in, as now")]
    [InlineData(0.03, "10.00 in, as now")]
    [InlineData(0.19, "10.00 in, 3/16 in longer")]
    [InlineData(-0.25, "10.00 in, 1/4 in shorter")]
    [InlineData(1.5, "10.00 in, 1-1/2 in longer")]
    [InlineData(-2, "10.00 in, 2 in shorter")]
    public void BarLength_InShopUnits_IsToTheNearestSixteenth(double change, string words) =>
        Assert.Equal(words, BarLengthWords.Of(new BarChange("upper bar", 0.254, change * 0.0254), new Readout(UnitSystem.Shop)));

    [Fact]
    public void BarLength_InSi_IsInMillimetres() =>
        Assert.Equal("254.0 mm, 4.8 mm shorter", BarLengthWords.Of(new BarChange("upper bar", 0.254, -0.0048), new Readout(UnitSystem.Si)));

    [Theory]
    [InlineData(-0.0001, "0.0 mm")]
    [InlineData(0.0123, "12.3 mm")]
    [InlineData(-0.0123, "-12.3 mm")]
    public void Number_AnyValue_HasAPointAndNoNegativeZero(double value, string text) =>
        Assert.Equal(text, new Readout(UnitSystem.Si).Travel.Text(value == -0.0001 ? -0.00001 : value));
}
