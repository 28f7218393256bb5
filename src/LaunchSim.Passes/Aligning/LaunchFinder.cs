namespace LaunchSim.Passes.Aligning;

/// <summary>
/// Finds a launch in a log of any length, row by row: the prediction is held against the latest rows at every few
/// milliseconds, and the rows about the place that looks most like it are kept.
/// </summary>
/// <remarks>
/// Alike is the share of a channel's variance that the prediction explains (squared correlation), less for a channel of
/// another size or, where zeros are known, of another level: a burnout spins the wheels many times as fast, a rolling car
/// begins at another speed.
/// </remarks>
internal sealed class LaunchFinder
{
    /// <summary>Time before the release that is looked at and kept, s.</summary>
    public const double Before = 0.5;

    /// <summary>What looks less alike is no launch.</summary>
    public const double WorstScore = 0.4;

    private const double Standing = 0.3, MostMatched = 1, Behind = 0.25, LeastShare = 0.3;
    private const int MostPoints = 96, LeastPoints = 6;
    private const double NearlyAsGood = 0.1, Reversed = 0.15;

    private readonly IReadOnlyList<LaunchChannel> _channels;
    private readonly RowWindow _rows;
    private readonly double _duration, _matched, _step;
    private readonly List<(double Shift, double Score)> _good = [];
    private double _next = double.NaN, _last = double.NaN, _best = double.PositiveInfinity, _bestShift = double.NaN;
    private LogSpan? _kept;
    private bool _isPending;

    /// <summary>Begins.</summary>
    /// <param name="channels">The columns.</param>
    /// <param name="duration">Where the prediction ends, s.</param>
    /// <param name="release">The release on the log's clock, where it is known.</param>
    public LaunchFinder(IReadOnlyList<LaunchChannel> channels, double duration, double? release)
    {
        _channels = channels;
        _duration = duration;
        _matched = Math.Min(duration, MostMatched);
        _step = _matched / 100;
        Release = release;
        _rows = new RowWindow(channels.Count, Before + duration + Behind + (4 * _step));
    }

    private double? Release { get; }

    /// <summary>Takes a row.</summary>
    /// <param name="time">Its time, s, later than that of the row before.</param>
    /// <param name="values">Its numbers as written.</param>
    public void Add(double time, ReadOnlySpan<double> values)
    {
        if (Release is { } known)
        {
            if (time >= known - Before - _step && time <= known + _duration + Behind)
            {
                _rows.Add(time, values);
            }

            _last = time;
            return;
        }

        if (double.IsNaN(_next) || time - _last > Before + _duration)
        {
            // Where there are no rows there is no launch: the search goes on where they do.
            Flush();
            _rows.Clear();
            _next = time - (LeastShare * _matched);
        }

        _rows.Add(time, values);
        _last = time;
        while (_next + _duration + Behind <= time)
        {
            Try(_next);
            _next += _step;
            if (_isPending && _next - _bestShift > 4 * _step)
            {
                Keep();
            }

            _rows.ForgetBefore(Math.Min(_next, _isPending ? _bestShift : _next) - Before - _step);
        }
    }

    /// <summary>What was found; null when nothing in the log looks like a launch.</summary>
    public FoundLaunch? End()
    {
        if (Release is { } known)
        {
            return _rows.Count == 0 ? null : new FoundLaunch(known, 0, _rows.Copy(double.NegativeInfinity, double.PositiveInfinity), null);
        }

        Flush();
        if (_kept is null || !(_best <= WorstScore))
        {
            return null;
        }

        double? other = null;
        foreach ((double shift, double _) in _good.Where(one => Math.Abs(one.Shift - _bestShift) > _matched && one.Score <= _best + NearlyAsGood).OrderBy(one => one.Score).Take(1))
        {
            other = shift;
        }

        return new FoundLaunch(_bestShift, _best, _kept, other);
    }

    private void Flush()
    {
        while (!double.IsNaN(_next) && _next + (LeastShare * _matched) <= _last)
        {
            Try(_next);
            _next += _step;
        }

        if (_isPending)
        {
            Keep();
        }
    }

    private void Keep()
    {
        _kept = _rows.Copy(_bestShift - Before, _bestShift + _duration + Behind);
        _isPending = false;
    }

    private void Try(double shift)
    {
        double score = Score(shift);
        if (score < _best)
        {
            (_best, _bestShift, _isPending) = (score, shift, true);
        }

        if (score <= Math.Min(WorstScore, _best + NearlyAsGood))
        {
            // One place a launch: neighbours on the grid are the same.
            if (_good.Count > 0 && shift - _good[^1].Shift <= _matched)
            {
                if (score < _good[^1].Score)
                {
                    _good[^1] = (shift, score);
                }
            }
            else if (_good.Count < 1000)
            {
                _good.Add((shift, score));
            }
        }
    }

    private double Score(double shift)
    {
        int first = _rows.Find(shift - Standing), end = _rows.Find(shift + _matched);
        if (end - first < LeastPoints)
        {
            return double.PositiveInfinity;
        }

        // What was not recorded cannot be matched: a launch needs most of its time.
        double covered = Math.Min(_rows.Time(end - 1), shift + _matched) - Math.Max(_rows.Time(first), shift);
        if (covered < LeastShare * _matched)
        {
            return double.PositiveInfinity;
        }

        int stride = Math.Max(1, (end - first) / MostPoints);
        double sum = 0, weights = 0;
        for (int i = 0; i < _channels.Count; i++)
        {
            LaunchChannel channel = _channels[i];
            double n = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;
            for (int row = first; row < end; row += stride)
            {
                double value = _rows.Value(i, row) * channel.Factor, predicted = channel.Predicted.At(_rows.Time(row) - shift);
                if (double.IsNaN(value) || double.IsNaN(predicted))
                {
                    continue;
                }

                n++;
                x += predicted;
                y += value;
                xx += predicted * predicted;
                yy += value * value;
                xy += predicted * value;
            }

            if (n >= LeastPoints)
            {
                sum += channel.Weight * Unlike(n, x / n, y / n, (xx / n) - (x / n * x / n), (yy / n) - (y / n * y / n), (xy / n) - (x / n * y / n), channel.HasFreeZero);
                weights += channel.Weight;
            }
        }

        return weights > 0 ? (sum / weights) + (0.2 * (1 - Math.Min(1, covered / _matched))) : double.PositiveInfinity;
    }

    private static double Unlike(double n, double x, double y, double xx, double yy, double xy, bool hasFreeZero)
    {
        // A sensor may be fixed the wrong way round; that is asked back once the launch is found.
        if (!(xx > 0) || !(yy > 0) || (xy <= 0 && !hasFreeZero) || xy == 0)
        {
            return 1;
        }

        double gain = Math.Abs(xy) / xx, explained = xy * xy / (xx * yy), size = Math.Log(gain);
        double unlike = 1 - explained + (xy < 0 ? Reversed : 0) + Math.Min(0.2, 0.05 * size * size);
        if (!hasFreeZero)
        {
            double level = (y - (gain * x)) / (gain * Math.Sqrt(12 * xx));
            unlike += Math.Min(0.3, level * level);
        }

        return n > 0 ? Math.Min(1, unlike) : 1;
    }
}
