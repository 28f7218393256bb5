using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Figures;

/// <summary>
/// Reads chosen figures off one launch after another: the same values as <see cref="LaunchFigures.Read"/> gives, in a
/// small part of the time, because only what they need of the launch is looked at. Holds the memory that a reading
/// needs, so that a second launch of the same length allocates next to nothing; not shared between threads.
/// </summary>
/// <remarks>
/// Cheap are the figures that places and speeds alone tell, and those of grip and largest acceleration; one figure that
/// needs the whole car at every instant (bars, axle torque, front load, dampers, energy) makes it a whole reading.
/// docs/performance.md has the list and the times.
/// </remarks>
/// <param name="selection">The figures.</param>
public sealed class FigureReader(FigureSelection selection) : IDisposable
{
    private readonly FigureWriter _writer = new(selection.Catalog, selection.Wanted);
    private readonly LaunchReading _reading = new();

    /// <summary>The figures.</summary>
    public FigureSelection Selection { get; } = selection;

    /// <summary>Whether the latest reading had to observe the whole car.</summary>
    internal bool ObservedWhole => _reading.ObservedWhole;

    /// <summary>Reads the figures of a launch.</summary>
    /// <param name="solution">The launch; not read by another thread meanwhile.</param>
    /// <param name="settings">The settings it was solved with: marks and rollout.</param>
    /// <param name="values">
    /// Receives the values in SI units, in the order of the selection; not a number where there is none,
    /// <see cref="Reason"/> says why. As long as the selection.
    /// </param>
    /// <exception cref="ArgumentException">The settings have another number of marks than the selection, or there is not room for all values.</exception>
    public void Read(LaunchSolution solution, RunSettings settings, Span<double> values)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(settings);
        ReadOnlySpan<int> indices = Selection.Indices;
        if (FigureCatalog.For(settings.Marks.Count) != Selection.Catalog)
        {
            throw new ArgumentException("The figures were chosen for another number of marks.", nameof(settings));
        }

        if (values.Length < indices.Length)
        {
            throw new ArgumentException($"There are {indices.Length} figures and room for {values.Length}.", nameof(values));
        }

        _writer.Clear();
        _reading.Open(solution, settings);
        foreach (IFigureFamily family in Selection.Families)
        {
            family.Read(_reading, _writer);
        }

        for (int i = 0; i < indices.Length; i++)
        {
            values[i] = _writer.Figures[indices[i]].Value ?? double.NaN;
        }
    }

    /// <summary>Why a figure of the latest launch has no value, in plain words; null when it has one.</summary>
    /// <param name="index">Which, in the order of the selection.</param>
    public string? Reason(int index) => _writer.Figures[Selection.Indices[index]].Reason;

    /// <summary>Hands the memory back.</summary>
    public void Dispose() => _reading.Dispose();
}
