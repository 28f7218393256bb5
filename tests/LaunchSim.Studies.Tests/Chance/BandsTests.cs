using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Tests.Chance;

public class BandsTests
{
    // Hyndman and Fan's type 7, worked by hand: rank 1 + share·(n − 1).
    [Theory]
    [InlineData(0.0, 1)]
    [InlineData(0.25, 1.75)]
    [InlineData(0.5, 2.5)]
    [InlineData(0.95, 8.95)]
    [InlineData(1.0, 10)]
    public void OfSorted_FourValues_GoesStraightBetweenNeighbours(double share, double value)
        => Assert.Equal(value, Quantiles.OfSorted([1, 2, 3, 10], share), 1e-12);

    [Fact]
    public void OfSorted_NoneOrOneOrWrongShare_IsNoNumberOrThatOneOrRefused()
    {
        Assert.True(double.IsNaN(Quantiles.OfSorted([], 0.5)));
        Assert.Equal(3, Quantiles.OfSorted([3], 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.OfSorted([1], 1.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantiles.OfSorted([1], double.NaN));
    }

    [Fact]
    public void Read_CarsThatEndEarly_CountsThoseStillThere()
    {
        var bands = new Bands(4, 3);
        bands.Set(0, [1, 10, 100]);
        bands.Set(1, [2, 20]);
        bands.Set(2, [3, double.NaN, double.NaN]);
        BandRow[] band = bands.Read();
        Assert.Equal(3, band[0].Cars);
        Assert.Equal(2, band[0].Median);
        Assert.Equal(1.1, band[0].Low, 1e-12);
        Assert.Equal(2.9, band[0].High, 1e-12);
        Assert.Equal(new BandRow(10.5, 15, 19.5, 2), band[1]);
        Assert.Equal(new BandRow(100, 100, 100, 1), band[2]);
    }

    [Fact]
    public void Read_RowWithoutCars_HasNoNumbers()
    {
        var bands = new Bands(2, 2);
        bands.Set(1, [5]);
        Assert.Equal(new BandRow(double.NaN, double.NaN, double.NaN, 0), bands.Read()[1]);
        Assert.All(new Bands(0, 2).Read(), row => Assert.Equal(0, row.Cars));
        Assert.Empty(new Bands(2, 0).Read());
    }

    [Fact]
    public void Set_ByManyThreads_GivesTheBandOfTheNormalDistribution()
    {
        // Car i is the i-th of evenly spread quantiles, at row r stretched by r. The band's edge is at rank 0.05·1,999, hence at
        // the quantile of (99.95 + 1/2)/2,000, but for the straight line between neighbours and the seven digits kept.
        const int Cars = 2_000, Rows = 50;
        var bands = new Bands(Cars, Rows);
        Parallel.For(0, Cars, car =>
        {
            double score = NormalQuantile.Of((car + 0.5) / Cars);
            bands.Set(car, [.. Enumerable.Range(0, Rows).Select(row => row * score)]);
        });
        BandRow[] band = bands.Read();
        double edge = NormalQuantile.Of(100.45 / Cars);
        for (int row = 0; row < Rows; row++)
        {
            Assert.Equal(Cars, band[row].Cars);
            Assert.Equal(edge * row, band[row].Low, 1e-6 * row);
            Assert.Equal(0, band[row].Median, 1e-6 * row);
            Assert.Equal(-edge * row, band[row].High, 1e-6 * row);
        }
    }

    [Fact]
    public void Set_ACarAgain_LeavesNothingOfTheFirst()
    {
        var bands = new Bands(1, 3);
        bands.Set(0, [1, 2, 3]);
        bands.Set(0, [4]);
        Assert.Equal([1, 0, 0], bands.Read().Select(row => row.Cars));
        Assert.Throws<ArgumentException>(() => bands.Set(0, [7, double.PositiveInfinity]));
        Assert.Throws<ArgumentException>(() => bands.Set(0, [7, 1e39]));
        Assert.Equal(4, bands.Read()[0].Median);
    }

    [Fact]
    public void Arguments_OutOfRange_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bands(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bands(100_000, 100_000));
        var bands = new Bands(2, 2);
        Assert.Throws<ArgumentOutOfRangeException>(() => bands.Set(2, [1]));
        Assert.Throws<ArgumentException>(() => bands.Set(0, [1, 2, 3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => bands.Read(0.9, 0.1));
    }
}
