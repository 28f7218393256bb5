using LaunchSim.Launch;
using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Fitting;

/// <summary>One channel made ready for the fit: means over short spans, so that noise and not the logger's rate decides how much it weighs.</summary>
public sealed class FitChannel
{
    /// <summary>Length of a span, s: a rise takes ten times as long or more.</summary>
    public const double Span = 4e-3;

    // What is wrong with a prediction does not change from one span to the next: never is a mean trusted further than this share of a value's noise.
    private const double LeastShare = 0.25;

    private readonly double[] _times, _values, _noise;

    private FitChannel(MeasuredSeries series, double[] times, double[] values, double[] noise) =>
        (Series, _times, _values, _noise) = (series, times, values, noise);

    /// <summary>The channel as it was measured.</summary>
    public MeasuredSeries Series { get; }

    /// <summary>How many spans.</summary>
    public int Count => _times.Length;

    /// <summary>Seconds from the release to the middle of what lies in each span.</summary>
    public IReadOnlyList<double> Times => _times;

    /// <summary>Means of the spans, SI.</summary>
    public IReadOnlyList<double> Values => _values;

    /// <summary>By how much more than its own noise the channel scatters about the best prediction so far; 1 to begin with.</summary>
    internal double Inflation { get; set; } = 1;

    /// <summary>Makes a channel ready.</summary>
    /// <param name="series">The channel.</param>
    /// <param name="from">Where it begins to count, s.</param>
    /// <param name="to">Where it ends to, s.</param>
    public static FitChannel Of(MeasuredSeries series, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(series);
        List<double> times = [], values = [], noise = [];
        int i = 0;
        while (i < series.Times.Count && series.Times[i] < from)
        {
            i++;
        }

        while (i < series.Times.Count && series.Times[i] <= to)
        {
            double end = series.Times[i] + Span, time = 0, value = 0;
            int count = 0;
            for (; i < series.Times.Count && series.Times[i] <= to && series.Times[i] < end; i++, count++)
            {
                time += series.Times[i];
                value += series.Values[i];
            }

            times.Add(time / count);
            values.Add(value / count);
            noise.Add(series.Noise * Math.Max(LeastShare, 1 / Math.Sqrt(count)));
        }

        return new FitChannel(series, [.. times], [.. values], [.. noise]);
    }

    /// <summary>Measured less predicted over the noise of each span; a free zero is the one that suits best.</summary>
    /// <param name="launch">The predicted launch.</param>
    /// <param name="shift">Seconds by which the channel's clock runs late: its time plus this is the launch's.</param>
    /// <param name="residuals">Receives them.</param>
    /// <returns>False where the launch has no such value.</returns>
    public bool Residuals(LaunchSolution launch, double shift, Span<double> residuals)
    {
        ArgumentNullException.ThrowIfNull(launch);
        double sum = 0, weights = 0;
        for (int i = 0; i < _times.Length; i++)
        {
            double predicted = Predicted(launch, _times[i] + shift);
            if (!double.IsFinite(predicted))
            {
                return false;
            }

            double difference = _values[i] - predicted, weight = 1 / (_noise[i] * _noise[i]);
            residuals[i] = difference;
            sum += weight * difference;
            weights += weight;
        }

        double zero = Series.Quantity.HasFreeZero && weights > 0 ? sum / weights : 0;
        for (int i = 0; i < _times.Length; i++)
        {
            residuals[i] = (residuals[i] - zero) / (_noise[i] * Inflation);
        }

        return true;
    }

    /// <summary>What the prediction has at a time; before the release that of the standing car.</summary>
    /// <param name="launch">The predicted launch.</param>
    /// <param name="time">Seconds since release.</param>
    public double Predicted(LaunchSolution launch, double time)
    {
        ArgumentNullException.ThrowIfNull(launch);
        if (time < 0 && Series.Quantity.StandsAtZero)
        {
            return 0;
        }

        launch.At(Math.Clamp(time, 0, launch.Duration), out Dynamics.Observation seen);
        return Series.Quantity.Predicted(seen, launch.Car);
    }

    /// <summary>The channel beside what file and fit predict.</summary>
    internal ChannelFit Laid(string pass, string log, LaunchSolution before, LaunchSolution after, double shift)
    {
        double zero = Zero(after, shift), own = Zero(before, 0);
        var course = new ChannelPoint[Count];
        double squareBefore = 0, squareAfter = 0;
        for (int i = 0; i < Count; i++)
        {
            double time = _times[i] + shift;
            course[i] = new ChannelPoint(time, _values[i] - zero, Predicted(before, time), Predicted(after, time));
            squareBefore += Square(_values[i] - own - Predicted(before, _times[i]));
            squareAfter += Square(course[i].Measured - course[i].After);
        }

        return new ChannelFit(pass, log, Series, Series.Noise * Inflation, Math.Sqrt(squareBefore / Count), Math.Sqrt(squareAfter / Count), course);
    }

    private double Zero(LaunchSolution launch, double shift)
    {
        double sum = 0, weights = 0;
        for (int i = 0; Series.Quantity.HasFreeZero && i < Count; i++)
        {
            double weight = 1 / (_noise[i] * _noise[i]);
            sum += weight * (_values[i] - Predicted(launch, _times[i] + shift));
            weights += weight;
        }

        return weights > 0 ? sum / weights : 0;
    }

    private static double Square(double value) => value * value;
}
