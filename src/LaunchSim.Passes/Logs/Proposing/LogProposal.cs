using System.Globalization;
using System.Text;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>What the columns of a log may be, and the mapping file that says so.</summary>
public sealed record LogProposal
{
    /// <summary>The log as it was named.</summary>
    public required string SourceFile { get; init; }

    /// <summary>How the rows are written, in a sentence.</summary>
    public required string Layout { get; init; }

    /// <summary>How many rows, over what time and how fast, in a sentence.</summary>
    public required string Rows { get; init; }

    /// <summary>All columns in their order.</summary>
    public required IReadOnlyList<ProposedColumn> Columns { get; init; }

    /// <summary>Lines of the <c>table:</c> section.</summary>
    internal IReadOnlyList<string> Table { get; init; } = [];

    /// <summary>The column of time or frames; null when there is none.</summary>
    public ProposedColumn? Time => Columns.FirstOrDefault(column => column.Quantity is "time" or "frame");

    /// <summary>A column as the mapping has to name it: by number where the name is no name or stands twice.</summary>
    public string NameOf(ProposedColumn column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return column.Name.Length == 0 || Columns.Count(other => other.Name == column.Name) > 1 ? string.Create(CultureInfo.InvariantCulture, $"#{column.Number}") : column.Name;
    }

    /// <summary>The mapping of what is sure; null when the time or every quantity is not.</summary>
    public LogMapping? SureMapping() =>
        Time is { Quantity: "time", Certainty: Certainty.Sure } && Columns.Any(column => column.Certainty == Certainty.Sure && MeasuredQuantities.Find(column.Quantity ?? "") is not null)
            ? new MappingReader(MeasuredQuantities.Recorded).ReadText(Text(sureOnly: true), SourceFile).Mapping
            : null;

    /// <summary>The mapping file: what is proposed with why, what is open as a comment.</summary>
    public string Text() => Text(sureOnly: false);

    private string Text(bool sureOnly)
    {
        var text = new StringBuilder();
        _ = text.Append(CultureInfo.InvariantCulture, $"# Proposed from the names, units and numbers of {OneLine(Path.GetFileName(SourceFile))}. Look it through: a column that is read as\n# what it is not is worse than one that is left out. docs/logs.md has all keys.\n");
        _ = text.Append(CultureInfo.InvariantCulture, $"name: {MappingScalar.Of(OneLine(Path.GetFileNameWithoutExtension(SourceFile)))}\n");
        if (Table.Count > 0)
        {
            _ = text.Append("table:\n");
            foreach (string line in Table)
            {
                _ = text.Append(CultureInfo.InvariantCulture, $"  {line}\n");
            }
        }

        _ = text.Append("time:\n");
        _ = Time switch
        {
            { Quantity: "frame" } frame => text.Append(CultureInfo.InvariantCulture, $"  frame: {MappingScalar.Of(NameOf(frame))}\n  frames_per_second: 0  # ? write the camera's setting\n"),
            { } time => text.Append(CultureInfo.InvariantCulture, $"  column: {MappingScalar.Of(NameOf(time))}\n  unit: {time.Unit ?? "?"}  # {time.Certainty.ToString().ToLowerInvariant()}: {OneLine(time.Why)}\n"),
            _ => text.Append("  rate: 0 Hz  # ? no column of times was found: write how many rows come each second\n"),
        };
        ProposedColumn[] taken = [.. Columns.Where(column => column.Quantity is not null and not "time" and not "frame" && (sureOnly ? column.Certainty == Certainty.Sure : column.Unit is not null && column.Certainty != Certainty.Open))];
        ProposedColumn[] open = [.. Columns.Where(column => column.Quantity is not ("time" or "frame") && !taken.Contains(column))];
        _ = text.Append(taken.Length > 0 ? "columns:\n" : "columns: []  # none is plain: see below\n");
        foreach (ProposedColumn column in taken)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"  - column: {MappingScalar.Of(NameOf(column))}\n    quantity: {column.Quantity}\n    unit: {column.Unit}  # {column.Certainty.ToString().ToLowerInvariant()}: {OneLine(column.Why)}\n");
            if (MeasuredQuantities.Find(column.Quantity!)!.Driveline)
            {
                _ = text.Append("    # ratio: 4.10  # turns of the shaft for one of the axle; left out, the scenario's final_drive\n");
            }
        }

        if (!sureOnly && open.Length > 0)
        {
            _ = text.Append("# Left open:\n");
            foreach (ProposedColumn column in open)
            {
                _ = text.Append(CultureInfo.InvariantCulture, $"#  - column: {MappingScalar.Of(OneLine(NameOf(column)))}  # {OneLine(column.Range)}; {OneLine(column.Why)}\n");
                if (column.Quantity is not null)
                {
                    _ = text.Append(CultureInfo.InvariantCulture, $"#    quantity: {column.Quantity}\n#    unit: {column.Unit ?? "?"}\n");
                }
            }
        }

        return text.ToString();
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>What came of looking at a log's columns.</summary>
/// <param name="Proposal">The proposal; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record ProposalResult(LogProposal? Proposal, IReadOnlyList<Diagnostic> Errors);
