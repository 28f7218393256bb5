using LaunchSim.Passes.Measured;
using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Passes.Comparing;

/// <summary>
/// One quantity of a pass as figures are read off it: local straight lines through the neighbouring values, so that noise
/// does not decide; each reading with its standard deviation. Several channels of one quantity and one clock, such as left
/// and right, are their mean.
/// </summary>
public sealed class PassChannel
{
    // Neighbours that one reading rests on: to either side, s, or at least that many values.
    private const double Reach = 8e-3;
    private const int Neighbours = 2;

    // Beyond that many reaches from one value to the next nothing is known between them.
    private const double Sparse = 0.06;

    // A record that ends so little before a window's end still holds the window, s.
    private const double Covered = 0.02;

    // Instants that differ by rounding, s.
    private const double SameInstant = 1e-6;

    // A top: values within so many standard deviations of the largest, at most so far from it, s, and more than so many.
    private const double NearTop = 4, WidestTop = 0.12;
    private const int LeastTop = 6;

    private readonly double[] _times, _values, _smooth, _slopes, _sds;

    private PassChannel(MeasuredQuantity quantity, IReadOnlyList<MeasuredSeries> series, double[] times, double[] values, double noise, double scaleDoubt, double clockSd, int clock)
    {
        Quantity = quantity;
        Series = series;
        (_times, _values) = (times, values);
        Noise = noise;
        ScaleDoubt = scaleDoubt;
        ClockSd = clockSd;
        Clock = clock;
        _smooth = new double[times.Length];
        _slopes = new double[times.Length];
        _sds = new double[times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            (_smooth[i], _slopes[i], _sds[i]) = Line(times[i], i);
        }
    }

    /// <summary>What was measured.</summary>
    public MeasuredQuantity Quantity { get; }

    /// <summary>What it was made of.</summary>
    public IReadOnlyList<MeasuredSeries> Series { get; }

    /// <summary>Instants, s since release, rising.</summary>
    public IReadOnlyList<double> Times => _times;

    /// <summary>Values, SI.</summary>
    public IReadOnlyList<double> Values => _values;

    /// <summary>One standard deviation of a single value, SI.</summary>
    public double Noise { get; }

    /// <summary>How far off all values may be together, as a share, one standard deviation.</summary>
    public double ScaleDoubt { get; }

    /// <summary>One standard deviation of the release on its clock, s.</summary>
    public double ClockSd { get; }

    /// <summary>Which log's clock it has: between channels of one clock the release's doubt does not count.</summary>
    public int Clock { get; }

    /// <summary>Makes one channel of all series of a quantity and a clock.</summary>
    /// <param name="series">The series, at least one.</param>
    /// <param name="clockSd">One standard deviation of the release on their clock, s.</param>
    /// <param name="clock">Which clock that is.</param>
    public static PassChannel Of(IReadOnlyList<MeasuredSeries> series, double clockSd, int clock)
    {
        ArgumentNullException.ThrowIfNull(series);
        MeasuredSeries first = series[0];
        MeasuredSeries[] alike = [.. series.Where(one => one.Times.SequenceEqual(first.Times))];
        double[] values = [.. Enumerable.Range(0, first.Times.Count).Select(i => alike.Average(one => one.Values[i]))];
        return new PassChannel(first.Quantity, alike, [.. first.Times], values, Math.Sqrt(alike.Sum(one => one.Noise * one.Noise)) / alike.Length, alike.Max(one => one.ScaleDoubt), clockSd, clock);
    }

    /// <summary>The same channel with each value turned into another quantity's.</summary>
    /// <param name="quantity">The other quantity.</param>
    /// <param name="turn">Value → value.</param>
    /// <param name="slope">The other's change per change of this one, about.</param>
    public PassChannel Turned(MeasuredQuantity quantity, Func<double, double> turn, double slope) =>
        new(quantity, Series, _times, [.. _values.Select(turn)], Noise * Math.Abs(slope), ScaleDoubt, ClockSd, Clock);

    /// <summary>The value at an instant.</summary>
    /// <param name="time">Seconds since release.</param>
    /// <returns>Null where nothing was recorded about it.</returns>
    public Reading? At(double time)
    {
        int next = LowerBound(time - SameInstant);
        if (next == _times.Length || (_times[next] - time > SameInstant && (next == 0 || _times[next] - _times[next - 1] > Sparse)))
        {
            return null;
        }

        (double value, double slope, double sd) = Line(time, next);
        if (slope == 0)
        {
            // A value that stands alone: how fast it changes is told by its neighbours, however far they are.
            int before = Math.Max(0, next - 1), after = Math.Min(_times.Length - 1, next + 1);
            slope = after > before ? (_values[after] - _values[before]) / (_times[after] - _times[before]) : 0;
        }

        return new Reading(time, 0, value, Math.Sqrt(Math.Pow(Total(value, sd), 2) + Math.Pow(slope * ClockSd, 2)));
    }

