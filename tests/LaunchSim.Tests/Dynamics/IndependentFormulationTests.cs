using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Dynamics;

/// <summary>
/// The product's minimal coordinates against absolute coordinates with Lagrange multipliers, solved by MathNet's LU
/// (<see cref="AbsoluteCar"/>; source: docs/model.md and Newton–Euler), over random cars of every linkage and driveline.
/// </summary>
public class IndependentFormulationTests
{
    // What two orders of summing leave at an ill-conditioned random state; an error in a term shows as 1e-3 or more.
    private const double Tolerance = 1e-7;

    private const long Cars = 2000;

    [Fact]
    public void Accelerations_AtRandomStates_AreThoseOfTheMultiplierFormulation() => RandomState.Any.Sample(
        r =>
        {
            AbsoluteCar.Result seen = r.Seen;
            double[] rates = r.Rates;

            // Each against the largest of its own unit, gravity at least: a sum that happens to vanish has no relative error.
            double metres = new[] { seen.Accelerations[0], seen.Accelerations[1], seen.FrontTravel, 9.81 }.Max(Math.Abs);
            double radians = new[] { seen.Accelerations[2], seen.Linkage, 9.81 / r.Car.Chassis.Wheelbase }.Max(Math.Abs);
            Near(seen.Accelerations[0], rates[StateLayout.XRate], metres, "x''");
            Near(seen.Accelerations[1], rates[StateLayout.ZRate], metres, "z''");
            Near(seen.Accelerations[2], rates[StateLayout.PitchRate], radians, "θ''");
            Near(seen.Linkage, rates[StateLayout.LinkageRate], radians, "λ''");
            Near(seen.FrontTravel, rates[StateLayout.FrontTravelRate], metres, "s''");
            Near(seen.Rim, rates[StateLayout.RimSpin], Math.Abs(seen.Rim) + 1, "ω'");
            Near(seen.Belt, rates[StateLayout.BeltSpin], Math.Abs(seen.Belt) + 1, "Ω'");
            Near(seen.FrontSpin, rates[StateLayout.FrontSpin], Math.Abs(seen.FrontSpin) + 1, "Ω_f'");
            Near(seen.RearDeflection, rates[StateLayout.RearDeflection], Math.Abs(seen.RearDeflection) + 1, "u' rear");
            Near(seen.FrontDeflection, rates[StateLayout.FrontDeflection], Math.Abs(seen.FrontDeflection) + 1, "u' front");
            Near(seen.Engine, rates[StateLayout.EngineSpeed], Math.Abs(seen.Engine) + 100, "ω_e'");
            Near(r.Y[StateLayout.RimSpin] - r.Y[StateLayout.BeltSpin], rates[StateLayout.Windup], 1, "ψ'");
        },
        iter: Cars);

    [Fact]
    public void Ledger_AtRandomStates_HasThePowersAndEnergyOfTheMultiplierFormulation() => RandomState.Any.Sample(
        r =>
        {
            AbsoluteCar.Result seen = r.Seen;
            double shaft = r.Y[StateLayout.RimSpin] + seen.Velocities[5];
            Near(seen.AxleTorque * shaft, r.Rates[StateLayout.Work], Math.Abs(seen.AxleTorque * shaft) + 1000, "work");
            Near(seen.Lost, r.Rates[StateLayout.Dissipated], Math.Abs(seen.Lost) + 1000, "losses");
            double stored = seen.Energy - r.Absolute.At(0, r.Absolute.Standing.ToArray(), default).Energy;
            Near(stored, r.Observation.EnergyResidual - r.Y[StateLayout.Dissipated] + r.Y[StateLayout.Work], Math.Abs(stored) + 1000, "energy");
        },
        iter: Cars);

    [Fact]
    public void LinkForces_AtRandomStates_AreTheMultipliers() => RandomState.Any.Where(r => r.Car.Rear.Linkage is FourLink).Sample(
        r =>
        {
            double scale = Scale(r);
            Near(r.Seen.UpperPull, r.Observation.UpperLinkForce, scale, "upper bar");
            Near(r.Seen.LowerPull, r.Observation.LowerLinkForce, scale, "lower bar");
        },
        iter: Cars);

    [Fact]
    public void Housing_AtRandomStates_MeetsItsThirdEquation() => RandomState.Any.Sample(
        r =>
        {
            // Three equations and two unknowns: what is left over is rounding, against the axle torque or, where that is
            // small, the moment that the bars' own forces have about the axle at a tenth of a metre.
            double scale = Math.Max(Math.Abs(r.Seen.AxleTorque), 0.1 * Scale(r));
            Assert.InRange(Math.Abs(r.Observation.HousingMomentLeft), 0, 1e-9 * scale);
        },
        iter: Cars);

    [Fact]
    public void LoadPaths_AtRandomStates_SumToTheChangeOfTireLoad() => RandomState.Any.Sample(
        r =>
        {
            Observation o = r.Observation;
            double sum = o.LoadViaLinks + o.LoadViaSprings + o.LoadViaDampers + o.LoadViaOther;
            Assert.InRange(Math.Abs(sum - (o.RearLoad - r.Runner.Car.Standing.RearLoad)), 0, 1e-9 * Scale(r));

            // And each path is the force of its own parts on the housing, upward, by the second formulation.
            Near(r.Seen.RearAct.Load, o.RearLoad, Scale(r), "load");
            Near(r.Seen.RearAct.Thrust, o.RearThrust, Scale(r), "thrust");
            Near(r.Seen.FrontAct.Load, o.FrontLoad, Scale(r), "front load");
            Near(r.Seen.FrontAct.Thrust, o.FrontThrust, Scale(r), "front thrust");
            double other = (r.Car.Rear.UnsprungMass * r.Seen.Accelerations[4]) - r.Seen.BarForce;
            Near(other, o.LoadViaOther, Scale(r), "other");
        },
        iter: Cars);

    [Fact]
    public void StandingCar_ByTheMultiplierFormulation_IsInEquilibrium() => RandomState.Any.Sample(
        r =>
        {
            // Five accelerations, two preloads: the other three say that the tyres carry the car where it stands. 1e-9 g
            // and rad/s² alike.
            Assert.InRange(r.Absolute.PreloadMisfit, 0, 1e-8);
            LaunchModel model = r.Runner.Car.Model;
            Near(r.Absolute.RearPreload, 0.5 * model.SpringPreload, r.Absolute.RearPreload, "rear preload");
            Near(r.Absolute.FrontPreload, 0.5 * model.FrontSpringPreload, r.Absolute.FrontPreload, "front preload");
        },
        iter: 300);

    private static double Scale(RandomState r) =>
        Math.Max(r.Seen.Multipliers.AbsoluteMaximum(), r.Car.Chassis.RearScale) + Math.Abs(r.Seen.AxleTorque);

    private static void Near(double expected, double found, double scale, string what) => Assert.True(
        Math.Abs(expected - found) <= Tolerance * scale, $"{what}: {found:R} in place of {expected:R}, off by {Math.Abs(expected - found) / scale:E1}.");
}
