using System.Collections.Concurrent;
using System.Globalization;
using LaunchSim.Launch;
using LaunchSim.Passes.Fitting;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Torque;

/// <summary>
/// The torque of both axle shafts over time out of the logs of a pass: the table with which the launch, solved as any other, gives the
/// speeds and the acceleration that were measured. So wind-up, relaxation, slip, load transfer and the nose's rise are where the
/// model has them, and nothing is differentiated. <see cref="InverseDynamics"/> says where to begin.
/// </summary>
/// <remarks>
/// The doubt is that of the channels' noise and clocks by least squares, and beside it what each doubtful number of the scenario moves
/// the table by: with residuals r, their derivatives J by the table and weights W, a number that moves r by δr moves the table by (JᵀWJ)⁻¹JᵀW·δr.
/// </remarks>
public sealed class TorqueFromLogs
{
    /// <summary>Quantities that tell the torque.</summary>
    public static IReadOnlyList<string> Telling { get; } = ["driveshaft_speed", "wheel_speed", "front_wheel_speed", "acceleration", "speed"];

    // Later than this nothing is left of the launch.
    private const double Latest = 1.5, Margin = 0.05;

    private const double Tolerance = 1e-7;

    // A table with fewer instants than this between two of its times cannot be told there.
    private const double LeastSpan = 0.02;

    // A torque may be so many times the largest of the file before the data have to insist.
    private const double PriorShare = 1;

    private static readonly double[] UsualTimes = [0, 0.02, 0.05, 0.08, 0.12, 0.16, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.25, 1.5];

    private readonly Car _car;
    private readonly double[] _times;
    private readonly double _unit;
    private readonly RunSettings _settings;
    private readonly IReadOnlyList<FitLog> _logs;
    private readonly FitChannel[][] _channels;
    private readonly double[] _prior;
    private readonly ConcurrentBag<LaunchSolution> _free = [];

    private TorqueFromLogs(Car car, double[] times, double[] start, double unit, RunSettings settings, IReadOnlyList<FitLog> logs, FitChannel[][] channels)
    {
        (_car, _times, _unit, _settings, _logs, _channels) = (car, times, unit, settings, logs, channels);
        _prior = [.. start.Select(torque => torque / unit)];
        ResidualCount = times.Length + logs.Count + channels.Sum(log => log.Sum(channel => channel.Count));
    }

    private int ResidualCount { get; }

    /// <summary>Finds the table.</summary>
    /// <param name="scenario">The set-up of the pass, read for a run.</param>
    /// <param name="logs">Its logs, times from the release.</param>
    /// <param name="threads">On how many threads, 1 or more.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="TorqueException">The logs do not tell it.</exception>
    public static TorqueResult Solve(Scenario scenario, IReadOnlyList<FitLog> logs, int threads, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(logs);
        Car car = scenario.Car ?? throw new ArgumentException("The scenario was not read for a run.", nameof(scenario));
        FitChannel[][] channels = [.. logs.Select(log => log.Series.Where(series => Telling.Contains(series.Quantity.Key)).Select(series => FitChannel.Of(series, 0, Latest)).Where(channel => channel.Count > 0).ToArray())];
        double last = channels.SelectMany(log => log).Select(channel => channel.Times[^1]).DefaultIfEmpty(0).Max();
        if (last < 3 * LeastSpan)
        {
            throw new TorqueException($"found no speed and no acceleration after the release in the logs; allowed: one of {string.Join(", ", Telling)}");
        }

        double[] times = Times(car.Driveline, last);
        RunSettings settings = scenario.Run with { Marks = [], Duration = last + Margin, Tolerance = Math.Max(scenario.Run.Tolerance, Tolerance) };
        StandingCar standing = StandingCar.Find(car);
        LaunchSolution predicted = LaunchRunner.Create(standing, settings.Tolerance).Solve(settings, null, cancellation);
        double[] own = [.. times.Select(time => OwnTorque(predicted, time))];
        double[] start = InverseDynamics.Table(standing, [.. channels.SelectMany(log => log)], times) ?? own;
        double unit = Math.Max(start.Max(), own.Max());
        if (!(unit > 0))
        {
            throw new TorqueException("found neither a torque in the file nor an acceleration in the logs");
        }

        var model = new TorqueFromLogs(car, times, start, unit, settings, logs, channels);
        return model.Solve(scenario, own, predicted, threads, cancellation);
    }

