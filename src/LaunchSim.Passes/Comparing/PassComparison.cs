using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Comparing;

/// <summary>A pass's logs over the prediction: channels, figures, instants.</summary>
public sealed class PassComparison
{
    // Where speeds are held beside one another, s.
    private static readonly double[] Instants = [0.1, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2];

    private PassComparison(LaunchOutcome run, IReadOnlyList<ComparedLog> logs, IReadOnlyList<PassChannel> channels)
    {
        Run = run;
        Logs = logs;
        Channels = channels;
        Courses = PredictedCourse.Of(run.Solution, [.. channels.Select(channel => channel.Quantity)]);
    }

    /// <summary>The prediction.</summary>
    public LaunchOutcome Run { get; }

    /// <summary>The logs.</summary>
    public IReadOnlyList<ComparedLog> Logs { get; }

    /// <summary>What was measured, a channel for each quantity of each log, in the order of the register.</summary>
    public IReadOnlyList<PassChannel> Channels { get; }

    /// <summary>Figures of the data beside the predicted ones.</summary>
    public required IReadOnlyList<PassFigure> Figures { get; init; }

    /// <summary>Speeds and the like at instants.</summary>
    public required IReadOnlyList<InstantReading> Readings { get; init; }

    /// <summary>How each channel fits, in the order of <see cref="Channels"/>.</summary>
    public required IReadOnlyList<ChannelFit> Fits { get; init; }

    internal IReadOnlyList<PredictedCourse> Courses { get; }

    /// <summary>The predicted value of a channel.</summary>
    /// <param name="channel">Which, by its place in <see cref="Channels"/>.</param>
    /// <param name="time">Seconds since release.</param>
    /// <returns>Not a number behind the prediction's end.</returns>
    public double Predicted(int channel, double time) => Courses[channel].At(time);

    /// <summary>Lays logs over a prediction.</summary>
    /// <param name="run">The prediction; not read by another thread meanwhile.</param>
    /// <param name="logs">The logs, aligned.</param>
    public static PassComparison Of(LaunchOutcome run, IReadOnlyList<ComparedLog> logs)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(logs);
        var channels = new List<PassChannel>();
        foreach (MeasuredQuantity quantity in MeasuredQuantities.All)
        {
            for (int i = 0; i < logs.Count; i++)
            {
                MeasuredSeries[] series = [.. logs[i].Log.Series.Where(one => one.Quantity == quantity)];

                // Those that share their instants are one; others of the same quantity stand beside it.
                while (series.Length > 0)
                {
                    PassChannel channel = PassChannel.Of(series, logs[i].Log.Alignment.Sd, i);
                    channels.Add(channel);
                    series = [.. series.Where(one => !channel.Series.Contains(one))];
                }
            }
        }

        double duration = run.Solution.Duration;
        IReadOnlyList<PredictedCourse> courses = PredictedCourse.Of(run.Solution, [.. channels.Select(channel => channel.Quantity)]);
        return new PassComparison(run, logs, channels)
        {
            Figures = PassFigures.Read(key => Find(channels, key, run), run.Figures, FigureCatalog.For(run.Scenario.Run.Marks.Count), run.Scenario.Run.Marks, duration),
            Readings = [.. channels.SelectMany((channel, i) => At(channel, courses[i], duration))],
            Fits = [.. channels.Select((channel, i) => Fit(channel, courses[i]))],
        };
    }

    private static IEnumerable<InstantReading> At(PassChannel channel, PredictedCourse course, double duration)
    {
        if (channel.Quantity.Kind != QuantityKind.AngularSpeed && channel.Quantity.Kind != QuantityKind.Speed)
        {
            yield break;
        }

        foreach (double time in Instants.Where(time => time <= duration))
        {
            if (channel.At(time) is { } reading)
            {
                yield return new InstantReading(channel, time, reading.Value, reading.ValueSd, course.At(time));
            }
        }
    }

    private static ChannelFit Fit(PassChannel channel, PredictedCourse course)
    {
        int count = 0;
        double square = 0, sum = 0, largest = 0, at = double.NaN;
        for (int i = 0; i < channel.Times.Count; i++)
        {
            double predicted = course.At(channel.Times[i]);
            if (channel.Times[i] < 0 || double.IsNaN(predicted))
            {
                continue;
            }

            double off = channel.Values[i] - predicted, smooth = (channel.At(channel.Times[i])?.Value ?? channel.Values[i]) - predicted;
            count++;
            square += off * off;
            sum += off;
            if (double.IsNaN(at) || Math.Abs(smooth) > Math.Abs(largest))
            {
                (largest, at) = (smooth, channel.Times[i]);
            }
        }

        return new ChannelFit(channel, count, count > 0 ? Math.Sqrt(square / count) : double.NaN, count > 0 ? sum / count : double.NaN, largest, at);
    }

    // A gap is also told by its damper, through the car's own geometry.
    private static (PassChannel, string)? Find(List<PassChannel> channels, string key, LaunchOutcome run)
    {
        if (channels.Find(channel => channel.Quantity.Key == key) is { } own)
        {
            return (own, Source(own));
        }

        if (key == "front_gap" && channels.Find(channel => channel.Quantity.Key == "front_damper_travel") is { } front)
        {
            double ratio = run.Solution.Car.Car.Front.DamperMotionRatio;
            return (front.Turned(MeasuredQuantities.Find(key)!, travel => travel / ratio, 1 / ratio), $"{Source(front)}, by the motion ratio");
        }

        if (key == "rear_gap" && channels.Find(channel => channel.Quantity.Key == "rear_damper_travel") is { } rear && SeparationOf(run) is { } table)
        {
            return (rear.Turned(MeasuredQuantities.Find(key)!, table, table(0.01) / 0.01), $"{Source(rear)}, by the linkage");
        }

        return null;
    }

    private static string Source(PassChannel channel) => channel.Series.Count == 1 ? channel.Series[0].Source : $"{channel.Series[0].Source} and {channel.Series.Count - 1} more";

    // Separation against damper travel as the predicted launch runs through them; the linkage allows no other pairs.
    private static Func<double, double>? SeparationOf(LaunchOutcome run)
    {
        const double Apart = 2e-4;
        var all = new List<(double Travel, double Separation)>();
        for (double time = 0; time <= run.Solution.Duration; time += 2e-3)
        {
            run.Solution.At(time, out Observation seen);
            all.Add((seen.RearDamperTravel, seen.Separation));
        }

        all.Sort();
        var pairs = new List<(double Travel, double Separation)>();
        foreach ((double Travel, double Separation) pair in all)
        {
            if (pairs.Count == 0 || pair.Travel - pairs[^1].Travel > Apart)
            {
                pairs.Add(pair);
            }
        }

        if (pairs.Count < 3)
        {
            return null;
        }

        return travel =>
        {
            int next = Math.Clamp(pairs.FindIndex(pair => pair.Travel >= travel), 1, pairs.Count - 1);
            next = travel > pairs[^1].Travel ? pairs.Count - 1 : next;
            double share = (travel - pairs[next - 1].Travel) / (pairs[next].Travel - pairs[next - 1].Travel);
            return pairs[next - 1].Separation + (share * (pairs[next].Separation - pairs[next - 1].Separation));
        };
    }
}

/// <summary>One log of a pass.</summary>
/// <param name="File">Its file as it was named.</param>
/// <param name="Log">The log, aligned.</param>
public sealed record ComparedLog(string File, AlignedLog Log);
