using LaunchSim.Dynamics;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Doubting;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Tests.Doubting;

public class PlausibleCarsTests
{
    private const double Inch = 0.0254;

    [Fact]
    public void Draw_SameSeed_GivesTheSameCarsWhateverTheThread()
    {
        PlausibleCars one = Of(1, Cars.Door), other = Of(1, Cars.Door);
        double[][] inOrder = [.. Enumerable.Range(0, 40).Select(car => Numbers(Draw(one, car).Cars![0].Car))];
        double[][] atOnce = new double[40][];

        Parallel.For(0, 40, i => atOnce[39 - i] = Numbers(Draw(other, 39 - i).Cars![0].Car));

        Assert.Equal(inOrder, atOnce);
        Assert.NotEqual(inOrder[0], Numbers(Draw(Of(2, Cars.Door), 0).Cars![0].Car));
    }

    [Fact]
    public void Draw_TwoSetUps_AreTheSameCarButForTheChange()
    {
        Scenario changed = Cars.Read(Files.DoorCar, ("rear.linkage.upper.body.use", "3"), ("car.ballast[0].mass", "80 lb"));
        PlausibleCars cars = Of(7, Cars.Door, changed);

        for (int car = 0; car < 20; car++)
        {
            IReadOnlyList<Launch.StandingCar> drawn = Draw(cars, car).Cars!;

            Assert.Equal(drawn[0].Car.Chassis.CentreOfGravityHeight, drawn[1].Car.Chassis.CentreOfGravityHeight);
            Assert.Equal(drawn[0].Car.Rear.Tire, drawn[1].Car.Rear.Tire);
            Assert.Equal(drawn[0].Car.Rear.SpringRate, drawn[1].Car.Rear.SpringRate);
            Assert.NotEqual(drawn[0].Standing.RearLoad, drawn[1].Standing.RearLoad);
        }
    }

    [Fact]
    public void Draw_HolesOfABracket_ShareTheTapesError()
    {
        Scenario lowest = Cars.Read(Files.DoorCar, ("rear.linkage.upper.body.use", "3"));
        PlausibleCars cars = Of(1, Cars.Door, lowest);

        var ups = new HashSet<double>();
        for (int car = 0; car < 20; car++)
        {
            IReadOnlyList<Launch.StandingCar> drawn = Draw(cars, car).Cars!;
            Point second = ((FourLink)drawn[0].Car.Rear.Linkage).UpperBody, third = ((FourLink)drawn[1].Car.Rear.Linkage).UpperBody;

            // 14.6 and 13.8 in up, both off by the same.
            Assert.Equal(0.8 * Inch, second.Up - third.Up, 1e-12);
            Assert.Equal(second.Ahead, third.Ahead, 1e-12);
            ups.Add(second.Up);
        }

        Assert.Equal(20, ups.Count);
    }

    [Theory]
    [InlineData("rear")]
    [InlineData("front")]
    public void Draw_GripAndPeakSlip_KeepTheShapeOfTheCurve(string end)
    {
        Scenario scenario = Cars.Read(Files.DoorCar, ($"{end}.tire.grip", "2 ±0.4"), ($"{end}.tire.peak_slip", "0.12 ±0.04"));
        PlausibleCars cars = Of(1, scenario);
        Tire Tire(Car car) => end == "rear" ? car.Rear.Tire : car.Front.Tire;
        var entered = TireCurve.From(Tire(scenario.Car!));

        Assert.Equal(2, cars.Numbers.Count);
        for (int car = 0; car < 50; car++)
        {
            Tire drawn = Tire(Draw(cars, car).Cars![0].Car);
            var curve = TireCurve.From(drawn);

            Assert.NotEqual(Tire(scenario.Car!).Grip, drawn.Grip);
            Assert.Equal(entered.C, curve.C, 1e-12);
            Assert.Equal(entered.E, curve.E, 1e-9);
            Assert.Equal(entered.B * Tire(scenario.Car!).PeakSlip, curve.B * drawn.PeakSlip, 1e-9);
        }
    }

    [Fact]
    public void Draw_SlipStiffnessToo_MovesTheShapeByItsOwnDoubtAlone()
    {
        Scenario both = Cars.Read(Files.DoorCar, ("rear.tire.slip_stiffness", "40 ±4"), ("rear.tire.grip", "2.3 ±0.3"));
        PlausibleCars cars = Of(1, both);
        double[] u = new double[2];

        for (int car = 0; car < 20; car++)
        {
            PlausibleCar drawn = cars.Draw(car, u);
            int stiffness = cars.Numbers.ToList().FindIndex(number => number.Path == "rear.tire.slip_stiffness");
            double own = 40 + (4 * PlausibleCars.ShareOfDoubt(u[stiffness])), grip = drawn.Cars![0].Car.Rear.Tire.Grip;

            Assert.Equal(own * grip / 2.3, drawn.Cars[0].Car.Rear.Tire.SlipStiffness, 1e-9);
        }
    }

