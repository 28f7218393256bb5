using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Sweeps;

/// <summary>One thing that a sweep shows of every launch: an aim's value, a figure, or the score.</summary>
/// <param name="Key">Its key in documents.</param>
/// <param name="Words">What it is called in a sentence, such as <c>the rise lag</c>.</param>
/// <param name="Scale">Unit and digits in which a person reads it.</param>
/// <param name="Read">Its value from a launch that came to its end, SI; not a number when there is none.</param>
public sealed record Measure(string Key, string Words, Scale Scale, Func<GridRow, double> Read)
{
    /// <summary>The aim that it is, with what is wanted; null for a figure and the score.</summary>
    public Aim? Aim { get; init; }

    /// <summary>Its name at the head of a column or an axis.</summary>
    public string Name => Words.StartsWith("the ", StringComparison.Ordinal) ? Words[4..] : Words;

    /// <summary>Its value; not a number when the launch failed or has none.</summary>
    /// <param name="row">The launch.</param>
    public double Of(GridRow row) => row.Trouble is null ? Read(row) : double.NaN;

    /// <summary>What a sweep shows: the figures asked for, or else the values of the aims; and the score at the end.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="figures">Keys of the figures asked for; none for the aims.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<Measure> All(GridPlan plan, IReadOnlyList<string> figures, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(figures);
        int aims = plan.Aims.Keys.Count;
        var score = new Measure("score", "the score", AimNumbers.Score, row => row.Score.Exists ? row.Score.Points : double.NaN);
        if (figures.Count == 0)
        {
            return [.. plan.Aims.Aims.Select((aim, i) => new Measure(aim.Subject.Name, aim.Subject.Words, AimNumbers.ScaleOf(aim.Subject, readout), row => plan.Aims.Value(i, row.Held.AsSpan(0, aims))) { Aim = aim }), score];
        }

        var catalog = FigureCatalog.For(plan.Settings.Marks.Count);
        List<string> columns = [.. plan.Figures];
        return [.. figures.Distinct(StringComparer.Ordinal).Select(key =>
        {
            FigureDefinition figure = catalog.TryFind(key, out int index) ? catalog.Definitions[index] : throw new ArgumentException($"There is no figure {key}.", nameof(figures));
            int column = columns.IndexOf(key);
            return new Measure(key, $"the {Inside(figure.Name)}", FigureFormat.ScaleOf(figure, readout), row => row.Held[column]);
        }), score];
    }

    // As it stands within a sentence; an abbreviation keeps its capitals.
    private static string Inside(string name) => name.Length > 1 && char.IsUpper(name[1]) ? name : char.ToLowerInvariant(name[0]) + name[1..];
}