    /// <summary>The first instant at or after which the value is at a level that it was below.</summary>
    /// <param name="level">The level, SI.</param>
    /// <param name="levelSd">One standard deviation of the level itself, SI.</param>
    /// <returns>Null when that was not recorded. Its doubt leaves the clock's out.</returns>
    public Reading? FirstAt(double level, double levelSd = 0)
    {
        // What counts from the standing car is nothing at the release, also where nobody looked then.
        int first = _times.Length > 0 && _times[0] > 0 && Quantity.HasFreeZero ? 0 : 1;
        for (int i = first; i < _times.Length; i++)
        {
            if (_times[i] < 0 || !(_smooth[i] >= level))
            {
                continue;
            }

            (double time, double value, double sd) = i == 0 ? (0, 0, 0) : (_times[i - 1], _smooth[i - 1], _sds[i - 1]);
            if (!(value < level))
            {
                return null;
            }

            double step = _times[i] - time, share = (level - value) / (_smooth[i] - value);
            double slope = Math.Max((_smooth[i] - value) / step, 1e-9), doubt = Math.Sqrt(Math.Pow(Total(level, Math.Max(_sds[i], sd)), 2) + (levelSd * levelSd)) / slope;

            // Between two values far apart the curve is not known: as likely anywhere about the straight line's crossing.
            double between = step > 2 * Reach ? step / Math.Sqrt(48) : 0;
            return new Reading(time + (share * step), Math.Sqrt((doubt * doubt) + (between * between)), level, 0);
        }

        return null;
    }

    /// <summary>The largest value within a window.</summary>
    /// <param name="from">Its start, s.</param>
    /// <param name="to">Its end, s.</param>
    /// <returns>Null when nothing was recorded, or the record ends before the window does.</returns>
    public Reading? Largest(double from, double to)
    {
        int best = -1;
        for (int i = 0; i < _times.Length; i++)
        {
            if (_times[i] >= from && _times[i] <= to && (best < 0 || _smooth[i] > _smooth[best]))
            {
                best = i;
            }
        }

        // What ends before the window does may have been larger later.
        if (best < 0 || _times[^1] < to - Covered)
        {
            return null;
        }

        return Top(best, from, to) ?? Plain(best, from, to);
    }

    // The largest of many noisy values is too large, and anywhere on a flat top: a parabola through all that are near to it is not.
    private Reading? Top(int best, double from, double to)
    {
        double near = _smooth[best] - (NearTop * Math.Max(_sds[best], 1e-3 * Math.Abs(_smooth[best])));
        int left = best, right = best;
        for (int i = 0; i < _times.Length; i++)
        {
            if (_smooth[i] >= near && _times[i] >= from && _times[i] <= to && Math.Abs(_times[i] - _times[best]) <= WidestTop)
            {
                left = Math.Min(left, i);
                right = Math.Max(right, i);
            }
        }

        while (right - left < LeastTop && left > 0 && right < _times.Length - 1 && _times[left - 1] >= from && _times[right + 1] <= to)
        {
            left--;
            right++;
        }

        int count = right - left + 1;
        if (count <= LeastTop || _times[right] - _times[left] > 2 * WidestTop)
        {
            return null;
        }

        double middle = (_times[left] + _times[right]) / 2;
        var design = Matrix<double>.Build.Dense(count, 3, (row, power) => Math.Pow(_times[left + row] - middle, power));
        Matrix<double> inverse = (design.Transpose() * design).Inverse();
        Vector<double> fit = inverse * (design.Transpose() * Vector<double>.Build.Dense(count, row => _values[left + row]));
        double at = -fit[1] / (2 * fit[2]);
        double start = fit[0] + (fit[1] * (_times[left] - middle)), end = fit[0] + (fit[1] * (_times[right] - middle));
        if ((fit[2] >= 0 || middle + at > _times[right]) && end - start > 2 * Noise / Math.Sqrt(count) && to - _times[right] < 2 * Reach)
        {
            // It still rises where the window ends: there is no top within.
            return At(to) is { } last ? last with { TimeSd = 0 } : null;
        }

        if (!(fit[2] < 0) || middle + at < _times[left] || middle + at > _times[right])
        {
            // Flat as far as the noise lets see: anywhere on it, and as high as its mean.
            double mean = Enumerable.Range(left, count).Average(i => _values[i]);
            return new Reading(middle, (_times[right] - _times[left]) / Math.Sqrt(12), mean, Total(mean, Math.Max(Noise / Math.Sqrt(count), _sds[best])));
        }

        double value = fit[0] + (fit[1] * at / 2);
        var slopes = Vector<double>.Build.DenseOfArray([0, -1 / (2 * fit[2]), fit[1] / (2 * fit[2] * fit[2])]);
        var powers = Vector<double>.Build.DenseOfArray([1, at, at * at]);

        // A top is no parabola: on one so flat that a step to the side is not seen, the instant is not known to better than that step.
        double flat = Math.Sqrt(_sds[best] / -fit[2]) / Math.Sqrt(3), time = Noise * Math.Sqrt(slopes * (inverse * slopes));
        return new Reading(middle + at, Math.Sqrt((time * time) + (flat * flat)), value, Total(value, Noise * Math.Sqrt(powers * (inverse * powers))));
    }

