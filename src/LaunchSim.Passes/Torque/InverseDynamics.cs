using LaunchSim.Launch;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Measured;
using LaunchSim.Vehicle;
using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Passes.Torque;

/// <summary>
/// The torque of both axle shafts straight from a speed and an acceleration:
/// T = r·(M·a + ½ρC_dA·v² + c_f·N_f + I_f·a/r_f²) + c_r·N_r·r + I_r·dω/dt,
/// with the whole car's mass M, loaded radii r and r_f, standing loads N for the rolling resistance c, the front wheels' inertia I_f and that of
/// rims and belts I_r.
/// </summary>
/// <remarks>
/// It leaves out the carcass's wind-up, the tyre's relaxation, and that the nose comes up under an accelerometer; derivatives of
/// measured speeds are noisy. So it is where <see cref="TorqueFromLogs"/> begins, which lets the launch itself account for all that.
/// </remarks>
public static class InverseDynamics
{
    // A slope is taken over so many spans of a channel to either side.
    private const int Reach = 4;

    private const double Gravity = 9.80665;

    /// <summary>A table through what the channels say at each instant, by least squares over its hats; null where no channel tells it.</summary>
    /// <param name="standing">The car.</param>
    /// <param name="channels">Channels of the pass.</param>
    /// <param name="times">Times of the table, s.</param>
    public static double[]? Table(StandingCar standing, IReadOnlyList<FitChannel> channels, IReadOnlyList<double> times)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(channels);
        ArgumentNullException.ThrowIfNull(times);
        Car car = standing.Car;
        FitChannel? rear = Find("driveshaft_speed", "wheel_speed"), front = Find("front_wheel_speed"), felt = Find("acceleration"), ground = Find("speed");
        FitChannel? leading = rear ?? front ?? felt ?? ground;
        if (leading is null)
        {
            return null;
        }

        (double radius, double frontRadius) = (standing.Standing.RearWheelHeight, standing.Standing.FrontWheelHeight);
        double weight = standing.Standing.FrontLoad + standing.Standing.RearLoad, mass = weight / Gravity;
        double rolling = (car.Front.Tire.RollingResistance * standing.Standing.FrontLoad) + (car.Rear.Tire.RollingResistance * standing.Standing.RearLoad);
        var matrix = Matrix<double>.Build.Dense(leading.Count + times.Count, times.Count);
        var right = Vector<double>.Build.Dense(leading.Count + times.Count);
        double speed = 0, last = 0;
        for (int i = 0; i < leading.Count; i++)
        {
            double time = leading.Times[i];
            if (time < 0 || time > times[^1])
            {
                continue;
            }

            double spin = rear is null ? double.NaN : Slope(rear, time);
            double a = felt is not null ? Value(felt, time) : front is not null ? Slope(front, time) * frontRadius : ground is not null ? Slope(ground, time) : spin * radius;
            speed += a * (time - last);
            last = time;
            double turning = double.IsNaN(spin) ? a / radius : spin;
            double thrust = (mass * a) + (standing.Model.HalfDrag * speed * Math.Abs(speed)) + rolling + (standing.Model.FrontSpinInertia * a / (frontRadius * frontRadius));
            right[i] = (radius * thrust) + ((standing.Model.RimInertia + standing.Model.BeltInertia) * turning);
            for (int k = 0; k < times.Count; k++)
            {
                matrix[i, k] = Hat(times, k, time);
            }
        }

        // Where no instant tells a place of the table, it takes its neighbours' mean.
        for (int k = 0; k < times.Count; k++)
        {
            int row = leading.Count + k;
            matrix[row, k] += 1e-2;
            matrix[row, k > 0 ? k - 1 : Math.Min(1, times.Count - 1)] -= 1e-2;
        }

        return [.. matrix.QR().Solve(right).Select(torque => Math.Max(0, torque))];

        FitChannel? Find(params string[] keys) => keys.Select(key => channels.FirstOrDefault(channel => channel.Series.Quantity.Key == key && channel.Count > (2 * Reach) + 1)).FirstOrDefault(channel => channel is not null);
    }

    private static double Hat(IReadOnlyList<double> times, int k, double time) =>
        k > 0 && time < times[k] ? Math.Max(0, (time - times[k - 1]) / (times[k] - times[k - 1]))
        : k + 1 < times.Count && time > times[k] ? Math.Max(0, (times[k + 1] - time) / (times[k + 1] - times[k]))
        : 1;

    private static double Value(FitChannel channel, double time)
    {
        int at = Nearest(channel, time);
        int from = Math.Max(0, at - 1), to = Math.Min(channel.Count - 1, at + 1);
        return Enumerable.Range(from, to - from + 1).Average(i => channel.Values[i]);
    }

    private static double Slope(FitChannel channel, double time)
    {
        int at = Nearest(channel, time), from = Math.Max(0, at - Reach), to = Math.Min(channel.Count - 1, at + Reach);
        int[] near = [.. Enumerable.Range(from, to - from + 1)];
        double t = near.Average(i => channel.Times[i]), v = near.Average(i => channel.Values[i]);
        return near.Sum(i => (channel.Times[i] - t) * (channel.Values[i] - v)) / near.Sum(i => (channel.Times[i] - t) * (channel.Times[i] - t));
    }

    private static int Nearest(FitChannel channel, double time)
    {
        int at = 0;
        while (at + 1 < channel.Count && channel.Times[at + 1] <= time)
        {
            at++;
        }

        return at;
    }
}
