using System.Globalization;

namespace LaunchSim.Passes.Dyno;

/// <summary>Makes damper tables of dyno runs: gas taken out, both branches averaged, on a few speeds, never falling.</summary>
public static class DamperTableBuilder
{
    // A table that bends where dampers do: close at low speeds, wide at high ones. Common practice, no source.
    private const double Inch = 0.0254;

    private static readonly double[] Shop = [.. new[] { 0, 0.5, 1, 2, 3, 5, 8, 10, 15, 20, 25, 30, 40, 50, 75, 100 }.Select(speed => speed * Inch)];
    private static readonly double[] Si = [0, 0.01, 0.025, 0.05, 0.075, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.5, 2, 2.5];

    /// <summary>The speeds that a table has, from 0, m/s.</summary>
    /// <param name="isShop">In whole inches a second; otherwise in millimetres.</param>
    public static IReadOnlyList<double> UsualSpeeds(bool isShop) => isShop ? Shop : Si;

    /// <summary>Makes the tables.</summary>
    /// <param name="measurements">The runs, at least one; those of one click are taken together.</param>
    /// <param name="speeds">Speeds of the tables, m/s, from 0, rising; those that were not reached are left out.</param>
    /// <exception cref="DynoException">A side has too little to make a table of.</exception>
    public static DamperTable Build(IReadOnlyList<DamperMeasurement> measurements, IReadOnlyList<double> speeds)
    {
        ArgumentNullException.ThrowIfNull(measurements);
        ArgumentNullException.ThrowIfNull(speeds);
        var notes = new List<string>();
        foreach (DamperMeasurement one in measurements.Where(one => one.GasForce is null))
        {
            notes.Add($"{one.Run.Source} never comes near a standstill: its gas force is not known and is still in the forces; say --gas");
        }

        return new DamperTable(Side("extension", measurements, speeds, 1, notes), Side("compression", measurements, speeds, -1, notes), measurements, notes);
    }

    private static DamperSide Side(string name, IReadOnlyList<DamperMeasurement> measurements, IReadOnlyList<double> speeds, int sign, List<string> notes)
    {
        var clicks = measurements.GroupBy(one => one.Run.Click).OrderBy(click => click.Key).Select(click => (Click: click.Key, Clouds: click.Select(one => new BranchCloud(one, sign)).ToList())).ToList();
        double fastest = clicks.Max(click => click.Clouds.Max(cloud => cloud.Fastest));
        double common = clicks.Min(click => click.Clouds.Min(cloud => cloud.Fastest));
        double[] reached = [.. speeds.Where(speed => speed <= common * (1 + 1e-9))];
        if (reached.Length < 3)
        {
            throw new DynoException(string.Create(CultureInfo.InvariantCulture, $"{name}: found speeds up to {common:G3} m/s only; allowed: at least three of the table's speeds with 0; say smaller ones with --speeds, or look at the sign of the velocity"));
        }

        DamperRow[] rows = [.. clicks.Select(click => Row(click.Click, click.Clouds, reached))];
        bool isSame = rows.Length > 1 && rows.Skip(1).All(row => AreSame(rows[0], row));
        if (isSame)
        {
            rows = [Row(null, [.. clicks.SelectMany(click => click.Clouds)], reached)];
        }

        foreach (DamperRow row in rows.Where(row => row.Evened > 0))
        {
            double scatter = (row.DoubtPercent ?? 0) / 100 * row.Forces.Max();
            string clickWords = row.Click is { } click ? string.Create(CultureInfo.InvariantCulture, $" at click {click}") : "";
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{name}{clickWords}: the measured force falls with speed; evened by {row.Evened:G2} N at most, at {row.EvenedAt:G3} m/s{(row.Evened > scatter ? ", more than scatter explains: a damper that cavitates, or runs mixed up" : "")}"));
        }

        if (rows.Length > 2 && !IsOrdered(rows))
        {
            notes.Add($"{name}: the force does not go one way from click to click; look at which file is which click");
        }

        return new DamperSide(name, reached, rows, fastest, isSame);
    }

    private static DamperRow Row(double? click, List<BranchCloud> clouds, double[] speeds)
    {
        double[] forces = new double[speeds.Length], hysteresis = new double[speeds.Length];
        double squares = 0, sum = 0;
        bool isScattered = false;
        for (int i = 1; i < speeds.Length; i++)
        {
            double below = speeds[i] - speeds[i - 1], above = i + 1 < speeds.Length ? speeds[i + 1] - speeds[i] : below;
            BranchValue[] values = [.. clouds.Select(cloud => cloud.At(speeds[i], Math.Min(below, above) / 2))];
            forces[i] = values.Average(value => value.Mean);
            hysteresis[i] = values.Average(value => value.HalfDifference);
            double[] known = [.. values.Where(value => !double.IsNaN(value.Scatter)).Select(value => value.Scatter * value.Scatter)];

            // Units or runs that differ are doubt too.
            double between = values.Length > 1 ? values.Sum(value => (value.Mean - forces[i]) * (value.Mean - forces[i])) / (values.Length - 1) : 0;
            isScattered |= known.Length > 0 || values.Length > 1;
            squares += (known.Length > 0 ? known.Average() : 0) + between;
            sum += forces[i] * forces[i];
        }

        hysteresis[0] = double.NaN;
        double[] even = Rising(forces);
        int most = Enumerable.Range(0, speeds.Length).MaxBy(i => Math.Abs(even[i] - forces[i]));
        double evened = Math.Abs(even[most] - forces[most]);
        bool isMoved = evened > 1e-9 * (1 + even.Max());
        return new DamperRow(
            click, even, hysteresis, isScattered && sum > 0 ? 200 * Math.Sqrt(squares / sum) : null, isMoved ? evened : 0, isMoved ? speeds[most] : 0, clouds.Sum(cloud => cloud.Count));
    }

    /// <summary>The nearest row that never falls and begins with 0: neighbours that fall take their mean (pool adjacent violators; Ayer and others 1955, from memory).</summary>
    private static double[] Rising(double[] forces)
    {
        var blocks = new List<(double Mean, int Count)>();
        foreach (double force in forces.Skip(1))
        {
            (double Mean, int Count) block = (force, 1);
            while (blocks.Count > 0 && blocks[^1].Mean > block.Mean)
            {
                (double mean, int count) = blocks[^1];
                blocks.RemoveAt(blocks.Count - 1);
                block = (((mean * count) + (block.Mean * block.Count)) / (count + block.Count), count + block.Count);
            }

            blocks.Add(block);
        }

        return [0, .. blocks.SelectMany(block => Enumerable.Repeat(Math.Max(0, block.Mean), block.Count))];
    }

    private static bool AreSame(DamperRow one, DamperRow other)
    {
        if (one.DoubtPercent is not { } first || other.DoubtPercent is not { } second)
        {
            return false;
        }

        double squares = one.Forces.Zip(other.Forces, (a, b) => (a - b) * (a - b)).Sum(), sum = one.Forces.Sum(force => force * force);
        return 100 * Math.Sqrt(squares / sum) <= Math.Sqrt((first * first) + (second * second));
    }

    private static bool IsOrdered(DamperRow[] rows)
    {
        double[] means = [.. rows.Select(row => row.Forces.Average())];
        int[] ways = [.. means.Skip(1).Select((mean, i) => Math.Sign(mean - means[i])).Where(way => way != 0).Distinct()];
        return ways.Length <= 1;
    }
}

/// <summary>What was measured makes no table; the message says why, and how to mend it.</summary>
public sealed class DynoException(string message) : Exception(message);
