using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Validation;

/// <summary>
/// Rows 8 and 9: anti-squat in closed form, and through the simulator as a sequence with small torque, vanishing unsprung
/// mass and stiff tyres.
/// </summary>
public class AntiSquatFormTests
{
    private const double Length = 2.7, Height = 0.55, Up = 0.25, Ahead = 1.2, Pull = 8;

    /// <summary>
    /// Row 8, form after Barton and Fieldhouse, Automotive Chassis Engineering, §3.11, Eqs 3.63–3.69: change of the
    /// springs' load, N, rear and front.
    /// </summary>
    private static (double Rear, double Front) MasslessAxle(double mass, double slope, double a) =>
        (mass * a * ((Height / Length) - slope), -mass * a * Height / Length);

    /// <summary>Row 9, derived for this project: change of the rear tyre's and the rear springs' load, N.</summary>
    private static (double Tire, double Springs) HeavyAxle(double sprung, double axle, double radius, double inertia, double a, double up)
    {
        double spin = inertia * a / radius;
        double tire = ((((sprung * Height) + (axle * radius)) * a) + spin) / Length;
        return (tire, tire - (up / Ahead * sprung * a) - (radius / Ahead * axle * a) - (spin / Ahead));
    }

    [Fact]
    public void ClosedForm_WithAMasslessAxle_HasThePublishedNumbers()
    {
        // To the digits given, 1e-6.
        (double rear, double front) = MasslessAxle(1500, Up / Ahead, Pull);
        Assert.Equal(-55.5556, rear, 5e-5);
        Assert.Equal(-1.1111e-3, rear / 50000, 5e-8);
        Assert.Equal(-2444.444, front, 5e-4);
        Assert.Equal(-54.3210e-3, front / 45000, 5e-8);
        Assert.Equal(1.129149, ((rear / 50000) - (front / 45000)) / Length * 180 / Math.PI, 1e-6);
        Assert.Equal(0, MasslessAxle(1500, 0.2037037037, Pull).Rear, 1e-5);
        (double level, double levelFront) = MasslessAxle(1500, 0.4300412, Pull);
        Assert.Equal(level / 50000, levelFront / 45000, 2e-8);
    }

    [Fact]
    public void Percent_AtTheClosedFormsSlope_IsOneHundred()
    {
        var map = new LadderBarMap(new LadderBar { Pivot = new Point(Ahead, Ahead * Height / Length) }, new Point(0, 0.35), new Point(1.4, 0.5));
        Assert.Equal(100, StaticLine.At(map, 0, 0, 0.35, Height, Length).Percent, 1e-12);
    }

    [Fact]
    public void ClosedForm_WithAHeavyAxleAndWheelSpin_HasThePublishedNumbers()
    {
        // 1e-7 relative, the digits given.
        (double tire, double springs) = HeavyAxle(1400, 130, 0.35, 0, Pull, Up);
        Assert.Equal(2416.2963, tire, 5e-5);
        Assert.Equal(-220.3704, springs, 5e-5);
        Assert.Equal(0, HeavyAxle(1400, 130, 0.35, 0, Pull, 0.22638889).Springs, 1e-4);
        (tire, springs) = HeavyAxle(1400, 130, 0.35, 4, Pull, Up);
        Assert.Equal(2450.1587, tire, 5e-5);
        Assert.Equal(-262.6984, springs, 5e-5);

        // No squat for any length along one line from below the contact point to the CG over the front axle.
        double start = -130 * 0.35 / 1400;
        Assert.Equal(0.22638889, start + (Ahead / Length * (Height - start)), 1e-8);
    }

    [Fact]
    public void Simulator_TowardsAMasslessAxle_ApproachesTheClosedFormInProportion()
    {
        // Error of the rear springs' load in units of the load transferred, of the front's and of pitch in their own.
        (double rear, double front) = MasslessAxle(1500, Up / Ahead, 1);
        double pitch = ((rear / 50000) - (front / 45000)) / Length;
        Falls(n =>
        {
            Result r = Settled(1500, 1.2 * Math.Pow(0.5, n), n, 0.016 * Math.Pow(0.5, n));
            return [(r.RearSprings - rear) / rear, (r.FrontSprings - front) / front, (r.Pitch - pitch) / pitch];
        });
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(4)]
    public void Simulator_WithAHeavyAxle_ApproachesTheClosedFormInProportion(double inertia)
    {
        (double tire, double springs) = HeavyAxle(1400, 130, 0.35, inertia, 1, Up);
        Falls(n =>
        {
            Result r = Settled(1400, 130, n, inertia);
            return [(r.RearTire - tire) / tire, (r.RearSprings - springs) / springs];
        });
    }

