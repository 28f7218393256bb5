using System.Runtime.Intrinsics;
using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Integration;
using LaunchSim.Tests.Cars;
using LaunchSim.Tests.Dynamics;
using LaunchSim.Vehicle;
using MathNet.Numerics;

namespace LaunchSim.Tests.Validation;

/// <summary>Rows 19 to 21: the tyre's curve, its transient, and its shape against the brush model.</summary>
public class TireTests
{
    [Theory]
    [InlineData(0.01, 0.187646755261523)]
    [InlineData(0.05, 0.735619337570727)]
    [InlineData(0.1, 0.955842103084141)]
    [InlineData(0.2, 0.999177735641692)]
    [InlineData(0.5, 0.959374724159496)]
    [InlineData(1, 0.914521958012805)]
    public void MagicFormula_OfTheTextbookSet_HasItsValues(double slip, double force)
    {
        // Row 19: B = 10, C = 1.9, D = 1, E = 0.97, a common textbook set (from memory); values computed for this project.
        Assert.Equal(force, new TireCurve(10, 1.9, 0.97).At(slip), 1e-12);
        Assert.Equal(-force, new TireCurve(10, 1.9, 0.97).At(-slip), 1e-12);

        // And as a launch takes it, for two axles at once.
        Vector128<double> pair = new TireCurvePair(new TireCurve(10, 1.9, 0.97), new TireCurve(10, 1.9, 0.97)).At(Vector128.Create(slip, -slip));
        Assert.Equal(force, pair[0], 1e-12);
        Assert.Equal(-force, pair[1], 1e-12);
    }

    [Fact]
    public void MagicFormula_OfTheTextbookSet_PeaksWhereComputed() =>
        Assert.Equal(0.180194399340063, Peak(new TireCurve(10, 1.9, 0.97)), 1e-7);

    [Theory]
    [InlineData(4, 3823.681596, 4234.444513, 4014.76329, 2898.595317)]
    [InlineData(6, 5687.14801, 6090.573982, 5666.961319, 4071.748804)]
    public void MagicFormula_OfTheLoadDependentSet_HasItsValues(double load, double at5, double at10, double at20, double at100)
    {
        // Row 19, second half: SAE 870421's form (from memory), slip in %, load in kN; values computed, ten digits given.
        double[] b = [1.65, -21.3, 1144, 49.6, 226, 0.069, -0.006, 0.056, 0.486];
        double d = (b[1] * load * load) + (b[2] * load);
        double bcd = ((b[3] * load * load) + (b[4] * load)) * Math.Exp(-b[5] * load);
        var curve = new TireCurve(bcd / (b[0] * d), b[0], (b[6] * load * load) + (b[7] * load) + b[8]);
        Assert.Equal(1, d * curve.At(5) / at5, 1e-9);
        Assert.Equal(1, d * curve.At(10) / at10, 1e-9);
        Assert.Equal(1, d * curve.At(20) / at20, 1e-9);
        Assert.Equal(1, d * curve.At(100) / at100, 1e-9);
        if (load == 4)
        {
            Assert.Equal(10.3480403, Peak(curve), 1e-6);
        }
    }

    [Fact]
    public void TireCurve_FromWhatAPersonEnters_HasThatStiffnessPeakAndSliding() => RandomCar.Any.Sample(
        car =>
        {
            foreach (Tire tire in new[] { car.Rear.Tire, car.Front.Tire })
            {
                var curve = TireCurve.From(tire);
                const double h = 1e-7;
                Assert.Equal(tire.SlipStiffness, tire.Grip * curve.At(h) / h, 1e-5 * tire.SlipStiffness);
                Assert.Equal(1, curve.At(tire.PeakSlip), 1e-12);
                Assert.Equal(tire.PeakSlip, Peak(curve), 1e-6);
                Assert.Equal(tire.SlidingRatio, Math.Sin(curve.C * Math.PI / 2), 1e-12);
            }
        },
        iter: 200);

