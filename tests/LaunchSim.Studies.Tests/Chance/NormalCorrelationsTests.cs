using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Tests.Chance;

public sealed class NormalCorrelationsTests
{
    private const int Count = 4000;

    [Fact]
    public void Correlate_Draws_HangTogetherAsAsked()
    {
        var correlations = new NormalCorrelations(["a", "b", "c"], new[,] { { 1, -0.93, 0.4 }, { -0.93, 1, -0.2 }, { 0.4, -0.2, 1 } });
        double[][] drawn = Drawn(correlations, ["b", "other", "a", "c"]);

        // The standard error of a correlation ρ of n draws is (1 − ρ²)/√n (textbook).
        Assert.Equal(-0.93, Correlation(drawn, 0, 2), 4 * (1 - (0.93 * 0.93)) / Math.Sqrt(Count));
        Assert.Equal(-0.2, Correlation(drawn, 0, 3), 4 / Math.Sqrt(Count));
        Assert.Equal(0.4, Correlation(drawn, 2, 3), 4 / Math.Sqrt(Count));
        Assert.Equal(0, Correlation(drawn, 1, 2), 4 / Math.Sqrt(Count));

        // Each alone is as likely as before: half of them below the middle, one in forty below −1.96.
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(0.5, drawn.Count(row => row[i] < 0) / (double)Count, 4 * 0.5 / Math.Sqrt(Count));
            Assert.Equal(0.025, drawn.Count(row => row[i] < -1.96) / (double)Count, 4 * 0.156 / Math.Sqrt(Count));
        }
    }

    [Fact]
    public void Correlate_WhatHasNoCorrelation_StaysTheSame()
    {
        var correlations = new NormalCorrelations(["a", "b"], new[,] { { 1, 0.9 }, { 0.9, 1 } });
        double[] u = [0.1, 0.2, 0.3];
        correlations.For(["x", "a", "y"]).Correlate(u);
        Assert.Equal([0.1, 0.2, 0.3], u);
    }

    /// <summary>Two that are one: an estimate's matrix may have no factor.</summary>
    [Fact]
    public void Correlate_TwoThatAreOne_NearlyAreOne()
    {
        double[][] drawn = Drawn(new NormalCorrelations(["a", "b"], new[,] { { 1.0, 1.0 }, { 1.0, 1.0 } }), ["a", "b"]);
        Assert.InRange(Correlation(drawn, 0, 1), 0.99, 1);
    }

    [Fact]
    public void Correlate_TheFarthestDraws_StayProbabilities()
    {
        Correlator correlator = new NormalCorrelations(["a", "b"], new[,] { { 1, 0.999 }, { 0.999, 1 } }).For(["a", "b"]);
        foreach (double[] u in (double[][])[[double.Epsilon, double.Epsilon], [1 - 1.2e-16, 1 - 1.2e-16]])
        {
            correlator.Correlate(u);
            Assert.All(u, value => Assert.True(double.IsFinite(NormalQuantile.Of(value))));
        }
    }

    [Fact]
    public void Correlations_ThatAreNone_AreRefused()
    {
        _ = Assert.Throws<ArgumentException>(() => new NormalCorrelations(["a"], new[,] { { 1.0, 0 }, { 0, 1 } }));
        _ = Assert.Throws<ArgumentException>(() => new NormalCorrelations(["a", "a"], new[,] { { 1.0, 0 }, { 0, 1 } }));
        _ = Assert.Throws<ArgumentException>(() => new NormalCorrelations(["a", "b"], new[,] { { 1.0, 0.5 }, { 0.4, 1 } }));
        _ = Assert.Throws<ArgumentException>(() => new NormalCorrelations(["a", "b"], new[,] { { 1.0, 1.5 }, { 1.5, 1 } }));
        _ = Assert.Throws<ArgumentException>(() => new NormalCorrelations(["a", "b"], new[,] { { 2.0, 0.5 }, { 0.5, 1 } }));
        _ = Assert.Throws<ArgumentException>(() => new NormalCorrelations(["a", "b"], new[,] { { 1.0, double.NaN }, { double.NaN, 1 } }));
    }

    private static double[][] Drawn(NormalCorrelations correlations, string[] names)
    {
        Correlator correlator = correlations.For(names);
        var sequence = new HaltonSequence(names.Length, 5);
        return [.. Enumerable.Range(0, Count).Select(i =>
        {
            double[] u = new double[names.Length];
            sequence.Point(i, u);
            correlator.Correlate(u);
            return u.Select(NormalQuantile.Of).ToArray();
        })];
    }

    private static double Correlation(double[][] drawn, int first, int second) =>
        MathNet.Numerics.Statistics.Correlation.Pearson(drawn.Select(row => row[first]), drawn.Select(row => row[second]));
}
