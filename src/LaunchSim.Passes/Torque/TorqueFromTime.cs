using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Torque;

/// <summary>
/// The scenario's torque table, scaled until the launch meets one time at one mark. A single time cannot tell the table's
/// shape, and hangs on grip, mass and drag as much as on torque: the doubt is wide.
/// </summary>
public static class TorqueFromTime
{
    /// <summary>How far off the shape of a scaled table may be at any one place, as a share: a choice of this program.</summary>
    public const double ShapeDoubt = 0.2;

    private const double LeastFactor = 0.25, MostFactor = 4;
    private const int Scanned = 33;

    // A pass that is slower than this much of the time asked for is not looked at to its end, s.
    private const double Beyond = 1.5;

    private const string SpinAside = "With still more torque the tyres spin and the same time is met again: if they did spin, the torque was larger than this.";

    private static readonly string[] BeamTime = ["mark_1_beam_time_s"];

    /// <summary>Finds the factor.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="distance">The mark, m from the rear axle's start.</param>
    /// <param name="time">The time at it by the beam, s.</param>
    /// <param name="halfWidth">How far off that time may be, s, nineteen times in twenty.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="TorqueException">No factor meets the time.</exception>
    public static TorqueResult Solve(Scenario scenario, double distance, double time, double halfWidth, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Car car = scenario.Car ?? throw new ArgumentException("The scenario was not read for a run.", nameof(scenario));
        RunSettings settings = scenario.Run with { Marks = [distance], Duration = (2 * time) + Beyond, Tolerance = Math.Max(scenario.Run.Tolerance, 1e-7) };
        using var worker = new LaunchWorker(BeamTime, settings);
        (double low, double high, string? aside) = Bracket(scale => Time(worker, Scaled(car, scale), cancellation), time);

        // By halving: the time falls with the factor here, though it may have a kink where a tyre lets go.
        for (int i = 0; i < 60 && high - low > 1e-9 * high; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Time(worker, Scaled(car, middle), cancellation) > time ? (middle, high) : (low, middle);
        }

        double factor = (low + high) / 2, step = 0.01 * factor;
        double slope = (Time(worker, Scaled(car, factor + step), cancellation) - Time(worker, Scaled(car, factor - step), cancellation)) / (2 * step);
        List<TorqueCause> causes = [new("the time itself", Percent(halfWidth))];
        foreach (DoubtfulNumber number in DoubtfulNumbers.Of(scenario).Where(number => !IsTorque(number.Path)))
        {
            double? changed = Moved(number, 1) is { } up ? up : Moved(number, -1);
            if (changed is { } moved)
            {
                causes.Add(new($"{number.Path}: {number.Text}", Percent(moved - time)));
            }
        }

        causes.Add(new("the shape of the table, which a time cannot tell", 100 * ShapeDoubt));
        double share = Math.Sqrt(causes.Sum(cause => cause.Percent * cause.Percent)) / 100;
        Table table = TableOf(car.Driveline);
        double[] own = table.Y.ToArray();
        double[] torques = [.. own.Select(torque => factor * torque)];
        var notes = new List<string> { "From one time alone: the table keeps the file's shape, only its size was looked for. A log of the driveshaft tells far more." };
        if (aside is not null)
        {
            notes.Add(aside);
        }

        if (scenario.Run.Rollout == 0)
        {
            notes.Add("The file has no run.rollout: the time is taken from the first movement. A timing clock starts 7 to 13 in later (common practice, no source), so the torque comes out too large.");
        }

        return new TorqueResult
        {
            Row = TorqueRow.Of(car.Driveline is EngineDriveline, table.X.ToArray(), torques, [.. torques.Select(torque => share * Math.Abs(torque))]),
            Own = own,
            Causes = [.. causes.OrderByDescending(cause => cause.Percent)],
            Factor = factor,
            Notes = notes,
        };

        double Percent(double change) => Math.Abs(100 * change / (slope * factor));

        double? Moved(DoubtfulNumber number, double share)
        {
            List<ScenarioEdit> edits = [.. number.Edits(share)];
            KeptTireShape.Keep(scenario, edits);
            return LaunchWorker.Edited(scenario, edits, out _) is { } edited && Time(worker, Scaled(edited, factor), cancellation) is var found && double.IsFinite(found) ? found : null;
        }
    }