    [Theory]
    [InlineData(0.05)]
    [InlineData(1)]
    [InlineData(40)]
    public void SlipStep_AtAnySpeed_RisesWithTheDistanceRolled(double speed)
    {
        // Row 20: Pacejka, Tyre and Vehicle Dynamics, ch. 7–8 (from memory): 1 − exp(−x/σ), x by the travelling speed.
        // Integrated with 1e-11; 1e-8 as asked.
        var run = new Integrator<WithoutEvents<Contact>>(new(new Contact(speed)), new IntegratorOptions { Tolerance = 1e-11, Scales = [0.001] });
        var nothing = default(NoObserver);
        double rolling = 1.02 * speed, ratio = 0.02 / 1.02, sigma = DoorCar.Create().Rear.Tire.RelaxationLength;
        foreach ((double x, double share) in new[] { (0.5, 0.393469340287367), (1, 0.632120558828558), (3, 0.950212931632136) })
        {
            run.Run(0, [0.0], x * sigma / rolling, ref nothing);
            Assert.Equal(share, run.State[0] / sigma / ratio, 1e-8);
        }
    }

    [Fact]
    public void Slip_TowardsStandstill_IsASpring()
    {
        // Row 20's other half: at rest F grows by C_κ/σ with the contact's deflection, and nothing lets it relax.
        var tire = new TireForce(DoorCar.Create().Rear.Tire, DoorCar.Create().Chassis.RearScale);
        const double u = 1e-8;
        TireResult at = tire.At(ContactMode.Pressing, TravelBranch.Rolling, false, tire.FreeRadius - 0.02, 0, 0, 0, u);
        Assert.Equal(0, at.DeflectionRate);
        Tire entered = DoorCar.Create().Rear.Tire;
        double mu = at.Limit / at.Load;
        Assert.Equal(entered.SlipStiffness * mu / entered.Grip * at.Load / entered.RelaxationLength, at.Thrust / u, 1e-4 * at.Thrust / u);
    }

    [Fact]
    public void Spinning_InOnePlace_HasSlipOne()
    {
        var run = new Integrator<WithoutEvents<Contact>>(new(new Contact(0, 20)), new IntegratorOptions { Tolerance = 1e-11, Scales = [0.001] });
        var nothing = default(NoObserver);
        run.Run(0, [0.0], 1, ref nothing);
        Assert.Equal(1, run.State[0] / DoorCar.Create().Rear.Tire.RelaxationLength, 1e-9);
    }

    [Theory]
    [InlineData(0.02, 1413.89654116927)]
    [InlineData(0.05, 2910.31527395164)]
    [InlineData(0.1, 4131.00704009795)]
    public void BrushModel_ByItsFormula_HasItsValuesAndTheCurveItsShape(double slip, double force)
    {
        // Row 21: brush model from memory, values computed for this project. The Magic Formula with the same slope at 0 and
        // the same peak is another curve: a shape check, at most a tenth of the peak apart on the way to saturation.
        Assert.Equal(force, Brush(slip), 1e-8);
        const double mu = 1.1, load = 4000, stiffness = 8e4;
        var curve = TireCurve.From(stiffness / load, mu, 3 * mu * load / stiffness, 0.9);
        Assert.InRange(Math.Abs((mu * load * curve.At(slip)) - force), 0, 0.1 * mu * load);
    }

    private static double Brush(double slip)
    {
        const double mu = 1.1, load = 4000, stiffness = 8e4;
        double q = stiffness * slip / (3 * mu * load);
        return q >= 1 ? mu * load : mu * load * ((3 * q) - (3 * q * q) + (q * q * q));
    }

    /// <summary>Where the force is largest: C·atan(…) = π/2, for the outer sine's argument only grows while E is at most 1.</summary>
    private static double Peak(TireCurve curve) => FindRoots.OfFunction(
        s =>
        {
            double x = curve.B * s;
            return (curve.C * Math.Atan(x - (curve.E * (x - Math.Atan(x))))) - (Math.PI / 2);
        },
        0, 200 / curve.B, 1e-14);

    /// <summary>One axle's contact at a steady speed, its belt turned 2 % faster or at a speed of its own.</summary>
    private readonly struct Contact : IOdeSystem
    {
        private readonly TireForce _tire;
        private readonly double _speed, _spin;

        public Contact(double speed, double? rolling = null)
        {
            _tire = new TireForce(DoorCar.Create().Rear.Tire, DoorCar.Create().Chassis.RearScale);
            _speed = speed;
            double radius = _tire.FreeRadius - (0.02 / 3);
            _spin = (rolling ?? (1.02 * speed)) / radius;
        }

        public int Dimension => 1;

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy) =>
            dy[0] = _tire.At(ContactMode.Pressing, TravelBranch.Rolling, false, _tire.FreeRadius - 0.02, 0, _speed, _spin, y[0]).DeflectionRate;
    }
}
