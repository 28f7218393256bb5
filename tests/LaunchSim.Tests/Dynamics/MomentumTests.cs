using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Vehicle;
using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Tests.Dynamics;

/// <summary>
/// Momentum of the whole car against the external forces: Newton and Euler for a system of bodies, internal forces gone.
/// The momentum is a function of positions and speeds alone; its rate along the product's own rates is taken by central
/// differences, so that no bias term and no mass matrix is written twice.
/// </summary>
public class MomentumTests
{
    // Richardson's central differences at 1e-4 s leave about 1e-10 of a momentum over 1 s.
    private const double Tolerance = 1e-7;

    [Fact]
    public void Momentum_AtRandomStates_ChangesByTheExternalForces() => RandomState.Any.Sample(
        r =>
        {
            (double px, double pz, double turn) = Rate(r);
            Observation o = r.Observation;
            AbsoluteCar.Result seen = r.Seen;
            double[] y = r.Y;
            const double g = 9.80665;
            double drag = r.Car.Chassis.Aero is { } aero
                ? 0.5 * aero.AirDensity * aero.DragArea * y[StateLayout.XRate] * Math.Abs(y[StateLayout.XRate])
                : 0;
            double[] masses = seen.Masses;
            double weight = g * (masses[0] + masses[3] + masses[6]);
            double forceX = o.RearThrust + o.FrontThrust - drag, forceZ = o.RearLoad + o.FrontLoad + o.WheelieBarForce - weight;

            // About the ground's origin, nose up: tyres at ground level below their wheel centres, with the couples of the
            // shifted load and of rolling resistance; drag at its height; the bar at its wheel.
            double moment = Contact(seen.RearAct, o.RearLoad, o.RearThrust) + Contact(seen.FrontAct, o.FrontLoad, o.FrontThrust)
                + (seen.Pose.BarWheel.X * o.WheelieBarForce) + (drag * (r.Car.Chassis.Aero?.Height ?? 0))
                - (g * ((masses[0] * seen.Pose.Centre.X) + (masses[3] * seen.Pose.Axle.X) + (masses[6] * seen.Pose.Front.X)));

            double scale = weight + Math.Abs(forceX) + Math.Abs(forceZ);
            Assert.InRange(Math.Abs(px - forceX), 0, Tolerance * scale);
            Assert.InRange(Math.Abs(pz - forceZ), 0, Tolerance * scale);
            Assert.InRange(Math.Abs(turn - moment), 0, Tolerance * scale * (Math.Abs(y[StateLayout.X]) + r.Car.Chassis.Wheelbase));
        },
        iter: 2000);

    private static double Contact(AbsoluteCar.TireAct act, double load, double thrust) =>
        (act.Centre.X * load) + (thrust * (act.Radius - act.Centre.Z)) + act.Resistance;

    private static (double X, double Z, double Turn) Rate(RandomState r)
    {
        const double h = 2e-4;
        (double x1, double z1, double t1) = Difference(r, h);
        (double x2, double z2, double t2) = Difference(r, h / 2);
        return (((4 * x2) - x1) / 3, ((4 * z2) - z1) / 3, ((4 * t2) - t1) / 3);
    }

    private static (double X, double Z, double Turn) Difference(RandomState r, double h)
    {
        (double x1, double z1, double t1) = Momentum(r, h);
        (double x0, double z0, double t0) = Momentum(r, -h);
        return ((x1 - x0) / (2 * h), (z1 - z0) / (2 * h), (t1 - t0) / (2 * h));
    }

    private static (double X, double Z, double Turn) Momentum(RandomState r, double step)
    {
        double[] y = r.Y.Zip(r.Rates, (a, b) => a + (step * b)).ToArray();
        AbsoluteCar.Pose p = r.Absolute.Place(y);
        Vector<double> v = r.Absolute.Velocities(y, p);
        double[] m = r.Seen.Masses;
        double turn = (m[0] * p.Centre.Cross(new V(v[0], v[1]))) + (m[2] * v[2])
            + (m[3] * p.Axle.Cross(new V(v[3], v[4]))) + (m[5] * v[5]) + (m[6] * p.Front.Cross(new V(v[6], v[7])));

        // Forward rolling turns against nose up.
        turn -= (r.Car.Rear.Carcass.RimInertia * y[StateLayout.RimSpin]) + (r.Car.Rear.Carcass.BeltInertia * y[StateLayout.BeltSpin])
            + (r.Car.Front.SpinInertia * y[StateLayout.FrontSpin]);
        return ((m[0] * v[0]) + (m[3] * v[3]) + (m[6] * v[6]), (m[1] * v[1]) + (m[4] * v[4]) + (m[7] * v[7]), turn);
    }
}
