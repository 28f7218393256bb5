using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Tests.Chance;

public class ShareIntervalTests
{
    // R. G. Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in Medicine 17, 1998, table I,
    // method 3, to the four digits printed there.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0000, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void Wilson_PublishedExamples_GivesPublishedLimits(int count, int of, double low, double high)
    {
        ShareInterval interval = ShareInterval.Wilson(count, of, 0.95);
        Assert.Equal((double)count / of, interval.Share);
        Assert.Equal(low, interval.Low, 4);
        Assert.Equal(high, interval.High, 4);
    }

    [Fact]
    public void Wilson_AnyCount_HasLimitsThatTheCountIsJustCompatibleWith()
    {
        // The definition: at either limit p the counted share is z·√(p(1−p)/n) away. z of 90 % from tables.
        const double Z = 1.6448536269514722;
        for (int of = 1; of <= 60; of += 7)
        {
            for (int count = 0; count <= of; count++)
            {
                ShareInterval interval = ShareInterval.Wilson(count, of, 0.9);
                foreach (double p in new[] { interval.Low, interval.High }.Where(p => p is > 0 and < 1))
                {
                    Assert.Equal(Math.Abs(interval.Share - p), Z * Math.Sqrt(p * (1 - p) / of), 1e-12);
                }

                Assert.True(interval.Low <= interval.Share && interval.Share <= interval.High);
                Assert.Equal(count == 0, interval.Low == 0);
                Assert.Equal(count == of, interval.High == 1);
            }
        }
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(0.95)]
    public void Wilson_OverManyTrueShares_CoversAsItClaims(double confidence)
    {
        const int Trials = 20_000, Draws = 60;
        var random = new SplitMix64(17);
        int covered = 0;
        for (int trial = 0; trial < Trials; trial++)
        {
            double p = random.NextUniform();
            int count = Enumerable.Range(0, Draws).Count(_ => random.NextUniform() < p);
            ShareInterval interval = ShareInterval.Wilson(count, Draws, confidence);
            covered += interval.Low <= p && p <= interval.High ? 1 : 0;
        }

        // The count is good to 0.003; Wilson's mean coverage over p lies within 0.01 of the claim (Brown and others, figure 4).
        Assert.InRange((double)covered / Trials, confidence - 0.013, confidence + 0.013);
    }

    [Fact]
    public void Wilson_OfEvenDraws_IsTooWideRatherThanTooNarrow()
    {
        const int Seeds = 300, Draws = 400;
        int covered = 0;
        double[] u = new double[6];
        for (ulong seed = 0; seed < Seeds; seed++)
        {
            var sequence = new HaltonSequence(u.Length, seed);
            int count = 0;
            for (int i = 0; i < Draws; i++)
            {
                sequence.Point(i, u);
                count += u[0] + u[1] + u[2] < 1 ? 1 : 0;
            }

            // A corner cut off the cube: a sixth.
            ShareInterval interval = ShareInterval.Wilson(count, Draws, 0.95);
            covered += interval.Low <= 1.0 / 6 && 1.0 / 6 <= interval.High ? 1 : 0;
        }

        Assert.InRange((double)covered / Seeds, 0.98, 1);
    }

    [Fact]
    public void Wilson_OfNothing_LeavesAllPossible()
        => Assert.Equal(new ShareInterval(double.NaN, 0, 1), ShareInterval.Wilson(0, 0, 0.95));

    [Theory]
    [InlineData(-1, 5, 0.9)]
    [InlineData(6, 5, 0.9)]
    [InlineData(0, -1, 0.9)]
    [InlineData(1, 5, 0)]
    [InlineData(1, 5, 1)]
    [InlineData(1, 5, double.NaN)]
    public void Wilson_ImpossibleArguments_AreRefused(int count, int of, double confidence)
        => Assert.Throws<ArgumentOutOfRangeException>(() => ShareInterval.Wilson(count, of, confidence));
}