    private TorqueResult Solve(Scenario scenario, double[] own, LaunchSolution predicted, int threads, CancellationToken cancellation)
    {
        double[] first = [.. _prior, .. _logs.Select(_ => 0.0)];
        double[] steps = [.. _times.Select(_ => 2e-3), .. _logs.Select(_ => 0.05)];
        var options = new LeastSquaresOptions
        {
            Steps = steps,
            Loss = RobustLoss.Huber,
            Tolerance = 1e-2,
            MostIterations = 60,
            Threads = threads,
            Starts = [[.. own.Select(torque => torque / _unit), .. _logs.Select(_ => 0.0)]],
        };
        LeastSquaresResult found = LeastSquares.Solve((p, r) => Residuals(_car, p, r), ResidualCount, first, options, cancellation);
        if (double.IsNaN(found.SumOfSquares))
        {
            throw new TorqueException("with the torque that the logs seem to have this car does not come to the end of its launch: look at the set-up and at the units of the log");
        }

        double[] before = new double[ResidualCount];
        bool hasBefore = Data(predicted, new double[_logs.Count], before.AsSpan(_times.Length + _logs.Count));
        int data = _times.Length + _logs.Count;
        double scatter = found.Residuals.Skip(data).Zip(found.Weights.Skip(data), (r, w) => w * r * r).Sum() / Math.Max(1, ResidualCount - data - _times.Length);
        double inflation = Math.Max(1, scatter);
        double[] squares = [.. Enumerable.Range(0, _times.Length).Select(k => inflation * found.Covariance[k, k])];
        List<TorqueCause> causes = [new("noise and clocks of the logs", Percent(found.Parameters, squares.Select(Math.Sqrt)))];
        AddDoubts(scenario, found, steps, threads, squares, causes, cancellation);
        double[] torques = [.. found.Parameters.Take(_times.Length).Select(share => share * _unit)], halves = [.. squares.Select(square => 2 * Math.Sqrt(square) * _unit)];
        var notes = new List<string>();
        for (int k = 0; k < torques.Length; k++)
        {
            // A table may not fall below 0; what does so by less than its doubt is 0 within it.
            if (torques[k] < -halves[k])
            {
                notes.Add(string.Create(CultureInfo.InvariantCulture, $"At {_times[k]:0.###} s the logs want a torque below 0, by more than its doubt: 0 is taken. Look at where t = 0 is, and at the ratio and the sign of the channels."));
            }

            torques[k] = Math.Max(0, torques[k]);
        }

        if (!found.Converged)
        {
            notes.Add($"The search ended before its end: {found.Reason}.");
        }

        if (scatter > 4)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"The channels are met only to {Math.Sqrt(scatter):F1} times their noise: another number of the car is off, or a unit or a ratio of the log. The doubt is widened by as much."));
        }

        if (!_channels.SelectMany(log => log).Any(channel => channel.Series.Quantity.Key is "acceleration" or "front_wheel_speed" or "speed"))
        {
            notes.Add("No acceleration and no speed of the front wheels: where the tyres spin, how much of the torque moves the car hangs on the grip in the file.");
        }

        return new TorqueResult
        {
            Row = TorqueRow.Of(false, _times, torques, halves),
            Own = own,
            Causes = [.. causes.OrderByDescending(cause => cause.Percent)],
            Channels = Told(found, hasBefore ? before : null),
            Notes = notes,
        };
    }

    private void AddDoubts(
        Scenario scenario, LeastSquaresResult found, double[] steps, int threads, double[] squares, List<TorqueCause> causes, CancellationToken cancellation)
    {
        var differences = new Differences((p, r) => Residuals(_car, p, r), ResidualCount, steps, threads, cancellation);
        double[,] derivatives = differences.Take(found.Parameters, found.Residuals, new HashSet<int>());
        DoubtfulNumber[] numbers = [.. DoubtfulNumbers.Of(scenario).Where(number => !number.Path.StartsWith("driveline.", StringComparison.Ordinal) && !number.Path.StartsWith("run.", StringComparison.Ordinal))];
        var moves = new double[]?[numbers.Length];
        Parallel.For(0, numbers.Length, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation }, i => moves[i] = Moved(numbers[i], 0.5) ?? Moved(numbers[i], -0.5));
        for (int i = 0; i < numbers.Length; i++)
        {
            if (moves[i] is { } move)
            {
                causes.Add(new($"{numbers[i].Path}: {numbers[i].Text}", Percent(found.Parameters, move)));
                for (int k = 0; k < squares.Length; k++)
                {
                    squares[k] += move[k] * move[k];
                }
            }
        }

        // What a number moved by one standard deviation does to the table.
        double[]? Moved(DoubtfulNumber number, double share)
        {
            List<ScenarioEdit> edits = [.. number.Edits(share)];
            KeptTireShape.Keep(scenario, edits);
            double[] residuals = new double[ResidualCount];
            if (LaunchWorker.Edited(scenario, edits, out _) is not { } car || !Residuals(car, found.Parameters, residuals))
            {
                return null;
            }

            double[] pull = new double[found.Parameters.Length];
            for (int k = 0; k < ResidualCount; k++)
            {
                double weighted = found.Weights[k] * (residuals[k] - found.Residuals[k]);
                for (int j = 0; j < pull.Length; j++)
                {
                    pull[j] += derivatives[k, j] * weighted;
                }
            }

            return [.. Enumerable.Range(0, _times.Length).Select(k => Enumerable.Range(0, pull.Length).Sum(j => found.Covariance[k, j] * pull[j]))];
        }
    }

    private double Percent(double[] parameters, IEnumerable<double> deviations) =>
        200 * Math.Sqrt(deviations.Sum(deviation => deviation * deviation) / parameters.Take(_times.Length).Sum(share => share * share));

    private List<TorqueChannel> Told(LeastSquaresResult found, double[]? before)
    {
        var told = new List<TorqueChannel>();
        int at = _times.Length + _logs.Count;
        for (int i = 0; i < _logs.Count; i++)
        {
            foreach (FitChannel channel in _channels[i])
            {
                double Size(double[] residuals) => Math.Sqrt(residuals.Skip(at).Take(channel.Count).Average(r => r * r));
                told.Add(new TorqueChannel($"{channel.Series.Quantity.Words} ({channel.Series.Source})", channel.Count, before is null ? double.NaN : Size(before), Size(found.Residuals)));
                at += channel.Count;
            }
        }

        return told;
    }

    /// <summary>The table's distance from where it began (a wide prior), the clocks', then the channels'.</summary>
    private bool Residuals(Car car, ReadOnlySpan<double> parameters, Span<double> residuals)
    {
        int count = _times.Length;
        for (int k = 0; k < count; k++)
        {
            residuals[k] = (parameters[k] - _prior[k]) / PriorShare;
            if (!(parameters[k] > -0.5 && parameters[k] < 20))
            {
                return false;
            }
        }

        parameters[count..].CopyTo(residuals[count..]);
        double[] torques = [.. parameters[..count].ToArray().Select(share => share * _unit)];
        Car tried = car with { Driveline = new AxleTorque { Torque = new Table(_times, torques), PowerShare = car.Driveline is AxleTorque ? car.Driveline.PowerShare : Table.Constant(1) } };
        if (!StandingCar.TryFind(tried, out StandingCar? standing, out _))
        {
            return false;
        }

        _ = _free.TryTake(out LaunchSolution? reuse);
        LaunchSolution launch = LaunchRunner.Create(standing!, _settings.Tolerance).Solve(_settings, reuse);
        bool isGood = LaunchFailure.Of(launch) is null && Data(launch, parameters[count..], residuals[(count + _logs.Count)..]);
        _free.Add(launch);
        return isGood;
    }

    private bool Data(LaunchSolution launch, ReadOnlySpan<double> clocks, Span<double> residuals)
    {
        int at = 0;
        for (int i = 0; i < _logs.Count; i++)
        {
            foreach (FitChannel channel in _channels[i])
            {
                if (!channel.Residuals(launch, clocks[i] * _logs[i].ShiftSd, residuals.Slice(at, channel.Count)))
                {
                    return false;
                }

                at += channel.Count;
            }
        }

        return true;
    }

    private static double OwnTorque(LaunchSolution launch, double time)
    {
        launch.At(Math.Min(time, launch.Duration), out Dynamics.Observation seen);
        return double.IsFinite(seen.AxleTorque) ? seen.AxleTorque : 0;
    }

    /// <summary>The file's own times as far as the log goes, or usual ones; the last is where the log ends.</summary>
    private static double[] Times(Driveline driveline, double last)
    {
        double[] wanted = driveline is AxleTorque { Torque.Count: > 1 } axle ? axle.Torque.X.ToArray() : UsualTimes;
        List<double> times = [.. wanted.Where(time => time >= 0 && time <= last - LeastSpan)];
        if (times.Count == 0 || times[0] > 0)
        {
            times.Insert(0, 0);
        }

        // The end values hold beyond the ends: a log that goes on tells the last place too.
        if (wanted.Any(time => time > last - LeastSpan))
        {
            times.Add(last);
        }

        return [.. times];
    }
}
