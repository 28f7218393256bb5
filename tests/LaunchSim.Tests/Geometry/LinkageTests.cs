using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Geometry;

/// <summary>Linkage maps against their closure in 28 digits, published kinematics, and the facts of geometry.</summary>
public class LinkageTests
{
    private static readonly Point Origin = new(1.2, 0.5);

    [Fact]
    public void FourLink_AnywhereInItsTravel_HasTheDerivativesOfItsClosure() =>
        Gen.Select(RandomCar.Any.Where(car => car.Rear.Linkage is FourLink), Gen.Double[-0.15, 0.15]).Sample(
            (car, lambda) =>
            {
                var links = (FourLink)car.Rear.Linkage;
                var centre = new Point(0, car.Rear.Tire.LoadedRadius);
                var map = new FourLinkMap(links, centre, Origin);
                if (!(map.Margin(lambda) > 0.05))
                {
                    return;
                }

                // The closure by Newton's method in decimal arithmetic, central differences at 1e-7: 1e-14 of the third
                // derivative is left, and rounding of the product, which grows with the linkage's singularity.
                map.Pose(lambda, out LinkagePose pose);
                var exact = new DecimalFourLink(links, centre);
                const decimal h = 1e-7m;
                (decimal x, decimal z, decimal a) = exact.At((decimal)lambda);
                (decimal x1, decimal z1, decimal a1) = exact.At((decimal)lambda + h);
                (decimal x0, decimal z0, decimal a0) = exact.At((decimal)lambda - h);
                Near(x, pose.X + Origin.Ahead, "x");
                Near(z, pose.Z + Origin.Up, "z");
                Near(a, pose.Angle, "α");
                Near((x1 - x0) / (2 * h), pose.X1, "x'");
                Near((z1 - z0) / (2 * h), pose.Z1, "z'");
                Near((a1 - a0) / (2 * h), pose.Angle1, "α'");
                Near((x1 - (2 * x) + x0) / (h * h), pose.X2, "x''");
                Near((z1 - (2 * z) + z0) / (h * h), pose.Z2, "z''");
                Near((a1 - (2 * a) + a0) / (h * h), pose.Angle2, "α''");
            },
            iter: 150);

    [Fact]
    public void FourLinkWithALongUpperBar_IsTheSliderCrank()
    {
        // Row 11: x = r·cosθ + √(l² − r²·sin²θ), its derivatives computed for this project. The lower bar is the crank, the
        // housing the rod, the upper bar a guide that gets ever longer; two steps of Richardson take its curve out. What is
        // left is rounding of a bar of some km: 1e-9 relative.
        const double r = 0.05, l = 0.15, speed = 100, angle = Math.PI / 3;
        double root = Math.Sqrt((l * l) - (r * r * Math.Sin(angle) * Math.Sin(angle)));
        Assert.Equal(0.168614066163451, (r * Math.Cos(angle)) + root, 1e-14);
        var levels = new List<(double X, double V, double A)>();
        foreach (double guide in new[] { 500.0, 1000, 2000 })
        {
            const double drawn = 0.5;
            double pin = (r * Math.Cos(drawn)) + Math.Sqrt((l * l) - (r * r * Math.Sin(drawn) * Math.Sin(drawn)));
            var links = new FourLink
            {
                LowerBody = new Point(0, 0),
                LowerAxle = new Point(r * Math.Cos(drawn), r * Math.Sin(drawn)),
                UpperAxle = new Point(pin, 0),
                UpperBody = new Point(pin, -guide),
            };
            new FourLinkMap(links, links.UpperAxle, new Point(0, 0)).Pose(angle - drawn, out LinkagePose pose);
            levels.Add((pose.X, pose.X1 * speed, pose.X2 * speed * speed));
        }

        Assert.Equal(1, Extrapolated(levels.Select(level => level.X)) / 0.168614066163451, 1e-9);
        Assert.Equal(1, Extrapolated(levels.Select(level => level.V)) / -5.0839053803666, 1e-9);
        Assert.Equal(1, Extrapolated(levels.Select(level => level.A)) / -166.917482384781, 1e-8);
    }

