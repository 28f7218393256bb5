using System.Globalization;

namespace LaunchSim.Passes.Dyno;

/// <summary>
/// Finds out which way is which. A damper resists, so the force's sign follows from the speed's; and the gas pushes the shaft out,
/// so the dyno has to push harder to close it than to open it: the force at a standstill has the sign of compression.
/// </summary>
public static class DynoSigns
{
    // A standstill force below this share of the largest force, or below this many newtons, tells no direction.
    private const double TellingShare = 0.015, TellingForce = 8;

    // Slower than this share of the fastest row is near enough to a standstill to lead back to it.
    private const double SlowShare = 0.1;

    // So much of force times speed has to be of one sign for a damper.
    private const double ResistingShare = 0.8;

    /// <summary>Sets the signs of a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="extensionIsPositive">Whether a positive speed is extension, where somebody said so.</param>
    /// <param name="gas">The gas force, N, where somebody said so.</param>
    /// <param name="problem">What has to be asked back, when null is returned; or a contradiction worth telling.</param>
    public static DamperMeasurement? Set(DynoRun run, bool? extensionIsPositive, double? gas, out string? problem)
    {
        ArgumentNullException.ThrowIfNull(run);
        problem = null;
        double[] velocities = [.. run.Velocities], forces = [.. run.Forces];
        double? still = Standstill(run, velocities, forces);
        double offset = still ?? 0;
        double along = 0, all = 0;
        for (int i = 0; i < velocities.Length; i++)
        {
            double power = (forces[i] - offset) * velocities[i];
            along += power;
            all += Math.Abs(power);
        }

        if (!(Math.Abs(along) >= ResistingShare * all) || all == 0)
        {
            problem = string.Create(CultureInfo.InvariantCulture, $"{run.Source}: found a force that neither goes with the velocity nor against it (power of one sign in {(all == 0 ? 0 : 50 + (50 * Math.Abs(along) / all)):F0} % of it); allowed: the force of a damper, which resists; look at which columns are force and velocity");
            return null;
        }

        if (along < 0)
        {
            forces = [.. forces.Select(force => -force)];
            offset = -offset;
        }

        bool isTelling = Math.Abs(offset) > Math.Max(TellingForce, TellingShare * forces.Max(Math.Abs));
        bool? told = isTelling ? offset < 0 : null;
        bool? isPositive = run.IsSided ? true : extensionIsPositive ?? told;
        if (isPositive is not { } positive)
        {
            problem = $"{run.Source}: found no gas force that tells which sign of the velocity is extension; say --extension positive or --extension negative: the velocity's sign while the damper gets longer";
            return null;
        }

        if (told is { } seen && seen != positive)
        {
            problem = string.Create(CultureInfo.InvariantCulture, $"{run.Source}: with this sign of extension the damper pulls its shaft in with {Math.Abs(offset):F0} N at a standstill; gas pushes it out: look at the sign");
        }

        if (!positive)
        {
            velocities = [.. velocities.Select(velocity => -velocity)];
            forces = [.. forces.Select(force => -force)];
            offset = -offset;
        }

        // Falling through zero is the outer end of the stroke, rising the inner one.
        List<Crossing> aligned = Crossings(velocities, forces, run.Displacements);
        (List<Crossing> outer, List<Crossing> inner) = ([.. aligned.Where(one => !one.IsRising)], [.. aligned.Where(one => one.IsRising)]);
        bool isLoop = outer.Count > 0 && inner.Count > 0 && !run.IsSided;
        double? swing = isLoop ? outer.Average(one => one.Force) - inner.Average(one => one.Force) : null;
        double? rate = null;
        if (swing is { } more && run.Displacements is not null)
        {
            double way = Math.Abs(outer.Average(one => one.Place) - inner.Average(one => one.Place));
            rate = way > 0 ? more / way : null;
        }

        return new DamperMeasurement(run, velocities, forces, gas ?? (still is null ? null : -offset), swing, rate, isLoop);
    }

    /// <summary>
    /// The force at a standstill, signs as they are: of strokes the mean of both ends, each by its own mean, which is that of the middle of
    /// the stroke; of single rows what the two slowest of either side lead back to. Null where nothing is slow enough.
    /// </summary>
    private static double? Standstill(DynoRun run, double[] velocities, double[] forces)
    {
        List<Crossing> crossings = run.IsSided ? [] : Crossings(velocities, forces, null);
        if (crossings.Any(one => one.IsRising) && crossings.Any(one => !one.IsRising))
        {
            return (crossings.Where(one => one.IsRising).Average(one => one.Force) + crossings.Where(one => !one.IsRising).Average(one => one.Force)) / 2;
        }

        double[] sides = [.. new[] { 1, -1 }.Select(sign => AtRest(velocities, forces, sign)).OfType<double>()];
        return sides.Length == 2 ? sides.Average() : null;
    }

    private static double? AtRest(double[] velocities, double[] forces, int sign)
    {
        // A sheet's own rows at 0 stand for either side; which of them is told by the sign of the zero.
        (double Speed, double Force)[] rows = [.. velocities.Select((velocity, i) => (Speed: sign * velocity, Force: forces[i]))
            .Where((row, i) => row.Speed > 0 || (velocities[i] == 0 && double.IsNegative(velocities[i]) == (sign < 0)))
            .OrderBy(row => row.Speed)];
        if (rows.Length < 2 || rows[0].Speed > SlowShare * velocities.Max(Math.Abs))
        {
            return rows.Length > 0 && rows[0].Speed == 0 ? rows[0].Force : null;
        }

        (double Speed, double Force) next = rows.FirstOrDefault(row => row.Speed > rows[0].Speed, rows[0]);
        return next.Speed == rows[0].Speed ? rows[0].Force : rows[0].Force - (rows[0].Speed * (next.Force - rows[0].Force) / (next.Speed - rows[0].Speed));
    }

    private static List<Crossing> Crossings(double[] velocities, double[] forces, IReadOnlyList<double>? places)
    {
        var crossings = new List<Crossing>();
        double most = velocities.Max(Math.Abs);
        for (int i = 0; i + 1 < velocities.Length; i++)
        {
            (double from, double to) = (velocities[i], velocities[i + 1]);

            // A jump from one side to the other over most of the range is the next sheet line, not a stroke.
            if (from == to || from * to > 0 || to == 0 || Math.Abs(to - from) > 0.5 * most)
            {
                continue;
            }

            double share = from / (from - to);
            double place = places is null ? 0 : places[i] + (share * (places[i + 1] - places[i]));
            crossings.Add(new Crossing(to > from, forces[i] + (share * (forces[i + 1] - forces[i])), place));
        }

        return crossings;
    }

    private readonly record struct Crossing(bool IsRising, double Force, double Place);
}
