using LaunchSim.Charts.Studies;

namespace LaunchSim.Charts.Tests.Studies;

public class SweepChartTests
{
    /// <summary>Whatever is drawn can be read: names and numbers of any length, holes and failures anywhere, flat and wild values.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Picture_OfRandomSweeps_IsReadable(int settings)
    {
        var random = new Random(settings);
        for (int i = 0; i < 60; i++)
        {
            Picture picture = SweepChart.Of(View(random, settings));
            Recorder.Of(picture).IsReadable(picture);
        }
    }

    [Fact]
    public void Map_OfAPlane_HasStraightLinesOfEqualValue()
    {
        double[] places = [0, 10, 20, 30];
        var relief = new Relief(places, places, (i, j) => places[i] + (2 * places[j]));
        IReadOnlyList<OxyPlot.ScreenPoint> line = Assert.Single(relief.Lines(35));
        Assert.All(line, point => Assert.Equal(35, point.X + (2 * point.Y), 1e-9));

        // What lies between two heights has the area that it should have: here the whole of it.
        double area = relief.Between(double.MinValue, double.MaxValue).Sum(Area);
        Assert.Equal(900, area, 1e-9);
        Assert.Equal(area, relief.Between(double.MinValue, 35).Sum(Area) + relief.Between(35, double.MaxValue).Sum(Area), 1e-9);
    }

    [Fact]
    public void Relief_WithAHole_LeavesTheCellsAroundItOpen()
    {
        double[] places = [0, 10, 20, 30, 40];
        var relief = new Relief(places, places, (i, j) => i == 2 && j == 2 ? double.NaN : 1);
        Assert.Equal(1600 - (4 * 50), relief.Between(double.MinValue, double.MaxValue).Sum(Area), 1e-9);
    }

    [Theory]
    [InlineData(0, 0, 2)]
    [InlineData(-0.001, 0.0012, 4)]
    [InlineData(41, 62, 0)]
    [InlineData(-1e5, 3e6, 0)]
    [InlineData(99.99, 100.01, 2)]
    public void Levels_HoldAllValuesInAtMostTenBands(double low, double high, int decimals)
    {
        var levels = new Levels([low, high], decimals);
        Assert.InRange(levels.Bands, 1, 10);
        Assert.True(levels.Low(0) <= low + 1e-9 && levels.Low(levels.Bands) >= high - 1e-9);
        Assert.Equal(levels.Bands, Enumerable.Range(0, levels.Bands).Select(band => levels.Name(levels.Low(band))).Distinct().Count());
    }

    private static double Area(OxyPlot.ScreenPoint[] polygon)
    {
        double twice = 0;
        for (int i = 0; i < polygon.Length; i++)
        {
            OxyPlot.ScreenPoint a = polygon[i], b = polygon[(i + 1) % polygon.Length];
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(twice) / 2;
    }

    private static SweepView View(Random random, int settings)
    {
        SweepAxis[] axes = [.. Enumerable.Range(0, settings).Select(_ => Axis(random))];
        int count = axes.Aggregate(1, (all, axis) => all * axis.Names.Count);
        bool[] failed = [.. Enumerable.Range(0, count).Select(_ => random.Next(12) == 0)];
        return new SweepView
        {
            Title = "rear.linkage.upper.body.up from 13 to 16 in: the rise lag falls from 62 to 41 ms; the best score of the 9 set-ups, 0.6 points (now 5.1), is at 13.5 in",
            Imprint = "Door car, as measured · 9 launches, aims: in-step · LaunchSim 0.1.0 · 01234567",
            Axes = axes,
            Measures = [.. Enumerable.Range(0, random.Next(1, 8)).Select(i => Measure(random, i, count, failed))],
            Failed = failed,
            BeyondLimits = [.. Enumerable.Range(0, count).Select(i => !failed[i] && random.Next(8) == 0)],
            Best = Array.IndexOf(failed, false) is var best and >= 0 ? best : null,
        };
    }

    private static SweepAxis Axis(Random random)
    {
        int count = random.Next(4) == 0 ? 1 : random.Next(2, 30);
        if (random.Next(3) == 0)
        {
            return new SweepAxis { Name = "rear.linkage.upper.body.use", Unit = "", Names = [.. Enumerable.Range(1, count).Select(i => new string('h', random.Next(1, 25)) + i)], Numbers = null, Present = random.Next(2) == 0 ? random.Next(count) : null };
        }

        double from = random.Next(-50, 50), step = Math.Pow(10, random.Next(-2, 4)) * (random.Next(2) == 0 ? 1 : -1);
        double[] numbers = [.. Enumerable.Range(0, count).Select(i => Math.Round(from + (step * i), 6))];
        return new SweepAxis { Name = "rear.spring.rate", Unit = "lb/in", Names = [.. numbers.Select(number => number.ToString(System.Globalization.CultureInfo.InvariantCulture))], Numbers = numbers, Present = random.Next(3) == 0 ? null : from + (step * random.NextDouble() * count) };
    }

    private static SweepMeasure Measure(Random random, int place, int count, bool[] failed)
    {
        double size = random.Next(5) == 0 ? 0 : Math.Pow(10, random.Next(-2, 5));
        bool isWanted = random.Next(2) == 0;
        return new SweepMeasure
        {
            Name = place % 2 == 0 ? "lowest rear load after the hit" : "rise lag",
            Unit = place % 2 == 0 ? "% of the standing load" : "ms",
            Decimals = random.Next(4),
            Values = [.. Enumerable.Range(0, count).Select(i => failed[i] || random.Next(15) == 0 ? double.NaN : size * ((i / (double)count) - random.NextDouble()))],
            Present = random.Next(4) == 0 ? double.NaN : size * random.NextDouble(),
            From = isWanted ? -0.2 * size : double.NaN,
            To = isWanted ? random.Next(2) == 0 ? double.PositiveInfinity : 0.3 * size : double.NaN,
        };
    }
}
