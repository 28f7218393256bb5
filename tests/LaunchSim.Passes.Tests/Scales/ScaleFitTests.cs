using System.Globalization;
using System.Numerics;
using CsCheck;
using LaunchSim.Passes.Scales;
using LaunchSim.Scenarios.Scales;
using Xunit.Abstractions;

namespace LaunchSim.Passes.Tests.Scales;

public sealed class ScaleFitTests(ITestOutputHelper output)
{
    private const double Gravity = 9.80665;

    private static readonly Gen<Weighed> Cars =
        from weight in Gen.Double[5000, 25000]
        from wheelbase in Gen.Double[1.6, 4]
        from share in Gen.Double[0.25, 0.75]
        from up in Gen.Double[0.3, 1.1]
        from radii in Gen.Double[0.2, 0.5].Array[2]
        from slopes in Gen.Double[3, 25].Array[1, 4]
        from raised in Gen.Bool.Array[4]
        from squash in Gen.Double[-0.02, 0.02].Array[4]
        from measuresAgain in Gen.Bool.Array[4]
        select new Weighed(weight, wheelbase, share * wheelbase, up, radii[0], radii[1], slopes, raised, squash, measuresAgain);

    [Fact]
    public void LiftedCar_OfEqualRadii_IsThePublishedRelation()
    {
        // Check 22: W = 1500 kg, l = 2.7 m, H = 0.5 m, r = 0.31 m, a gain of 25.1259453814803 kg: 0.55 m high.
        foreach (bool front in new[] { true, false })
        {
            var car = new LiftedCar(1500, 1.2, 0.55, 2.7, 0.31, 0.31);
            double level = car.FrontLoad(0.31, 0.31);
            double lifted = front ? car.FrontLoad(0.81, 0.31) : car.FrontLoad(0.31, 0.81);
            Assert.Equal(25.1259453814803, front ? level - lifted : lifted - level, 1e-11);
        }
    }

    [Theory]
    [InlineData("rear")]
    [InlineData("front")]
    public void Solve_PublishedExample_GivesItsHeight(string raised)
    {
        (double front, double rear) = raised == "rear" ? (700 + 25.1259453814803, 800.0) : (700, 800 + 25.1259453814803);
        double stays = raised == "rear" ? front : rear;
        ScaleResult result = Solve(FormattableString.Invariant($$"""
            wheelbase: 2.7 m
            loaded_radius: {front: 0.31 m, rear: 0.31 m}
            level: {front: 700 kgf, rear: 800 kgf}
            lifts:
              - {raised: {{raised}}, height: 0.81 m, load: {{stays}} kgf}
            """));
        Assert.Equal(0.55, result.Up.Value, 1e-9);
        Assert.Equal(2.7 * 700 / 1500, result.Ahead.Value, 1e-9);
        Assert.Equal(1500 * Gravity, result.Weight.Value, 1e-6);
        Assert.Null(result.Agreement);
        Assert.Equal(1, result.HeightShares.Values.Sum(), 1e-9);
    }

    [Fact]
    public void Solve_AnyCarByIndependentStatics_FindsItsCentreOfGravity() => Cars.Sample(
        car =>
        {
            ScaleResult result = Solve(car.Sheet(0, new Random(1)));
            Assert.Equal(car.Up, result.Up.Value, 1e-6);
            Assert.Equal(car.Ahead, result.Ahead.Value, 1e-6);
            Assert.Equal(car.Weight, result.Weight.Value, 1e-2);
        },
        iter: 300);

    [Fact]
    public void Solve_ManyReadingsOfOneCar_ScattersAsItSays()
    {
        // The doubt by first order against what 3000 readings of the same car scatter by.
        foreach (var car in new[]
        {
            new Weighed(13345, 2.68, 1.39, 0.53, 0.32, 0.33, [14], [false], [0], [false]),
            new Weighed(9000, 2.4, 0.9, 0.45, 0.28, 0.36, [8, 12, 15], [false, true, false], [0, 0.005, 0], [false, true, false]),
        })
        {
            var random = new Random(20);
            double says = Solve(car.Sheet(0, random)).Up.HalfWidth / 2, saysAhead = Solve(car.Sheet(0, random)).Ahead.HalfWidth / 2;
            double[] ups = new double[3000], aheads = new double[3000];
            int covered = 0;
            for (int i = 0; i < ups.Length; i++)
            {
                ScaleResult result = Solve(car.Sheet(1, random));
                (ups[i], aheads[i]) = (result.Up.Value, result.Ahead.Value);
                covered += Math.Abs(result.Up.Value - car.Up) <= result.Up.HalfWidth ? 1 : 0;
            }

            (double scatter, double scatterAhead) = (Deviation(ups), Deviation(aheads));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"height {1000 * says:F2} said, {1000 * scatter:F2} mm seen; ahead {1000 * saysAhead:F3}, {1000 * scatterAhead:F3} mm; covered {100.0 * covered / ups.Length:F1} %"));

