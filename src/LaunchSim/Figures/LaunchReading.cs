using System.Buffers;
using System.Runtime.InteropServices;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Figures;

/// <summary>
/// A launch laid out for reading: all signals at the nodes, which are every millisecond and the ends of every step. Where
/// the modes change there are two nodes at one instant, before and after, and a jump or kink lies between them. Between
/// nodes the dense solution is asked. Shared by all families; hands its memory back when disposed. Not shared between
/// threads.
/// </summary>
public sealed class LaunchReading : IDisposable
{
    /// <summary>Time between the nodes within a step, s; has nothing to do with the trace's sample.</summary>
    public const double Grid = 1e-3;

    private const int NoSegment = -1;

    // Nearer than this a grid instant and a step's end count as one, s.
    private const double Rounding = 1e-9;

    private readonly SignalReader _reader;
    private readonly double[] _times, _columns;
    private readonly int[] _segments, _gridNodes;
    private readonly int _stride;
    private LaunchEvents? _events;
    private bool _disposed;

    /// <summary>Observes a launch at all nodes.</summary>
    /// <param name="solution">The launch.</param>
    /// <param name="settings">The settings it was solved with.</param>
    public LaunchReading(LaunchSolution solution, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(settings);
        Solution = solution;
        Settings = settings;
        Duration = solution.Duration;
        _reader = new SignalReader(solution.Car);
        GridRows = solution.Steps == 0 ? 0 : SampleGrid.Rows(Duration, Grid);
        _stride = (2 * solution.Steps) + GridRows;
        _times = ArrayPool<double>.Shared.Rent(_stride);
        _columns = ArrayPool<double>.Shared.Rent(_stride * SignalReader.Count);
        _segments = ArrayPool<int>.Shared.Rent(_stride);
        _gridNodes = ArrayPool<int>.Shared.Rent(GridRows);
        int row = 0;
        Modes before = default;
        for (int step = 0; step < solution.Steps; step++)
        {
            (double start, double end) = solution.Step(step);
            Modes modes = solution.Modes(step);

            // Steps that meet in the same modes share a node: there is neither jump nor kink between them.
            if (step == 0 || !Same(before, modes))
            {
                AddNode(step, start);
            }

            // A grid instant on a joint shows the values after a jump.
            for (; row < GridRows && SampleGrid.Time(row, Grid) <= start + Rounding; row++)
            {
                _gridNodes[row] = Nodes - 1;
            }

            for (; row < GridRows && SampleGrid.Time(row, Grid) is double time && time < end - Rounding; row++)
            {
                _segments[Nodes - 1] = step;
                _gridNodes[row] = Nodes;
                AddNode(step, time);
            }

            _segments[Nodes - 1] = step;
            AddNode(step, end);
            before = modes;
        }

        for (; row < GridRows; row++)
        {
            _gridNodes[row] = Nodes - 1;
        }
    }

    /// <summary>The launch.</summary>
    public LaunchSolution Solution { get; }

    /// <summary>The settings it was solved with.</summary>
    public RunSettings Settings { get; }

    /// <summary>Where the run ended, s.</summary>
    public double Duration { get; }

    /// <summary>Number of nodes.</summary>
    public int Nodes { get; private set; }

    /// <summary>Number of whole milliseconds with a node, 0 included.</summary>
    public int GridRows { get; }

    /// <summary>What happened in the launch.</summary>
    public LaunchEvents Events => _events ??= EventReader.Read(this);

    /// <summary>Instants of the nodes, s, never falling.</summary>
    public ReadOnlySpan<double> Times => _times.AsSpan(0, Nodes);

    /// <summary>A signal at the nodes.</summary>
    /// <param name="signal">Which.</param>
    public ReadOnlySpan<double> Column(Signal signal) => _columns.AsSpan((int)signal * _stride, Nodes);

    /// <summary>A signal at a whole millisecond; at a jump the value after it.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="row">Milliseconds since release, below <see cref="GridRows"/>.</param>
    public double AtGrid(Signal signal, int row) => Column(signal)[_gridNodes[row]];

