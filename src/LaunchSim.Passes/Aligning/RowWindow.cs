namespace LaunchSim.Passes.Aligning;

/// <summary>
/// The latest rows of a log, back to a span of time: as many as there is room for. Where rows come so fast that the span
/// does not fit, neighbours are made one by their mean, and so are those that follow.
/// </summary>
internal sealed class RowWindow
{
    /// <summary>How many rows there is room for.</summary>
    public const int Room = 1 << 14;

    private readonly double[] _times = new double[Room];
    private readonly double[][] _columns;
    private readonly double _span;
    private readonly double[] _sums;
    private readonly int[] _counts;
    private double _timeSum;
    private int _head, _gathered;

    /// <summary>An empty window.</summary>
    /// <param name="columns">How many columns a row has.</param>
    /// <param name="span">How far back it reaches at the least, s.</param>
    public RowWindow(int columns, double span)
    {
        _columns = [.. Enumerable.Range(0, columns).Select(_ => new double[Room])];
        _sums = new double[columns];
        _counts = new int[columns];
        _span = span;
    }

    /// <summary>How many rows there are.</summary>
    public int Count { get; private set; }

    /// <summary>How many rows of the log are one here.</summary>
    public int Together { get; private set; } = 1;

    /// <summary>The time of a row, the oldest being 0.</summary>
    /// <param name="row">Which.</param>
    public double Time(int row) => _times[(_head + row) & (Room - 1)];

    /// <summary>A value; not a number for a gap.</summary>
    /// <param name="column">The column.</param>
    /// <param name="row">The row, the oldest being 0.</param>
    public double Value(int column, int row) => _columns[column][(_head + row) & (Room - 1)];

    /// <summary>Adds a row.</summary>
    /// <param name="time">Its time, s, later than that of the row before.</param>
    /// <param name="values">Its values; not a number for a gap.</param>
    public void Add(double time, ReadOnlySpan<double> values)
    {
        _timeSum += time;
        for (int i = 0; i < values.Length; i++)
        {
            if (!double.IsNaN(values[i]))
            {
                _sums[i] += values[i];
                _counts[i]++;
            }
        }

        if (++_gathered >= Together)
        {
            Put();
        }
    }

    /// <summary>Forgets rows before an instant.</summary>
    /// <param name="time">The instant, s.</param>
    public void ForgetBefore(double time)
    {
        while (Count > 0 && Time(0) < time)
        {
            _head = (_head + 1) & (Room - 1);
            Count--;
        }
    }

    /// <summary>Forgets all rows.</summary>
    public void Clear()
    {
        _head = Count = _gathered = 0;
        _timeSum = 0;
        Array.Clear(_sums);
        Array.Clear(_counts);
    }

    /// <summary>The first row at or after an instant.</summary>
    /// <param name="time">The instant, s.</param>
    public int Find(double time)
    {
        int low = 0, high = Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = Time(middle) < time ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>A copy of the rows of a span of time.</summary>
    /// <param name="from">Its start, s.</param>
    /// <param name="to">Its end, s.</param>
    public LogSpan Copy(double from, double to)
    {
        int first = Find(from), end = Find(to);
        return new LogSpan(
            [.. Enumerable.Range(first, end - first).Select(Time)],
            [.. Enumerable.Range(0, _columns.Length).Select(column => Enumerable.Range(first, end - first).Select(row => Value(column, row)).ToArray())], Together);
    }

    private void Put()
    {
        if (Count == Room)
        {
            if (Time(Count - 1) - Time(0) > _span)
            {
                ForgetBefore(Time(Count - 1) - _span);
            }

            if (Count == Room)
            {
                Halve();
            }
        }

        int at = (_head + Count) & (Room - 1);
        _times[at] = _timeSum / _gathered;
        for (int i = 0; i < _columns.Length; i++)
        {
            _columns[i][at] = _counts[i] > 0 ? _sums[i] / _counts[i] : double.NaN;
            _sums[i] = _counts[i] = 0;
        }

        Count++;
        _timeSum = _gathered = 0;
    }

    private void Halve()
    {
        for (int row = 0; row < Room / 2; row++)
        {
            int at = (_head + row) & (Room - 1), one = (_head + (2 * row)) & (Room - 1), other = (one + 1) & (Room - 1);
            _times[at] = (_times[one] + _times[other]) / 2;
            foreach (double[] column in _columns)
            {
                column[at] = double.IsNaN(column[one]) ? column[other] : double.IsNaN(column[other]) ? column[one] : (column[one] + column[other]) / 2;
            }
        }

        Count = Room / 2;
        Together *= 2;
    }
}