            // The deviation of 3000 draws is itself good to 1.3 %; three of those, and a little for what first order leaves out.
            Assert.Equal(1, scatter / says, 0.05);
            Assert.Equal(1, scatterAhead / saysAhead, 0.05);
            Assert.Equal(car.Up, ups.Average(), 4 * scatter / Math.Sqrt(ups.Length) + 0.002);
            Assert.InRange(covered / (double)ups.Length, 0.935, 0.97);
        }
    }

    [Fact]
    public void Solve_LiftThatIsTooSmall_SaysWhichWouldDo()
    {
        var car = new Weighed(13345, 2.68, 1.39, 0.53, 0.32, 0.33, [4], [false], [0], [false]);
        ScaleResult result = Solve(car.Sheet(0, new Random(1)));
        Assert.True(result.Up.HalfWidth > ScaleFit.WantedHalfWidth);
        BetterLift better = result.Better!;
        Assert.True(better.Suffices);
        Assert.False(better.RaisesFront);

        // What it promises is what such a lift then gives.
        ScaleResult lifted = Solve((car with { Slopes = [better.Slope * 180 / Math.PI] }).Sheet(0, new Random(1)));
        Assert.Equal(better.HalfWidth, lifted.Up.HalfWidth, 1e-4 * better.HalfWidth);
        Assert.Equal(better.Height, lifted.Sheet.Lifts[0].Height.Value, 1e-6);
        Assert.True(lifted.Up.HalfWidth <= ScaleFit.WantedHalfWidth);
        Assert.Null(lifted.Better);
    }

    [Fact]
    public void Solve_CoarseScales_SaysThatNoLiftDoes()
    {
        var car = new Weighed(13345, 2.68, 1.39, 0.53, 0.32, 0.33, [6], [true], [0], [false]) { PadHalfWidth = 200 };
        BetterLift better = Solve(car.Sheet(0, new Random(1))).Better!;
        Assert.False(better.Suffices);
        Assert.True(better.HalfWidth > ScaleFit.WantedHalfWidth);
    }

    [Fact]
    public void Solve_ALiftReadWrong_DoesNotAgree()
    {
        var car = new Weighed(13345, 2.68, 1.39, 0.53, 0.32, 0.33, [10, 14, 18], [false, false, false], [0, 0, 0], [false, false, false]);
        Assert.True(Solve(car.Sheet(0, new Random(1))).Agreement > 0.99);
        ScaleSheet sheet = Read(car.Sheet(0, new Random(1)));
        ScaleLift second = sheet.Lifts[1];
        var wrong = second with { Load = new AxleLoad([second.Load.Pads[0] with { Value = second.Load.Pads[0].Value + 200 }]) };
        ScaleResult result = ScaleFit.Solve(sheet with { Lifts = [sheet.Lifts[0], wrong, sheet.Lifts[2]] }, default);
        Assert.True(result.Agreement < 0.001);
        Assert.Equal("lift 2, standing axle", result.Rows.MaxBy(row => Math.Abs(row.Read - row.Fitted) / row.HalfWidth)!.Words);
    }

    [Fact]
    public void Solve_CornersAndTracks_TellsHowFarLeft()
    {
        // 10 kN 80 mm to the left, tracks of 1.5 and 1.4 m: independent of how the axles share it, as long as moments balance.
        ScaleResult result = Solve("""
            wheelbase: 2.5 m
            loaded_radius: {front: 0.3 m, rear: 0.3 m}
            track: {front: 1.5 ±0.01 m, rear: 1.4 ±0.01 m}
            level: {front_left: 2700 ±10 N, front_right: 2300 ±10 N, rear_left: 2850 ±10 N, rear_right: 2150 ±10 N}
            lifts: [{raised: front, height: 0.9 m, left: 2950 ±10 N, right: 2250 ±10 N}]
            """);
        Assert.Equal(((400 * 0.75) + (700 * 0.7)) / 10000, result.Left!.Value.Value, 1e-12);
        Assert.Equal(0.555, result.LeftShare!.Value, 1e-12);

        // By moving each reading by its doubt.
        double square = 0;
        foreach ((double[] loads, double front, double rear) in new[]
        {
            (new double[] { 2710, 2300, 2850, 2150 }, 1.5, 1.4), ([2700, 2310, 2850, 2150], 1.5, 1.4), ([2700, 2300, 2860, 2150], 1.5, 1.4),
            ([2700, 2300, 2850, 2160], 1.5, 1.4), ([2700, 2300, 2850, 2150], 1.51, 1.4), ([2700, 2300, 2850, 2150], 1.5, 1.41),
        })
        {
            double moved = (((loads[0] - loads[1]) * front / 2) + ((loads[2] - loads[3]) * rear / 2)) / loads.Sum();
            square += (moved - result.Left.Value.Value) * (moved - result.Left.Value.Value);
        }

        Assert.Equal(Math.Sqrt(square), result.Left.Value.HalfWidth, 0.01 * Math.Sqrt(square));
    }

    private static ScaleResult Solve(string text) => ScaleFit.Solve(Read(text), default);

    private static ScaleSheet Read(string text)
    {
        ScaleSheetResult read = ScaleSheetReader.ReadText(text, "sheet.yaml");
        Assert.Empty(read.Errors);
        return read.Sheet!;
    }

    private static double Deviation(double[] values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1));
    }

    /// <summary>A car whose centre of gravity is known, and how it is weighed.</summary>
    private sealed record Weighed(
        double Weight, double Wheelbase, double Ahead, double Up, double FrontRadius, double RearRadius, double[] Slopes, bool[] RaisesFront, double[] Squash, bool[] MeasuresAgain)
    {
        public double PadHalfWidth { get; init; } = 12;

        /// <summary>The sheet; with a noise of 1 every reading is off as its doubt says.</summary>
        public string Sheet(double noise, Random random)
        {
            string F(double value, double half, string unit) => FormattableString.Invariant($"{value + (noise * half / 2 * Normal(random)):R} ±{half:R} {unit}");
            (double front, double rear) = Loads(FrontRadius, RearRadius);
            var text = new System.Text.StringBuilder();
            text.AppendLine(CultureInfo.InvariantCulture, $"wheelbase: {F(Wheelbase, 0.003, "m")}");
            text.AppendLine(CultureInfo.InvariantCulture, $"loaded_radius: {{front: {F(FrontRadius, 0.003, "m")}, rear: {F(RearRadius, 0.003, "m")}}}");
            text.AppendLine(CultureInfo.InvariantCulture, $"level: {{front: {F(front, PadHalfWidth, "N")}, rear: {F(rear, PadHalfWidth, "N")}}}");
            text.AppendLine("lifts:");
            for (int i = 0; i < Slopes.Length; i++)
            {
                // Squashed tyres only matter where their height is taken again.
                double squash = MeasuresAgain[i] ? Squash[i] : 0;
                double standing = (RaisesFront[i] ? RearRadius : FrontRadius) + squash;
                double raised = Raised(i, standing);
                (double f, double r) = RaisesFront[i] ? Loads(raised, standing) : Loads(standing, raised);
                string again = MeasuresAgain[i] ? $", standing_height: {F(standing, 0.003, "m")}" : "";
                text.AppendLine(CultureInfo.InvariantCulture, $"  - {{raised: {(RaisesFront[i] ? "front" : "rear")}, height: {F(raised, 0.003, "m")}, load: {F(RaisesFront[i] ? r : f, PadHalfWidth, "N")}{again}}}");
            }

            return text.ToString();
        }

        private double Raised(int lift, double standing)
        {
            Complex line = new Complex(Wheelbase, FrontRadius - RearRadius) * Complex.FromPolarCoordinates(1, (RaisesFront[lift] ? 1 : -1) * Slopes[lift] * Math.PI / 180);
            return standing + (RaisesFront[lift] ? line.Imaginary : -line.Imaginary);
        }

        /// <summary>
        /// Statics from scratch: the body turned until its wheel centres are at these heights (found by halving), then two upward
        /// forces under them that balance the weight and its moment about the origin.
        /// </summary>
        private (double Front, double Rear) Loads(double frontHeight, double rearHeight)
        {
            var front = new Complex(Wheelbase, FrontRadius);
            var rear = new Complex(0, RearRadius);
            var centre = new Complex(Ahead, Up);
            double low = -1.2, high = 1.2;
            for (int i = 0; i < 200; i++)
            {
                double angle = (low + high) / 2;
                double rise = ((front - rear) * Complex.FromPolarCoordinates(1, angle)).Imaginary;
                (low, high) = rise < frontHeight - rearHeight ? (angle, high) : (low, angle);
            }

            Complex turn = Complex.FromPolarCoordinates(1, low);
            double xf = (front * turn).Real, xr = (rear * turn).Real, x = (centre * turn).Real;
            double f = Weight * (x - xr) / (xf - xr);
            return (f, Weight - f);
        }

        private static double Normal(Random random) =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
