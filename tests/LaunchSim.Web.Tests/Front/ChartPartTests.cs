using System.Globalization;
using System.Text.RegularExpressions;

namespace LaunchSim.Web.Tests.Front;

/// <summary>What charts are made of, where it can be told without a browser: values between samples, numbers at axes, lines.</summary>
public class ChartPartTests
{
    // A plane of 100 × 100 px over one second and values 0 to 10.
    private const string Plane = "plane.createPlane({ left: 0, top: 0, right: 100, bottom: 100 }, { from: 0, to: 1 }, { low: 0, high: 10 })";

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.15, 2.5)]
    [InlineData(0.2, 9)]
    [InlineData(0.4, 11)]
    public void Value_OnSamplesWithAJump_LiesBetweenThemAndAtTheJumpBehindIt(double time, double value)
    {
        using var script = new FrontScript("charts/sample.js");
        Assert.Equal(value, script.Number($"tested.valueAt(new Float64Array([0, 0.1, 0.2, 0.2, 0.4]), new Float64Array([1, 2, 3, 9, 11]), {FrontScript.Of(time)})"), 1e-12);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(0.41)]
    [InlineData(0.25)]
    public void Value_OutsideOfTheSamplesOrInAGap_IsNone(double time)
    {
        using var script = new FrontScript("charts/sample.js");
        Assert.True(double.IsNaN(script.Number($"tested.valueAt(new Float64Array([0, 0.1, 0.2, 0.3, 0.4]), new Float64Array([1, 2, 3, NaN, 5]), {FrontScript.Of(time)})")));
    }

    [Fact]
    public void Index_OfAnyInstantOnUnevenSamples_IsThatOfTheLastSampleAtOrBeforeIt()
    {
        var random = new Random(1);
        double[] times = [.. Enumerable.Range(0, 200).Select(_ => random.NextDouble()).Order()];
        using var script = new FrontScript("charts/sample.js");
        script.Execute($"const times = new Float64Array([{string.Join(',', times.Select(FrontScript.Of))}]);");
        for (int i = 0; i < 500; i++)
        {
            double time = (1.2 * random.NextDouble()) - 0.1;
            Assert.Equal(Array.FindLastIndex(times, sample => sample <= time), script.Number($"tested.indexAt(times, {FrontScript.Of(time)})"));
        }
    }

    [Fact]
    public void Ticks_OfAnySpan_AreRoundNumbersWithinItThatTheirTextsGive()
    {
        var random = new Random(2);
        using var script = new FrontScript("charts/ticks.js");
        for (int i = 0; i < 300; i++)
        {
            double length = Math.Pow(10, (8 * random.NextDouble()) - 3), low = length * ((4 * random.NextDouble()) - 3), high = low + length;
            int most = random.Next(2, 12);
            script.Execute($"globalThis.ticks = tested.ticksOf({FrontScript.Of(low)}, {FrontScript.Of(high)}, {most});");
            double[] values = script.Numbers("ticks.values"), texts = script.Numbers("ticks.texts.map(Number)");
            Assert.InRange(values.Length, 1, (2 * most) + 1);
            Assert.All(values, value => Assert.InRange(value, low - (1e-6 * length), high + (1e-6 * length)));
            Assert.Equal(values, texts, Near.To(1e-9 * Math.Max(Math.Abs(low), Math.Abs(high))));
            if (values.Length > 1)
            {
                double step = values[1] - values[0], digit = step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9));
                Assert.Contains(new[] { 1.0, 2, 5 }, allowed => Math.Abs(digit - allowed) < 1e-6);
            }
        }
    }

    [Fact]
    public void Line_OfManyMoreSamplesThanPixels_KeepsPeaksInTwoPointsAPixel()
    {
        using var script = With("charts/paths.js");
        script.Execute("const times = Float64Array.from({ length: 20001 }, (_, i) => i / 20000), values = times.map((time, i) => (i === 12345 ? 9.5 : i === 4321 ? 0.5 : 5 + Math.sin(40 * time)));");
        (double X, double Y)[] points = Points(script.Text($"tested.linePath(times, values, {Plane})"));
        Assert.InRange(points.Length, 100, 210);
        Assert.Equal(5, points.Min(point => point.Y), 0.06);
        Assert.Equal(95, points.Max(point => point.Y), 0.06);
        Assert.True(points.Zip(points.Skip(1)).All(pair => pair.First.X <= pair.Second.X));
    }

    [Theory]
    [InlineData(101)]
    [InlineData(20001)]
    public void Line_WithAGap_IsPartedThere(int samples)
    {
        using var script = With("charts/paths.js");
        script.Execute($"const times = Float64Array.from({{ length: {samples} }}, (_, i) => i / {samples - 1}), values = times.map((time) => (time > 0.4 && time < 0.6 ? NaN : 5));");
        string path = script.Text($"tested.linePath(times, values, {Plane})");
        Assert.Equal(2, path.Count(letter => letter == 'M'));
        Assert.DoesNotContain("NaN", path, StringComparison.Ordinal);
        Assert.DoesNotContain(Points(path), point => point.X is > 40.5 and < 59.5);
    }

    [Fact]
    public void Line_WithoutAnyValue_IsNone()
    {
        using var script = With("charts/paths.js");
        Assert.Equal("", script.Text($"tested.linePath(new Float64Array([0, 1]), new Float64Array([NaN, NaN]), {Plane})"));
        Assert.Equal("", script.Text($"tested.linePath(new Float64Array(0), new Float64Array(0), {Plane})"));
    }

    [Theory]
    [InlineData("[5, 5]", "zero: true", 0, 5.6)]
    [InlineData("[-3, 7]", "", -4.2, 8.2)]
    [InlineData("[NaN, NaN]", "least: 50", 0, 50)]
    [InlineData("[0, 1e-9]", "zero: true, least: 20", 0, 22.4)]
    [InlineData("[0, -1]", "zero: true, least: 20", -22.4, 0)]
    public void Extent_OfSomeValues_HoldsThemWithRoomForNames(string values, string more, double low, double high)
    {
        using var script = new FrontScript("charts/extent.js");
        script.Execute($"const extent = tested.extentOf({{ decimals: 3, curves: [{{ times: new Float64Array([0, 1]), values: new Float64Array({values}) }}], {more} }}, 0, 1);");
        Assert.Equal([low, high], script.Numbers("[extent.low, extent.high]"), Near.To(1e-9));
    }

    private static FrontScript With(string entry)
    {
        var script = new FrontScript(entry);
        script.Add("plane", "charts/plane.js");
        return script;
    }

    private static (double X, double Y)[] Points(string path) =>
        [.. Regex.Matches(path, @"[ML](-?[\d.]+) (-?[\d.]+)").Select(match => (Parsed(match.Groups[1].Value), Parsed(match.Groups[2].Value)))];

    private static double Parsed(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
