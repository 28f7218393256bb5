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
/// <remarks>
/// A signal is read at the nodes when it is first asked for: together with the others that places and speeds alone tell,
/// or, for one that needs the equations of motion, with all others there are. Values do not depend on which was the case.
/// </remarks>
public sealed class LaunchReading : IDisposable
{
    /// <summary>Time between the nodes within a step, s; has nothing to do with the trace's sample.</summary>
    public const double Grid = 1e-3;

    private const int NoSegment = -1;
    private const uint AllSignals = (1u << SignalReader.Count) - 1;
    private const int MostAtOnce = 16;

    // Nearer than this a grid instant and a step's end count as one, s.
    private const double Rounding = 1e-9;

    private readonly List<LaunchEvent> _found = [];
    private readonly LaunchEvents _spells;
    private readonly List<int> _changes = [];
    private readonly Motion[] _seen = new Motion[MostAtOnce];
    private SignalReader _reader;
    private double[] _times = [], _columns = [];
    private int[] _segments = [], _gridNodes = [];
    private int _stride;
    private uint _read;
    private LaunchEvents? _events;
    private bool _hasSpells;
    private bool _disposed;

    /// <summary>Lays out a launch.</summary>
    /// <param name="solution">The launch.</param>
    /// <param name="settings">The settings it was solved with.</param>
    public LaunchReading(LaunchSolution solution, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(settings);
        _spells = new LaunchEvents(_found);
        Open(solution, settings);
    }

    /// <summary>Memory for readings to come: <see cref="Open"/> comes first.</summary>
    internal LaunchReading() => _spells = new LaunchEvents(_found);

    /// <summary>Lays out another launch in the same memory.</summary>
    internal void Open(LaunchSolution solution, RunSettings settings)
    {
        Solution = solution;
        Settings = settings;
        Duration = solution.Duration;
        GridRows = solution.Steps == 0 ? 0 : SampleGrid.Rows(Duration, Grid);
        _reader = new SignalReader(solution.Car);
        _read = 0;
        _hasSpells = false;
        _events = null;
        int most = (2 * solution.Steps) + GridRows;
        if (most > _times.Length || GridRows > _gridNodes.Length)
        {
            Return();
            _times = ArrayPool<double>.Shared.Rent(most);
            _stride = _times.Length;
            _columns = ArrayPool<double>.Shared.Rent(_stride * SignalReader.Count);
            _segments = ArrayPool<int>.Shared.Rent(_stride);
            _gridNodes = ArrayPool<int>.Shared.Rent(GridRows);
        }

        LayNodes();
    }

    private void LayNodes()
    {
        LaunchSolution solution = Solution;
        Nodes = 0;
        _changes.Clear();
        int row = 0;
        double rowTime = 0;
        Modes before = default;
        for (int step = 0; step < solution.Steps; step++)
        {
            (double start, double end) = solution.Step(step);
            Modes modes = solution.Modes(step);

            // Steps that meet in the same modes share a node: there is neither jump nor kink between them.
            if (step == 0 || !Same(before, modes))
            {
                AddNode(start);
                _changes.Add(step);
            }

            // A grid instant on a joint shows the values after a jump.
            for (; row < GridRows && rowTime <= start + Rounding; rowTime = SampleGrid.Time(++row, Grid))
            {
                _gridNodes[row] = Nodes - 1;
            }

            for (; row < GridRows && rowTime < end - Rounding; rowTime = SampleGrid.Time(++row, Grid))
            {
                _segments[Nodes - 1] = step;
                _gridNodes[row] = Nodes;
                AddNode(rowTime);
            }

            _segments[Nodes - 1] = step;
            AddNode(end);
            before = modes;
        }

        for (; row < GridRows; row++)
        {
            _gridNodes[row] = Nodes - 1;
        }
    }

    /// <summary>The launch.</summary>
    public LaunchSolution Solution { get; private set; } = null!;

    /// <summary>The settings it was solved with.</summary>
    public RunSettings Settings { get; private set; } = null!;

    /// <summary>Where the run ended, s.</summary>
    public double Duration { get; private set; }

    /// <summary>Number of nodes.</summary>
    public int Nodes { get; private set; }

    /// <summary>Number of whole milliseconds with a node, 0 included.</summary>
    public int GridRows { get; private set; }

    /// <summary>What happened in the launch.</summary>
    public LaunchEvents Events => _events ??= EventReader.All(this, Spells);

    /// <summary>What happened and when, as the modes tell: without the rear slip and without amounts, but sooner known than <see cref="Events"/>.</summary>
    internal LaunchEvents Spells
    {
        get
        {
            if (!_hasSpells)
            {
                EventReader.ReadSpells(this, _found);
                _hasSpells = true;
            }

            return _spells;
        }
    }

    /// <summary>Whether the whole car was observed at the nodes, which takes most of the time that a reading can take.</summary>
    internal bool ObservedWhole => _read == AllSignals;

    /// <summary>The largest amount of a kind of event; not a number when there is none.</summary>
    /// <param name="kind">The kind.</param>
    internal double HardestAmount(LaunchEventKind kind)
    {
        double most = double.NaN;
        for (int i = 0; i < Spells.Count; i++)
        {
            LaunchEvent spell = Spells[i];
            if (spell.Kind == kind && EventReader.WithAmount(this, spell).Amount is double amount && !(amount <= most))
            {
                most = amount;
            }
        }

        return most;
    }

