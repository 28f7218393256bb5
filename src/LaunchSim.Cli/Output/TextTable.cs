using System.Globalization;
using System.Text;
using Spectre.Console;

namespace LaunchSim.Cli.Output;

/// <summary>Rows in aligned columns: numbers to the right, words to the left.</summary>
/// <param name="toRight">For each column, whether it is aligned to the right.</param>
internal sealed class TextTable(params bool[] toRight)
{
    private static readonly Style Strong = new(decoration: Decoration.Bold);

    // Blanks, or a blank, a line and the next cell.
    private const int Between = 2;

    // As narrow as a column of words may become before it is moved to another table.
    private const int Words = 24;

    private readonly List<string[]> _rows = [];
    private string[]? _names;

    /// <summary>Names the columns.</summary>
    /// <param name="names">A name for each, empty where it needs none.</param>
    public TextTable Named(params string[] names)
    {
        _names = names;
        return this;
    }

    /// <summary>Adds a row; cells that are missing are empty.</summary>
    /// <param name="cells">The cells.</param>
    public void Add(params string[] cells) => _rows.Add(cells);

    /// <summary>Adds a row that is the heading of those after it.</summary>
    /// <param name="text">The heading.</param>
    public void Group(string text) => _rows.Add([text]);

    /// <summary>
    /// One line a row, however long it gets, as a pipe wants it. Done here and not by the table library, which takes a
    /// tenth of a second to start: a script that runs a thousand scenarios would wait for it a thousand times.
    /// </summary>
    public IEnumerable<string> Lines()
    {
        string[][] rows = [.. _names is null ? _rows : _rows.Prepend(_names)];
        int[] widths = [.. toRight.Select((_, i) => WidthOf(i))];
        foreach (string[] row in rows)
        {
            var line = new StringBuilder();
            for (int i = 0; i < row.Length; i++)
            {
                string blank = new(' ', widths[i] - Width(row[i]));
                _ = line.Append(toRight[i] ? blank + row[i] : row[i] + blank).Append("  ");
            }

            yield return line.ToString().TrimEnd();
        }
    }

    /// <summary>
    /// The table for a terminal. Columns that find no room go into further tables, each of which begins with the key
    /// columns again; only what is too wide even so is broken within its cells.
    /// </summary>
    /// <param name="width">Columns of the terminal that there are for it.</param>
    /// <param name="keys">How many columns at the left tell a row from another.</param>
    public IEnumerable<Table> Rendered(int width, int keys)
    {
        int[] widths = [.. toRight.Select((isNumber, i) => Between + (isNumber ? WidthOf(i) : Math.Min(WidthOf(i), Words)))];
        int key = widths.Take(keys).Sum();
        for (int next = keys; next < toRight.Length;)
        {
            int from = next, used = key + widths[next++];
            while (next < toRight.Length && used + widths[next] <= width)
            {
                used += widths[next++];
            }

            yield return Part([.. Enumerable.Range(0, keys), .. Enumerable.Range(from, next - from)]);
        }
    }

    private Table Part(int[] columns)
    {
        var table = new Table { Border = _names is null ? TableBorder.None : TableBorder.Minimal, ShowHeaders = _names is not null };
        foreach (int i in columns)
        {
            _ = table.AddColumn(new TableColumn(new Text(Cell(_names ?? [], i), Strong))
            {
                Alignment = toRight[i] ? Justify.Right : Justify.Left,
                NoWrap = toRight[i],
                Padding = new Padding(0, 0, _names is null ? Between : 1, 0),
            });
        }

        foreach (string[] row in _rows)
        {
            bool isGroup = row.Length == 1 && toRight.Length > 1;
            _ = table.AddRow(columns.Select(i => new Text(Cell(row, i), isGroup ? Strong : Style.Plain)));
        }

        return table;
    }

    private static string Cell(string[] row, int column) => column < row.Length ? row[column] : "";

    private int WidthOf(int column) => (_names is null ? _rows : _rows.Prepend(_names)).Max(row => Width(Cell(row, column)));

    private static int Width(string cell) => new StringInfo(cell).LengthInTextElements;
}