    /// <summary>The sample's standard deviation is off by σ/√(2n) in the root mean square, for even draws by less.</summary>
    [Fact]
    public void Draw_Number_HasHalfItsWidthAsStandardDeviation()
    {
        const int count = 2000;
        PlausibleCars cars = Of(3, Cars.Read(Files.DoorCar, ("car.cg_height", "21 ±1 in")));
        double[] drawn = [.. Enumerable.Range(0, count).Select(car => Draw(cars, car).Cars![0].Car.Chassis.CentreOfGravityHeight / Inch)];

        double mean = drawn.Average(), deviation = Math.Sqrt(drawn.Sum(value => (value - mean) * (value - mean)) / (count - 1));

        Assert.Equal(21, mean, 4 * 0.5 / Math.Sqrt(count));
        Assert.Equal(0.5, deviation, 4 * 0.5 / Math.Sqrt(2 * count));
    }

    [Fact]
    public void Draw_NumbersThatHangTogether_AreDrawnSo()
    {
        const int count = 1000;
        Scenario scenario = Cars.Read(Files.DoorCar, ("car.cg_height", "21 ±1 in"), ("car.pitch_inertia", "1950 ±300 kg·m²"));
        var cars = new PlausibleCars([scenario], 3, false, new NormalCorrelations(["car.pitch_inertia", "car.cg_height", "rear.tire.grip"], new[,] { { 1, -0.9, 0 }, { -0.9, 1, 0 }, { 0, 0, 1 } }));
        Chassis[] drawn = [.. Enumerable.Range(0, count).Select(car => Draw(cars, car).Cars![0].Car.Chassis)];

        double correlation = MathNet.Numerics.Statistics.Correlation.Pearson(drawn.Select(one => one.CentreOfGravityHeight), drawn.Select(one => one.PitchInertia));

        Assert.Equal(-0.9, correlation, 4 * (1 - 0.81) / Math.Sqrt(count));
    }

    [Fact]
    public void Draw_ImpossibleCars_AreDrawnAgainAndCounted()
    {
        // A standard deviation of 0.2 about 0.1, and nothing below 0: three draws in ten are impossible.
        const int count = 400;
        PlausibleCars cars = Of(1, Cars.Read(Files.DoorCar, ("rear.tire.vertical_damping", "0.1 ±0.4 lb·s/in")));
        PlausibleCar[] drawn = [.. Enumerable.Range(0, count).Select(car => Draw(cars, car))];

        Assert.All(drawn, car => Assert.True(car.Cars![0].Car.Rear.Tire.VerticalDamping >= 0));
        Assert.All(drawn, car => Assert.Equal(car.Redrawn > 0, car.Refusal is not null));
        Assert.All(drawn.Where(car => car.Refusal is not null), car => Assert.Contains("rear.tire.vertical_damping", car.Refusal, StringComparison.Ordinal));
        double impossible = MathNet.Numerics.Distributions.Normal.CDF(0.1, 0.2, 0), expected = count * impossible / (1 - impossible);
        Assert.InRange(drawn.Sum(car => car.Redrawn), 0.75 * expected, 1.25 * expected);
    }

    [Fact]
    public void Draw_HardlyAnythingPossible_IsGivenUp()
    {
        PlausibleCars cars = Of(1, Cars.Read(Files.DoorCar, ("rear.tire.sliding_ratio", "0.65 ±4000")));

        PlausibleCar[] drawn = [.. Enumerable.Range(0, 10).Select(car => Draw(cars, car))];

        Assert.Contains(drawn, car => car.Cars is null && car.Redrawn == PlausibleCars.MostDraws);
    }

    [Fact]
    public void Numbers_NoDoubtEntered_AreTheUsualOnes()
    {
        PlausibleCars usual = Of(1, Cars.Door);
        Scenario entered = Cars.Read(Files.DoorCar, ("car.cg_height", "21 ±1 in"));
        PlausibleCars own = Of(1, entered), both = new([entered], 1, withTypical: true);

        Assert.True(usual.UsesTypical);
        Assert.True(usual.Numbers.Count > 20);
        Assert.All(usual.Numbers, number => Assert.False(number.IsEntered));
        Assert.False(own.UsesTypical);
        Assert.Equal(["car.cg_height"], own.Numbers.Select(number => number.Path));
        Assert.Equal(usual.Numbers.Select(number => number.Path), both.Numbers.Select(number => number.Path));
        Assert.Equal(["car.cg_height"], both.Numbers.Where(number => number.IsEntered).Select(number => number.Path));
    }

    private static PlausibleCars Of(ulong seed, params Scenario[] setUps) => new(setUps, seed, false);

    private static PlausibleCar Draw(PlausibleCars cars, long car) => cars.Draw(car, new double[cars.Numbers.Count]);

    private static double[] Numbers(Car car) =>
    [
        car.Chassis.CentreOfGravityHeight, car.Chassis.Wheelbase, car.Chassis.PitchInertia, car.Rear.SpringRate, car.Rear.Tire.Grip, car.Rear.Tire.SlipStiffness, car.Rear.UnsprungMass,
        car.Front.SpringRate, ((FourLink)car.Rear.Linkage).UpperBody.Up, ((FourLink)car.Rear.Linkage).LowerAxle.Ahead,
    ];
}
