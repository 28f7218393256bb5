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
}
