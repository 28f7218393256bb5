using LaunchSim.Scenarios.Typical;

namespace LaunchSim.Scenarios.Tests.Typical;

/// <summary>The register's functions against the published numbers that they come from or are independent of.</summary>
public class PublishedNumberTests
{
    private const double Psi = 6894.75729316836, PerMillimetre = 1000;

    // 255/40R17 at 3560 N, measured: published open data (kktse.github.io, 2021-07-12).
    private static readonly (double Psi, double Rate)[] Measured = [(24, 228.53), (27, 247.47), (30, 262.48), (33, 277.31), (36, 292.74)];
    private static readonly TireSize MeasuredTire = TireSize.Parse("255/40R17")!;

    [Fact]
    public void TireRate_OfThePublishedTireAndPressure_IsTheRegressions()
    {
        // Rhyne's regression as recalled gives 247.14 N/mm for this tyre at 30 psi; the number has five figures.
        Assert.Equal(247.14, TireRate.Of(MeasuredTire, 30 * Psi) / PerMillimetre, 0.01);
    }

    [Fact]
    public void TireRate_AgainstMeasuredRates_IsWithinTwelvePercent()
    {
        foreach ((double psi, double rate) in Measured)
        {
            double regression = TireRate.Of(MeasuredTire, psi * Psi) / PerMillimetre;
            Assert.InRange(regression, 0.88 * rate, 1.12 * rate);
        }
    }

    [Fact]
    public void MeasuredRates_AgainstPressure_AreAStraightLineWithinThreePercent()
    {
        // The row has a fit of its own, 103.433 + 5.27580·psi; found again by least squares from its rounded rates.
        (double intercept, double slope) = Fit([.. Measured.Select(point => point.Psi)], [.. Measured.Select(point => point.Rate)]);
        Assert.Equal(5.27580, slope, 1e-3);
        Assert.Equal(103.433, intercept, 0.03);
        Assert.All(Measured, point => Assert.InRange(intercept + (slope * point.Psi), 0.97 * point.Rate, 1.03 * point.Rate));
    }

    [Fact]
    public void PressureSlope_OfTheMeasuredTire_LiesWithinTheTypicalDoubt()
    {
        // The regression makes more of pressure than was measured; the register's ±35 % has to own up to that.
        var typical = (TypicalValue)TypicalRegister.Find("front.tire.pressure.vertical")!;
        double regression = TireRate.Slope(MeasuredTire) / PerMillimetre * Psi;
        double doubt = typical.Doubt!.Value.Size;
        Assert.InRange(5.27580, regression * (1 - doubt), regression * (1 + doubt));
    }

    [Theory]
    [InlineData(1000, 2.3, 0.50)]
    [InlineData(1200, 2.5, 0.52)]
    [InlineData(1500, 2.7, 0.55)]
    [InlineData(1800, 2.8, 0.50)]
    public void WholeCarInertia_OfCarsOfUsualProportions_IsWithinTwoSigmaOfBothRegressions(double mass, double wheelbase, double frontShare)
    {
        // Row 25: 204 vehicles, σ 527; 73 cars, σ 247, refitted from the measurements behind SAE 1999-01-1336. Both go by mass
        // alone; the register goes by mass and the distances from the axles.
        double ahead = wheelbase * frontShare;
        double inertia = WholeCarInertia.Of(mass, ahead, wheelbase - ahead);
        Assert.InRange(inertia, (2.978202 * mass) - 1697.108 - (2 * 527), (2.978202 * mass) - 1697.108 + (2 * 527));
        Assert.InRange(inertia, (3.079446 * mass) - 1728.758 - (2 * 247), (3.079446 * mass) - 1728.758 + (2 * 247));
    }

    [Fact]
    public void SprungInertia_OfTwoBodies_IsWhatParallelAxesLeave()
    {
        // A body of 1000 kg and 1500 kg·m², put together with two axles, taken apart again. Heights count as well.
        var front = new UnsprungPart(70, 1.3, -0.2, 1.5);
        var rear = new UnsprungPart(150, -1.4, -0.22, 8);
        const double body = 1000, own = 1500;
        double ahead = -((front.Mass * front.Ahead) + (rear.Mass * rear.Ahead)) / body, up = -((front.Mass * front.Up) + (rear.Mass * rear.Up)) / body;
        double whole = own + (body * ((ahead * ahead) + (up * up))) + front.Inertia + rear.Inertia
            + (front.Mass * ((1.3 * 1.3) + (0.2 * 0.2))) + (rear.Mass * ((1.4 * 1.4) + (0.22 * 0.22)));
        Assert.Equal(own, WholeCarInertia.Sprung(whole, body + front.Mass + rear.Mass, front, rear), 1e-9);
    }

    [Theory]
    [InlineData("275/60R15", 0.275, 60, 15)]
    [InlineData("P275/60-15", 0.275, 60, 15)]
    [InlineData(" 315/35ZR17 ", 0.315, 35, 17)]
    [InlineData("28x10.5-15", 0.2667, 61.9, 15)]
    public void TireSize_AsOnASidewall_IsRead(string text, double width, double aspect, double rim)
    {
        TireSize size = TireSize.Parse(text)!;
        Assert.Equal(width, size.Width, 1e-9);
        Assert.Equal(aspect, size.AspectPercent, 0.05);
        Assert.Equal(rim * 0.0254, size.RimDiameter, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("drag radial")]
    [InlineData("275/60")]
    [InlineData("15x28-10.5")]
    [InlineData("2750/60R15")]
    public void TireSize_OfWhatIsNone_IsNull(string text) => Assert.Null(TireSize.Parse(text));

    private static (double Intercept, double Slope) Fit(double[] x, double[] y)
    {
        double mx = x.Average(), my = y.Average();
        double slope = x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
        return (my - (slope * mx), slope);
    }
}