    private Reading Plain(int best, double from, double to)
    {
        // How long it stays within its noise of the largest value: so far off may the instant be.
        double near = _smooth[best] - Math.Max(2 * _sds[best], 1e-3 * Math.Abs(_smooth[best])), left = _times[best], right = _times[best];
        for (int i = best; i >= 0 && _smooth[i] >= near && _times[i] >= from; i--)
        {
            left = _times[i];
        }

        for (int i = best; i < _times.Length && _smooth[i] >= near && _times[i] <= to; i++)
        {
            right = _times[i];
        }

        double spacing = best + 1 < _times.Length ? _times[best + 1] - _times[best] : 0;
        return new Reading(_times[best], Math.Sqrt(Math.Pow((right - left) / Math.Sqrt(12), 2) + (spacing * spacing / 12)), _smooth[best], Total(_smooth[best], _sds[best]));
    }

    /// <summary>What the values add up to from the release on: a way out of a speed.</summary>
    /// <param name="level">The sum, SI times s.</param>
    /// <returns>The instant at which it is reached; null when it is not.</returns>
    public Reading? FirstSum(double level)
    {
        double sum = 0;
        for (int i = 1; i < _times.Length; i++)
        {
            if (_times[i] <= 0)
            {
                continue;
            }

            double from = Math.Max(0, _times[i - 1]), step = _times[i] - from;
            if (_times[i] - _times[i - 1] > 10 * Sparse || (_times[i - 1] > 0.05 && sum == 0 && i == 1))
            {
                return null;
            }

            double more = step * (_smooth[i - 1] + _smooth[i]) / 2;
            if (sum + more >= level && more > 0)
            {
                double at = from + (step * (level - sum) / more), speed = Math.Max(_smooth[i], 1e-9);
                return new Reading(at, level * ScaleDoubt / speed, level, 0);
            }

            sum += more;
        }

        return null;
    }

    private double Total(double value, double sd) => Math.Sqrt((sd * sd) + (value * value * ScaleDoubt * ScaleDoubt));

    // A straight line through the neighbours by least squares, read at an instant.
    private (double Value, double Slope, double Sd) Line(double time, int near)
    {
        int from = near, to = near;
        while (from > 0 && (time - _times[from - 1] <= Reach || near - from < Neighbours) && time - _times[from - 1] <= Sparse / 2)
        {
            from--;
        }

        while (to < _times.Length && (_times[to] - time <= Reach || to - near <= Neighbours) && _times[to] - time <= Sparse / 2)
        {
            to++;
        }

        double n = 0, t = 0, v = 0, tt = 0, tv = 0;
        for (int i = from; i < to; i++)
        {
            double at = _times[i] - time;
            n++;
            t += at;
            v += _values[i];
            tt += at * at;
            tv += at * _values[i];
        }

        if (n < 2 || !((n * tt) - (t * t) > 1e-15))
        {
            double alone = n > 0 ? v / n : _values[Math.Min(near, _values.Length - 1)];
            return (alone, 0, Noise);
        }

        double determinant = (n * tt) - (t * t), slope = ((n * tv) - (t * v)) / determinant, value = ((tt * v) - (t * tv)) / determinant;
        return (value, slope, Noise * Math.Sqrt(tt / determinant));
    }

    private int LowerBound(double time)
    {
        int low = 0, high = _times.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _times[middle] < time ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}

/// <summary>Something read off a channel.</summary>
/// <param name="Time">When, s since release.</param>
/// <param name="TimeSd">One standard deviation of that, s, without the clock's.</param>
/// <param name="Value">How much, SI.</param>
/// <param name="ValueSd">One standard deviation of that, SI.</param>
public readonly record struct Reading(double Time, double TimeSd, double Value, double ValueSd);