    internal static bool IsTorque(string path) => path.StartsWith("driveline.torque", StringComparison.Ordinal) || path.StartsWith("driveline.engine.torque", StringComparison.Ordinal);

    /// <summary>Where, rising from little torque, the time first comes down to the one asked for.</summary>
    private static (double Low, double High, string? Aside) Bracket(Func<double, double> timeOf, double time)
    {
        double[] factors = [.. Enumerable.Range(0, Scanned).Select(i => LeastFactor * Math.Pow(MostFactor / LeastFactor, i / (Scanned - 1.0)))];
        double[] times = [.. factors.Select(timeOf)];
        int first = Array.FindIndex(times, found => found <= time);
        if (first > 0)
        {
            // Too much torque spins the tyres, and the time may be met once more on that side.
            bool isAgain = times.Skip(first).Any(found => found > time);
            return (factors[first - 1], factors[first], isAgain ? SpinAside : null);
        }

        string Seconds(double seconds) => seconds.ToString("0.000", CultureInfo.InvariantCulture);
        if (first == 0)
        {
            throw new TorqueException(string.Create(CultureInfo.InvariantCulture, $"found a time of {Seconds(time)} s, slower than with a quarter of the file's torque ({Seconds(times[0])} s): look at the mark and the time"));
        }

        // The quickest may lie between two that were tried.
        int quickest = Array.IndexOf(times, times.Min());
        if (double.IsFinite(times[quickest]) && quickest > 0 && quickest < Scanned - 1)
        {
            (double at, double least) = Least(timeOf, factors[quickest - 1], factors[quickest + 1], time);
            if (least <= time)
            {
                return (factors[quickest - 1], at, SpinAside);
            }

            (factors[quickest], times[quickest]) = (at, least);
        }

        throw new TorqueException(double.IsFinite(times[quickest])
            ? string.Create(CultureInfo.InvariantCulture, $"found a time of {Seconds(time)} s, quicker than any torque gives this car: {Seconds(times[quickest])} s with {factors[quickest]:F2} of the file's; look at grip, mass and rollout first")
            : "with no torque from a quarter to four times the file's does this car reach the mark");
    }

    /// <summary>The least between two ends by the golden section, or the first that is low enough.</summary>
    private static (double At, double Least) Least(Func<double, double> of, double low, double high, double enough)
    {
        double share = (Math.Sqrt(5) - 1) / 2;
        (double a, double b) = (high - (share * (high - low)), low + (share * (high - low)));
        (double atA, double atB) = (of(a), of(b));
        for (int i = 0; i < 40 && Math.Min(atA, atB) > enough; i++)
        {
            if (atA < atB)
            {
                (high, b, atB) = (b, a, atA);
                a = high - (share * (high - low));
                atA = of(a);
            }
            else
            {
                (low, a, atA) = (a, b, atB);
                b = low + (share * (high - low));
                atB = of(b);
            }
        }

        return atA < atB ? (a, atA) : (b, atB);
    }

    private static double Time(LaunchWorker worker, Car car, CancellationToken cancellation)
    {
        double[] time = new double[1];

        // A launch that stops after the mark has its time all the same.
        _ = worker.Run(car, time, cancellation);
        return double.IsFinite(time[0]) ? time[0] : double.PositiveInfinity;
    }

    private static Table TableOf(Driveline driveline) => driveline switch
    {
        AxleTorque axle => axle.Torque,
        EngineDriveline engine => engine.Engine.Torque,
        _ => throw new InvalidOperationException($"No torque table in {driveline.GetType().Name}."),
    };

    private static Car Scaled(Car car, double factor) => car with
    {
        Driveline = car.Driveline switch
        {
            AxleTorque axle => axle with { Torque = Times(axle.Torque, factor) },
            EngineDriveline engine => engine with { Engine = engine.Engine with { Torque = Times(engine.Engine.Torque, factor) } },
            _ => throw new InvalidOperationException($"No torque table in {car.Driveline.GetType().Name}."),
        },
    };

    private static Table Times(Table table, double factor) => new(table.X.ToArray(), table.Y.ToArray().Select(y => factor * y));
}