    /// <summary>A signal anywhere; at a jump the value after it; not a number where the run did not come.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="time">Time since release, s.</param>
    public double At(Signal signal, double time) =>
        Reaches(time) ? At(signal, Solution.Find(time), Math.Min(time, Duration)) : double.NaN;

    /// <summary>Whether the run came to an instant.</summary>
    /// <param name="time">Time since release, s.</param>
    public bool Reaches(double time) => Nodes > 0 && time <= Duration + Rounding;

    /// <summary>The largest value within a window.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="from">Start of the window, s.</param>
    /// <param name="to">Its end, s; beyond the run's end, the run's end.</param>
    public Extremum Largest(Signal signal, double from = 0, double to = double.PositiveInfinity) =>
        ExtremumSearch.Find(this, signal, 1, from, to);

    /// <summary>The smallest value within a window.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="from">Start of the window, s.</param>
    /// <param name="to">Its end, s; beyond the run's end, the run's end.</param>
    public Extremum Smallest(Signal signal, double from = 0, double to = double.PositiveInfinity) =>
        ExtremumSearch.Find(this, signal, -1, from, to);

    /// <summary>The smallest value from an extremum to the end of the run; at a jump only what comes after it.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="after">An extremum of the same launch.</param>
    public Extremum SmallestAfter(Signal signal, Extremum after) =>
        ExtremumSearch.Find(this, signal, -1, after.Time, double.PositiveInfinity, after.Step);

    /// <summary>The first instant at which a signal is at or above a level, s; not a number when it never is.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="level">The level.</param>
    public double FirstAt(Signal signal, double level) => LevelSearch.FirstAt(this, signal, level);

    /// <summary>The next spell above a level.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="level">The level.</param>
    /// <param name="node">Node to look from, 0 at first; moved past the spell.</param>
    /// <param name="spell">The spell, s; its end is not a number when it lasts to the end of the run.</param>
    /// <returns>False when there is no further one.</returns>
    public bool NextAbove(Signal signal, double level, ref int node, out (double From, double To) spell) =>
        LevelSearch.NextAbove(this, signal, level, ref node, out spell);

    /// <summary>How long a signal is above a level in all, s.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="level">The level.</param>
    public double TimeAbove(Signal signal, double level)
    {
        double total = 0;
        int node = 0;
        while (NextAbove(signal, level, ref node, out (double From, double To) spell))
        {
            total += (double.IsNaN(spell.To) ? Duration : spell.To) - spell.From;
        }

        return total;
    }

    /// <summary>Hands the memory back.</summary>
    public void Dispose()
    {
        if (_disposed)
        {
            return;
        }

        _disposed = true;
        ArrayPool<double>.Shared.Return(_times);
        ArrayPool<double>.Shared.Return(_columns);
        ArrayPool<int>.Shared.Return(_segments);
        ArrayPool<int>.Shared.Return(_gridNodes);
    }

    /// <summary>The step between a node and the next; negative at a joint of two modes and behind the last node.</summary>
    internal ReadOnlySpan<int> Segments => _segments.AsSpan(0, Nodes);

    /// <summary>A step on whose dense output a node lies.</summary>
    internal int StepOf(int node) => _segments[node] >= 0 ? _segments[node] : _segments[node - 1];

    /// <summary>A signal by one step's dense output: at the step's end the value before a jump.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="step">The step.</param>
    /// <param name="time">Time since release, s, within the step.</param>
    public double At(Signal signal, int step, double time)
    {
        Span<double> all = stackalloc double[SignalReader.Count];
        Solution.At(step, time, out Observation seen);
        _reader.Write(seen, all, 1, 0);
        return all[(int)signal];
    }

    private void AddNode(int step, double time)
    {
        Solution.At(step, time, out Observation seen);
        _reader.Write(seen, _columns, _stride, Nodes);
        _times[Nodes] = time;
        _segments[Nodes] = NoSegment;
        Nodes++;
    }

    // Equal to the byte: where padding differs, a node too many does no harm.
    private static bool Same(in Modes a, in Modes b) =>
        MemoryMarshal.AsBytes(new ReadOnlySpan<Modes>(in a)).SequenceEqual(MemoryMarshal.AsBytes(new ReadOnlySpan<Modes>(in b)));
}