    [Fact]
    public void LadderBar_Anywhere_TurnsAboutItsPivot()
    {
        var pivot = new Point(1.1, 0.3);
        var map = new LadderBarMap(new LadderBar { Pivot = pivot }, new Point(0, 0.35), Origin);
        foreach (double lambda in new[] { -0.3, 0, 0.2 })
        {
            map.Pose(lambda, out LinkagePose pose);
            Assert.Equal(pivot.Ahead, pose.InstantCentre.X + Origin.Ahead, 1e-14);
            Assert.Equal(pivot.Up, pose.InstantCentre.Z + Origin.Up, 1e-14);
            Assert.Equal(lambda, pose.Angle, 1e-15);
            Assert.Equal(-(pose.X - pivot.Ahead + Origin.Ahead), pose.X2, 1e-14);
            Assert.Equal(-(pose.Z - pivot.Up + Origin.Up), pose.Z2, 1e-14);
        }
    }

    [Fact]
    public void InstantCentre_OfAFourLink_IsWhereTheBarsMeet() =>
        Gen.Select(RandomCar.Of(Bars.FourLink, Power.Torque), Gen.Double[-0.1, 0.1]).Sample(
            (car, lambda) =>
            {
                var map = new FourLinkMap((FourLink)car.Rear.Linkage, new Point(0, car.Rear.Tire.LoadedRadius), Origin);
                if (!(map.Margin(lambda) > 0.05))
                {
                    return;
                }

                // Intersection of two lines, in ratio to the bars' angle: nearly parallel ones lose digits.
                map.Pose(lambda, out LinkagePose pose);
                IReadOnlyList<BarPosition> bars = map.Bars(lambda);
                (double x, double z) = Meet(bars[0], bars[1]);
                double size = 1 + Math.Abs(x) + Math.Abs(z);

                // Bars that are parallel to the last digit meet nowhere, or anywhere far away.
                if (size > 1e9)
                {
                    return;
                }

                Assert.InRange(Math.Abs(pose.InstantCentre.X - x), 0, 1e-10 * size * size);
                Assert.InRange(Math.Abs(pose.InstantCentre.Z - z), 0, 1e-10 * size * size);
            },
            iter: 1000);

    [Fact]
    public void BarLengths_AnywhereInTheTravel_StayAsMeasured() =>
        Gen.Select(RandomCar.Of(Bars.FourLink, Power.Torque), Gen.Double[-0.15, 0.15]).Sample(
            (car, lambda) =>
            {
                var links = (FourLink)car.Rear.Linkage;
                var map = new FourLinkMap(links, new Point(0, car.Rear.Tire.LoadedRadius), Origin);
                if (!(map.Margin(lambda) > 1e-3))
                {
                    return;
                }

                IReadOnlyList<BarPosition> now = map.Bars(lambda), measured = map.Bars(0);
                Assert.Equal(measured[0].Length, now[0].Length, 1e-13);
                Assert.Equal(measured[1].Length, now[1].Length, 1e-12);
                Assert.Equal(links.UpperBody.Ahead - links.UpperAxle.Ahead, measured[1].Body.Ahead - measured[1].Axle.Ahead, 1e-14);
            },
            iter: 1000);

    [Fact]
    public void StaticLine_OfTheWorkedExample_HasItsInstantCentreAndPercent()
    {
        // Row 10, computed for this project; origin at the contact patch. 1e-12: an intersection of two lines.
        var links = new FourLink
        {
            UpperAxle = new Point(0, 0.46),
            UpperBody = new Point(0.30, 0.42),
            LowerAxle = new Point(0.03, 0.20),
            LowerBody = new Point(0.55, 0.24),
        };
        var line = StaticLine.At(new FourLinkMap(links, new Point(0, 0.35), Origin), 0, 0, 0.35, 0.55, 2.7);
        Assert.Equal(1.247560975609756, line.InstantCentreAhead, 1e-12);
        Assert.Equal(0.293658536585366, line.InstantCentreUp, 1e-12);
        Assert.Equal(115.553185817115, line.Percent, 1e-10);
        Assert.Equal(0.55 / 2.7, line.NeutralSlope, 1e-15);
        Assert.Equal(1.247560975609756 * 0.55 / 2.7, line.NeutralLineUp, 1e-12);
        Assert.Equal(Math.Atan2(0.04, 0.52), line.Bars[0].Climb, 1e-14);
        Assert.Equal(Math.Atan2(-0.04, 0.30), line.Bars[1].Climb, 1e-14);
    }

