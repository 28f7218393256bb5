namespace LaunchSim.Integration;

/// <summary>
/// All steps of a run, kept for evaluation anywhere. Its memory is reused by the next run that records into it.
/// </summary>
public sealed class StepRecord
{
    private double[] _coefficients = [];
    private double[] _starts = [];
    private double[] _ends = [];
    private double[] _sizes = [];
    private int _stride;

    /// <summary>Number of steps.</summary>
    public int Count { get; private set; }

    /// <summary>The dimension padded to whole registers: the length of a state that is evaluated fastest.</summary>
    public int Stride => _stride;

    /// <summary>Where step <paramref name="index"/> begins.</summary>
    /// <param name="index">0 to <see cref="Count"/> less one.</param>
    public double Start(int index) => _starts[index];

    /// <summary>Where step <paramref name="index"/> ends.</summary>
    /// <param name="index">0 to <see cref="Count"/> less one.</param>
    public double End(int index) => _ends[index];

    /// <summary>Forgets all steps and keeps the memory.</summary>
    public void Clear() => Count = 0;

    /// <summary>Appends a copy of a step.</summary>
    /// <param name="step">The step.</param>
    public void Add(in DenseStep step)
    {
        int block = step.Coefficients.Length;
        _stride = block / 5;
        if (_coefficients.Length < (Count + 1) * block || _starts.Length <= Count)
        {
            int capacity = Math.Max(256, 2 * Count);
            Array.Resize(ref _coefficients, capacity * block);
            Array.Resize(ref _starts, capacity);
            Array.Resize(ref _ends, capacity);
            Array.Resize(ref _sizes, capacity);
        }

        step.Coefficients.CopyTo(_coefficients.AsSpan(Count * block));
        _starts[Count] = step.Start;
        _ends[Count] = step.End;
        _sizes[Count] = step.Size;
        Count++;
    }

    /// <summary>
    /// The step that holds at <paramref name="t"/>: where two steps meet, the later one (values after a jump);
    /// before the first step the first, after the last the last.
    /// </summary>
    /// <param name="t">The independent variable.</param>
    public int Find(double t)
    {
        int low = 0, high = Count - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (_starts[middle] <= t)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return low;
    }

    /// <summary>The states at <paramref name="t"/> by step <paramref name="index"/>.</summary>
    /// <param name="index">The step.</param>
    /// <param name="t">The independent variable, within the step.</param>
    /// <param name="y">Receives the states.</param>
    public void At(int index, double t, Span<double> y)
    {
        int block = 5 * _stride;
        DenseStep.Evaluate(_coefficients.AsSpan(index * block, block), _stride, (t - _starts[index]) / _sizes[index], y);
    }

    /// <summary>The first states at instants of one step: to the same bits as one by one.</summary>
    /// <param name="index">The step.</param>
    /// <param name="t">The independent variable, within the step.</param>
    /// <param name="count">How many states, from the first.</param>
    /// <param name="y">Receives the states, <paramref name="count"/> for each instant.</param>
    public void At(int index, ReadOnlySpan<double> t, int count, Span<double> y)
    {
        ReadOnlySpan<double> r = _coefficients.AsSpan(index * 5 * _stride, 5 * _stride);
        double start = _starts[index], size = _sizes[index];
        for (int i = 0; i < t.Length; i++)
        {
            DenseStep.Evaluate(r, _stride, (t[i] - start) / size, y.Slice(i * count, count));
        }
    }

    /// <summary>The slope of one state's polynomial by step <paramref name="index"/>.</summary>
    /// <param name="index">The step.</param>
    /// <param name="state">Which state.</param>
    /// <param name="t">Where: the independent variable, within the step.</param>
    /// <param name="slopes">Receives the slopes; as long as <paramref name="t"/>.</param>
    public void Slopes(int index, int state, ReadOnlySpan<double> t, Span<double> slopes)
    {
        int first = (index * 5 * _stride) + state;
        double r2 = _coefficients[first + _stride], r3 = _coefficients[first + (2 * _stride)];
        double r4 = _coefficients[first + (3 * _stride)], r5 = _coefficients[first + (4 * _stride)];
        double start = _starts[index], perSize = 1 / _sizes[index];
        for (int i = 0; i < t.Length; i++)
        {
            // The product rule, link by link, on r1 + θ(r2 + (1−θ)(r3 + θ(r4 + (1−θ)r5))).
            double theta = (t[i] - start) * perSize, rest = 1 - theta;
            double inner = r4 + (rest * r5), middle = r3 + (theta * inner);
            double middleSlope = inner - (theta * r5);
            slopes[i] = (r2 + (rest * middle) + (theta * ((rest * middleSlope) - middle))) * perSize;
        }
    }
}