    /// <summary>Instants of the nodes, s, never falling.</summary>
    public ReadOnlySpan<double> Times => _times.AsSpan(0, Nodes);

    /// <summary>A signal at the nodes.</summary>
    /// <param name="signal">Which.</param>
    public ReadOnlySpan<double> Column(Signal signal)
    {
        if ((_read & (1u << (int)signal)) == 0)
        {
            Read(signal);
        }

        return Room(signal);
    }

    private Span<double> Room(Signal signal) => _columns.AsSpan((int)signal * _stride, Nodes);

    private bool Has(Signal signal) => (_read & (1u << (int)signal)) != 0;

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

    /// <summary>The node of each whole millisecond.</summary>
    internal ReadOnlySpan<int> GridNodes => _gridNodes.AsSpan(0, GridRows);

    /// <summary>The largest value within a window.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="from">Start of the window, s.</param>
    /// <param name="to">Its end, s; beyond the run's end, the run's end.</param>
    public Extremum Largest(Signal signal, double from = 0, double to = double.PositiveInfinity) =>
        signal == Signal.Acceleration && !Has(signal) && from <= 0 && to >= Duration
            ? ExtremumSearch.FindIn(this, AccelerationSearch.NearLargest(this, Room(signal)), signal, 1, 0, double.PositiveInfinity)
            : ExtremumSearch.Find(this, signal, 1, from, to);

    /// <summary>The smallest value within a window.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="from">Start of the window, s.</param>
    /// <param name="to">Its end, s; beyond the run's end, the run's end.</param>
    public Extremum Smallest(Signal signal, double from = 0, double to = double.PositiveInfinity) =>
        signal == Signal.GripMargin && !Has(signal) && from <= 0 && to >= Duration
            ? ExtremumSearch.FindIn(this, GripSearch.NearLowest(this, Room(signal)), signal, -1, 0, double.PositiveInfinity)
            : ExtremumSearch.Find(this, signal, -1, from, to);

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
        Return();
    }

    private void Return()
    {
        if (_times.Length == 0)
        {
            return;
        }

        ArrayPool<double>.Shared.Return(_times);
        ArrayPool<double>.Shared.Return(_columns);
        ArrayPool<int>.Shared.Return(_segments);
        ArrayPool<int>.Shared.Return(_gridNodes);
    }

    /// <summary>The steps that begin with other modes than the step before them held, the first step included.</summary>
    internal List<int> Changes => _changes;

    /// <summary>The step between a node and the next; negative at a joint of two modes and behind the last node.</summary>
    internal ReadOnlySpan<int> Segments => _segments.AsSpan(0, Nodes);

    /// <summary>A step on whose dense output a node lies.</summary>
    internal int StepOf(int node) => _segments[node] >= 0 ? _segments[node] : _segments[node - 1];

    /// <summary>The step by which a node is read: the one that comes to it, or, where a mode begins, the one that leaves it.</summary>
    internal int ReadBy(int node) => node > 0 && _segments[node - 1] >= 0 ? _segments[node - 1] : _segments[node];

    /// <summary>A signal by one step's dense output: at the step's end the value before a jump.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="step">The step.</param>
    /// <param name="time">Time since release, s, within the step.</param>
    public double At(Signal signal, int step, double time)
    {
        if (signal == Signal.Acceleration)
        {
            return Solution.AccelerationAt(step, time);
        }

        if (SignalReader.InMotion(signal) || signal == Signal.GripMargin)
        {
            Span<Motion> motion = _seen.AsSpan(0, 1);
            Solution.Follow(step, new ReadOnlySpan<double>(in time), motion);
            return _reader.Value(signal, motion);
        }

        Span<double> all = stackalloc double[SignalReader.Count];
        Solution.At(step, time, out Observation seen);
        _reader.Write(seen, all, 1, 0);
        return all[(int)signal];
    }

    /// <summary>Observes the whole car at all nodes: for those who are going to ask for everything.</summary>
    internal void ObserveWhole()
    {
        for (int node = 0; node < Nodes; node++)
        {
            Solution.At(ReadBy(node), _times[node], out Observation seen);
            _reader.Write(seen, _columns, _stride, node);
        }

        _read = AllSignals;
    }

    private void Read(Signal signal)
    {
        if (SignalReader.InMotion(signal))
        {
            FollowMotion();
        }
        else
        {
            ObserveWhole();
        }
    }

    private void FollowMotion()
    {
        Span<Motion> seen = _seen;
        for (int node = 0; node < Nodes;)
        {
            int step = ReadBy(node), count = 1;
            while (count < MostAtOnce && node + count < Nodes && ReadBy(node + count) == step)
            {
                count++;
            }

            Solution.Follow(step, _times.AsSpan(node, count), seen[..count]);
            SignalReader.Write(seen[..count], _columns, _stride, node);
            node += count;
        }

        _read |= SignalReader.MotionMask;
    }

    private void AddNode(double time)
    {
        _times[Nodes] = time;
        _segments[Nodes] = NoSegment;
        Nodes++;
    }

    // Equal to the byte: where padding differs, a node too many does no harm.
    private static bool Same(in Modes a, in Modes b) =>
        MemoryMarshal.AsBytes(new ReadOnlySpan<Modes>(in a)).SequenceEqual(MemoryMarshal.AsBytes(new ReadOnlySpan<Modes>(in b)));
}