    [Fact]
    public void StaticLine_OfAPitchedCar_IsThatOfTheTurnedDrawing()
    {
        // Turning the whole side view about the rear wheel centre must not matter to what is read in the ground frame.
        const double pitch = 0.05;
        FourLink links = DoorCar.FourLink();
        var centre = new Point(0, 0.33274);
        Point Turned(Point p)
        {
            (double sin, double cos) = Math.SinCos(pitch);
            double x = p.Ahead, z = p.Up - centre.Up;
            return new Point((cos * x) - (sin * z), centre.Up + (sin * x) + (cos * z));
        }

        var pitched = StaticLine.At(new FourLinkMap(links, centre, Origin), 0, pitch, centre.Up, 0.55, 2.7);
        var drawn = StaticLine.At(
            new FourLinkMap(
                new FourLink
                {
                    LowerAxle = Turned(links.LowerAxle),
                    LowerBody = Turned(links.LowerBody),
                    UpperAxle = Turned(links.UpperAxle),
                    UpperBody = Turned(links.UpperBody),
                },
                centre, Origin),
            0, 0, centre.Up, 0.55, 2.7);
        Assert.Equal(drawn.Percent, pitched.Percent, 1e-10);
        Assert.Equal(drawn.InstantCentreAhead, pitched.InstantCentreAhead, 1e-12);
        Assert.Equal(drawn.InstantCentreUp, pitched.InstantCentreUp, 1e-12);
        Assert.Equal(drawn.Bars[0].Climb, pitched.Bars[0].Climb, 1e-14);
    }

    [Fact]
    public void ParallelBarsOfOneLength_AllAlongALaunch_StillGiveEverything()
    {
        // α' = 0 but for rounding: no instant centre, and nothing else is amiss. Percent is the bars' slope over h/L.
        Car car = DoorCar.Create();
        car = car with
        {
            Rear = car.Rear with
            {
                Linkage = new FourLink
                {
                    LowerAxle = new Point(0, 0.2),
                    LowerBody = new Point(0.5, 0.25),
                    UpperAxle = new Point(0, 0.4),
                    UpperBody = new Point(0.5, 0.45),
                },
            },
            Chassis = car.Chassis with { Ballast = [] },
        };
        StandingCar standing = StandingCar.Find(car);
        standing.Map.Pose(0.1, out LinkagePose pose);
        Assert.Equal(0, pose.Angle1, 1e-14);
        Assert.Equal(0, pose.Angle2, 1e-14);
        Assert.Equal(0, pose.Angle, 1e-15);
        Assert.False(double.IsFinite(standing.Line.InstantCentreAhead));
        Standing s = standing.Standing;
        Assert.Equal(100 * 0.1 / (s.CentreOfGravityHeight / s.Wheelbase), standing.Line.Percent, 1e-9);
        LaunchSolution launch = LaunchRunner.Create(standing, 1e-8).Solve(new RunSettings { Duration = 1 });
        Assert.True(launch.End.Completed);
        for (int i = 0; i <= 100; i++)
        {
            launch.At(i / 100.0, out Observation seen);
            Assert.False(double.IsFinite(seen.InstantCentreAhead));
            Assert.True(double.IsFinite(seen.AntiSquatPercent));
            Assert.True(double.IsFinite(seen.UpperLinkForce + seen.LowerLinkForce + seen.LoadViaLinks + seen.EnergyResidual));
            Assert.InRange(Math.Abs(seen.HousingMomentLeft), 0, 1e-9 * Math.Max(1000, Math.Abs(seen.AxleTorque)));
        }

        launch.At(1, out Observation end);
        Assert.InRange(Math.Abs(end.EnergyResidual), 0, 1e-8 * launch.LargestWork);
    }

    [Fact]
    public void TwoPointUnit_AlongTheTravel_HasTheDerivativeOfItsLength() =>
        Gen.Select(RandomCar.Any, Gen.Double[-0.1, 0.1]).Sample(
            (car, lambda) =>
            {
                var centre = new Point(0, car.Rear.Tire.LoadedRadius);
                ILinkageMap map = LinkageMaps.Create(car.Rear.Linkage, centre, Origin);
                if (!(map.Margin(lambda) > 0.05))
                {
                    return;
                }

                var unit = new TwoPointUnit(car.Rear.DamperAxleMount, car.Rear.DamperBodyMount, centre, Origin);
                double Length(double at)
                {
                    map.Pose(at, out LinkagePose pose);
                    unit.At(pose, out double length, out _, out _, out _);
                    return length;
                }

                map.Pose(lambda, out LinkagePose here);
                unit.At(here, out _, out double rate, out double x, out double z);
                double coarse = (Length(lambda + 4e-4) - Length(lambda - 4e-4)) / 8e-4, fine = (Length(lambda + 2e-4) - Length(lambda - 2e-4)) / 4e-4;

                // Richardson's central differences: h⁴ and rounding over h leave some 1e-9 near a singular linkage; steps five
                // times as long left 2e-7 in one car of some ten thousand.
                Assert.Equal(((4 * fine) - coarse) / 3, rate, 1e-7);
                Assert.Equal(1, (x * x) + (z * z), 1e-14);
            },
            iter: 1000);