    /// <summary>
    /// Each member halves torque, front (and where it is to vanish, rear) unsprung mass and compliance of tyres and springs:
    /// the error must halve (to a third and two thirds), and the last member be within 0.5 %, as asked.
    /// </summary>
    private static void Falls(Func<int, double[]> errors)
    {
        double[][] members = [errors(1), errors(2), errors(3), errors(4)];
        for (int k = 0; k < members[0].Length; k++)
        {
            string shown = string.Join(", ", members.Select(m => m[k].ToString("E2")));
            Assert.True(Math.Abs(members[^1][k]) < 0.005, shown);
            for (int i = 1; i < members.Length; i++)
            {
                double ratio = members[i][k] / members[i - 1][k];

                // Below 1e-5 what is left is the settling itself.
                Assert.True(Math.Abs(members[i][k]) < 1e-5 || (ratio > 0.33 && ratio < 0.67), shown);
            }
        }
    }

    private readonly record struct Result(double RearTire, double RearSprings, double FrontSprings, double Pitch);

    /// <summary>
    /// Loads, and pitch times compliance, once all has settled, per m/s² of acceleration. Torque is brought in slowly, and the
    /// car rolls at 10 m/s: at a standstill the slip springs would swing on. The springs stiffen with the sequence because
    /// the closed forms leave out that the weight moves back over the wheels as the nose comes up: at the table's rates that
    /// alone is 0.7 % of the load transferred, and more than half of what is left for the rear springs.
    /// </summary>
    private static Result Settled(double sprung, double axle, int n, double inertia)
    {
        double small = Math.Pow(0.5, n), stiff = 60 / small;
        double damping = 1.4 * Math.Sqrt(50000 * stiff * 0.5 * sprung);
        Car car = new PlainCar
        {
            Sprung = sprung,
            FrontUnsprung = 4 * small,
            RearUnsprung = axle,
            Wheelbase = Length,
            Centre = new Point(1.35, Height),
            Inertia = 1800,
            Linkage = new LadderBar { Pivot = new Point(Ahead, Up) },
            FrontRate = 45000 * stiff,
            RearRate = 50000 * stiff,
            FrontDamping = damping,
            RearDamping = damping,
            // Stiffer than the springs, and ever more so.
            TireRate = 1e8 / (small * small),
            TireDamping = 0.1 * damping,
            SpinInertia = inertia,
            HousingInertia = 0.1 * small,
            Driveline = new AxleTorque { Torque = new Table([0, 0.15], [0, 0.08 * small * sprung * Pull * 0.35]) },
        }.Build();
        LaunchRunner runner = LaunchRunner.Create(StandingCar.Find(car), 1e-9, mostSteps: 1_000_000);
        var y = new double[StateLayout.Count];
        Modes modes = runner.Release(y);
        Observation still = runner.Observe(0, y, modes);
        const double speed = 10, end = 0.5;
        y[StateLayout.XRate] = speed;
        LaunchModel model = runner.Car.Model;
        y[StateLayout.RimSpin] = y[StateLayout.BeltSpin] = speed / Rolling(model.RearTire, still.RearWheelHeight);
        y[StateLayout.FrontSpin] = speed / Rolling(model.FrontTire, still.FrontWheelHeight);
        Assert.True(runner.Continue(0, y, modes, new RunSettings { Duration = end }).Completed);
        Observation seen = runner.Observe(end, runner.State, runner.Modes);
        double per = 1 / seen.Acceleration;
        return new Result(
            (seen.RearLoad - still.RearLoad) * per, 2 * (seen.RearSpringForce - still.RearSpringForce) * per,
            2 * (seen.FrontSpringForce - still.FrontSpringForce) * per, seen.Pitch * stiff * per);
    }

    private static double Rolling(TireForce tire, double height) => tire.FreeRadius - ((tire.FreeRadius - height) / 3);
}
