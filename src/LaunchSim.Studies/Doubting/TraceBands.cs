using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Doubting;

/// <summary>The traces of plausible cars, column by column. Cars may be set from any thread, each by one.</summary>
internal sealed class TraceBands
{
    /// <summary>Bands are of so many cars at the most: more move no line by its width.</summary>
    public const int MostCars = 20_000;

    private readonly Bands[] _columns;
    private readonly int _rows, _step;
    private readonly long _first;

    /// <summary>Room for the traces.</summary>
    /// <param name="first">The number of the first car.</param>
    /// <param name="cars">How many cars there are; those beyond <see cref="MostCars"/> are passed over.</param>
    /// <param name="duration">How long the file's own car was launched, s: bands go no further.</param>
    public TraceBands(long first, long cars, double duration)
    {
        _first = first;
        _step = TraceSignals.Step(duration);
        _rows = TraceSignals.Rows(duration, _step);
        Cars = (int)Math.Min(cars, MostCars);
        _columns = [.. TraceSignals.All.Select(_ => new Bands(Cars, _rows))];
    }

    /// <summary>Of how many cars the bands are.</summary>
    public int Cars { get; }

    /// <summary>Takes a car's traces.</summary>
    /// <param name="car">The car's number.</param>
    /// <param name="launch">Its launch.</param>
    public void Set(long car, LaunchReading launch)
    {
        long place = car - _first;
        if (place < 0 || place >= Cars)
        {
            return;
        }

        Span<double> column = stackalloc double[_rows];
        for (int i = 0; i < _columns.Length; i++)
        {
            _columns[i].Set((int)place, column[..Column(launch, TraceSignals.All[i].Signal, column)]);
        }
    }

    /// <summary>The bands, when no car is being set any more.</summary>
    /// <param name="own">The file's own launch.</param>
    public IReadOnlyList<TraceBand> Read(LaunchReading own)
    {
        var bands = new TraceBand[_columns.Length];
        double[][] lines = new double[_columns.Length][];
        for (int i = 0; i < lines.Length; i++)
        {
            lines[i] = new double[_rows];
            lines[i].AsSpan(Column(own, TraceSignals.All[i].Signal, lines[i])).Fill(double.NaN);
        }

        _ = Parallel.For(0, bands.Length, i => bands[i] = new TraceBand(TraceSignals.All[i].Name, _step * LaunchReading.Grid, _columns[i].Read(Band.LowShare, Band.HighShare), lines[i]));
        return bands;
    }

    // Asked for at the rows alone: as a column it would make the reading observe the whole car at every millisecond.
    private static double FrontLoad(LaunchReading launch, double time)
    {
        launch.Solution.At(Math.Min(time, launch.Duration), out Observation seen);
        return Math.Max(0, seen.FrontLoad);
    }

    private int Column(LaunchReading launch, Signal signal, Span<double> column)
    {
        int rows = Math.Min(_rows, ((launch.GridRows - 1) / _step) + (launch.GridRows > 0 ? 1 : 0));
        for (int row = 0; row < rows; row++)
        {
            column[row] = signal == Signal.FrontLoad ? FrontLoad(launch, row * _step * LaunchReading.Grid) : launch.AtGrid(signal, row * _step);
        }

        return rows;
    }
}
