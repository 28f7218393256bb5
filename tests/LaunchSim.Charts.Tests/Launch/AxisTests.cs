using LaunchSim.Charts.Drawing;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Tests.Launch;

public class AxisTests
{
    private static TimeAxis Drawn(double end, double first, double width = 500)
    {
        var axis = new TimeAxis(end, first);
        var plot = new Plot(new TextRecorder(), new OxyRect(50, 20, width, 200), axis, new Extent(0, 1), "");
        plot.Draw();
        return axis;
    }

    [Theory]
    [InlineData(1.8, 1, 1.0)]
    [InlineData(60, 0.6, 0.6)]
    [InlineData(1.25, 1, null)]
    [InlineData(0.05, 1, null)]
    public void TimeAxis_LongRun_SqueezesWhatComesLate(double end, double first, double? from)
    {
        TimeAxis axis = Drawn(end, first);

        Assert.Equal(from, axis.Squeezed);
        Assert.Equal(50, axis.Transform(0), 1e-6);
        Assert.Equal(550, axis.Transform(end), 1e-6);
        if (from is { } instant)
        {
            Assert.Equal(50 + (TimeAxis.FirstShare * 500), axis.Transform(instant), 1e-6);
        }

        for (int i = 0; i <= 100; i++)
        {
            double time = end * i / 100;
            Assert.Equal(time, axis.InverseTransform(axis.Transform(time)), 1e-9 * end);
        }
    }

    [Theory]
    [InlineData(1.8, 1)]
    [InlineData(2.6, 0.6)]
    [InlineData(60, 1)]
    [InlineData(0.05, 1)]
    [InlineData(1e-6, 1)]
    [InlineData(4, 0.6)]
    public void TimeAxis_AnyRun_HasRoundTicksWithRoom(double end, double first)
    {
        TimeAxis axis = Drawn(end, first);
        axis.GetTickValues(out IList<double> ticks, out _, out _);

        Assert.InRange(ticks.Count, 3, 16);
        Assert.Equal(0, ticks[0]);
        double step = ticks[1];
        Assert.Contains(Math.Round(step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9)), 6), new double[] { 1, 2, 5 });
        for (int i = 1; i < ticks.Count; i++)
        {
            Assert.InRange(axis.Transform(ticks[i]) - axis.Transform(ticks[i - 1]), 22, 200);
        }
    }

    [Fact]
    public void Plot_AnyExtent_HasAHandfulOfRoundTicks()
    {
        foreach (double high in new[] { 1e-3, 0.37, 1, 3.3, 47, 812, 25_000 })
        {
            var recorder = new TextRecorder();
            new Plot(recorder, new OxyRect(50, 20, 400, 160), new TimeAxis(1, 1, named: false), new Extent(0, high), "").Draw();
            double[] ticks = [.. recorder.Texts.Select(text => double.Parse(text.Text, System.Globalization.CultureInfo.InvariantCulture))];

            Assert.InRange(ticks.Length, 2, 7);
            double step = ticks[1] - ticks[0];
            Assert.Contains(Math.Round(step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9)), 6), new double[] { 1, 2, 5 });
        }
    }

    [Theory]
    [InlineData(new double[0], 0, 1.12)]
    [InlineData(new[] { 0.0, 0, 0 }, 0, 1.12)]
    [InlineData(new[] { double.NaN, double.PositiveInfinity }, 0, 1.12)]
    [InlineData(new[] { 0, 10.0 }, 0, 11.2)]
    [InlineData(new[] { -10.0, 0 }, -11.2, 0)]
    [InlineData(new[] { -1e-12, 10.0 }, 0, 11.2)]
    [InlineData(new[] { -1e-12, 0.0 }, 0, 1.12)]
    [InlineData(new[] { -0.5, 0.1 }, -1.02, 0.22)]
    public void Extent_AnyValues_HoldsThemAndZero(double[] values, double low, double high)
    {
        var extent = Extent.Of(values, 1);

        Assert.Equal(low, extent.Low, 1e-9);
        Assert.Equal(high, extent.High, 1e-9);
    }

    [Fact]
    public void Name_CurvesNearEachOther_StandsBesideItsOwn()
    {
        var recorder = new TextRecorder();
        var plot = new Plot(recorder, new OxyRect(50, 20, 500, 200), new TimeAxis(1, 1), new Extent(-1, 1), "");
        DataPoint[] Level(double value) => [.. Enumerable.Range(0, 101).Select(i => new DataPoint(i / 100.0, value))];
        Curve upper = plot.Line(Level(0.1), Pen.Rear), lower = plot.Line(Level(0), Pen.Front);
        plot.Draw();
        plot.Name(upper, "upper");
        plot.Name(lower, "lower");

        // No room for a name between the two: one stands above both, the other below both.
        Assert.True(recorder.Texts.Single(text => text.Text == "upper").Area.Bottom < plot.At(0, 0.1).Y);
        Assert.True(recorder.Texts.Single(text => text.Text == "lower").Area.Top > plot.At(0, 0).Y);
    }
}