    private static double Extrapolated(IEnumerable<double> levels)
    {
        double[] v = [.. levels];
        double a = (2 * v[1]) - v[0], b = (2 * v[2]) - v[1];
        return ((4 * b) - a) / 3;
    }

    private static (double X, double Z) Meet(BarPosition a, BarPosition b)
    {
        double ax = a.Body.Ahead - a.Axle.Ahead, az = a.Body.Up - a.Axle.Up, bx = b.Body.Ahead - b.Axle.Ahead, bz = b.Body.Up - b.Axle.Up;
        double t = (((b.Axle.Ahead - a.Axle.Ahead) * bz) - ((b.Axle.Up - a.Axle.Up) * bx)) / ((ax * bz) - (az * bx));
        return (a.Axle.Ahead + (t * ax), a.Axle.Up + (t * az));
    }

    private static void Near(decimal exact, double found, string what)
    {
        double scale = 1 + Math.Abs((double)exact);
        Assert.True(Math.Abs((double)exact - found) <= 1e-10 * scale, $"{what}: {found:R} in place of {exact}");
    }

    /// <summary>A four-link's closure solved in decimal arithmetic.</summary>
    private sealed class DecimalFourLink
    {
        private readonly decimal _barX, _barZ, _bodyX, _bodyZ, _upperX, _upperZ, _housingX, _housingZ, _centreX, _centreZ, _upperSquared;

        public DecimalFourLink(FourLink links, Point centre)
        {
            (_bodyX, _bodyZ) = ((decimal)links.LowerBody.Ahead, (decimal)links.LowerBody.Up);
            (_upperX, _upperZ) = ((decimal)links.UpperBody.Ahead, (decimal)links.UpperBody.Up);
            (_barX, _barZ) = ((decimal)links.LowerAxle.Ahead - _bodyX, (decimal)links.LowerAxle.Up - _bodyZ);
            (_housingX, _housingZ) = ((decimal)links.UpperAxle.Ahead - (decimal)links.LowerAxle.Ahead, (decimal)links.UpperAxle.Up - (decimal)links.LowerAxle.Up);
            (_centreX, _centreZ) = ((decimal)centre.Ahead - (decimal)links.LowerAxle.Ahead, (decimal)centre.Up - (decimal)links.LowerAxle.Up);
            decimal x = (decimal)links.UpperAxle.Ahead - _upperX, z = (decimal)links.UpperAxle.Up - _upperZ;
            _upperSquared = (x * x) + (z * z);
        }

        public (decimal X, decimal Z, decimal Angle) At(decimal lambda)
        {
            // Followed from the measured position, so that the branch is the assembled one.
            decimal angle = 0;
            const int steps = 12;
            for (int i = 1; i <= steps; i++)
            {
                angle = Close(lambda * i / steps, angle);
            }

            (decimal lx, decimal lz) = Turn(_barX, _barZ, lambda);
            (decimal cx, decimal cz) = Turn(_centreX, _centreZ, angle);
            return (_bodyX + lx + cx, _bodyZ + lz + cz, angle);
        }

        private decimal Close(decimal lambda, decimal angle)
        {
            (decimal lx, decimal lz) = Turn(_barX, _barZ, lambda);
            for (int k = 0; k < 40; k++)
            {
                (decimal hx, decimal hz) = Turn(_housingX, _housingZ, angle);
                decimal dx = _bodyX + lx + hx - _upperX, dz = _bodyZ + lz + hz - _upperZ;
                decimal step = ((dx * dx) + (dz * dz) - _upperSquared) / (2 * ((dz * hx) - (dx * hz)));
                angle -= step;
                if (Math.Abs(step) < 1e-26m)
                {
                    break;
                }
            }

            return angle;
        }

        private static (decimal X, decimal Z) Turn(decimal x, decimal z, decimal angle)
        {
            // Taylor's series; angles here are below 1.
            decimal cos = 1, sin = angle, term = 1;
            for (int k = 1; k < 40; k++)
            {
                term *= angle / k;
                if (k > 1)
                {
                    (cos, sin) = (k % 4) switch
                    {
                        0 => (cos + term, sin),
                        2 => (cos - term, sin),
                        1 => (cos, sin + term),
                        _ => (cos, sin - term),
                    };
                }
            }

            return ((cos * x) - (sin * z), (sin * x) + (cos * z));
        }
    }
}
