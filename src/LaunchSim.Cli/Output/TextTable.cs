using System.Globalization;
using System.Text;

namespace LaunchSim.Cli.Output;

/// <summary>Rows in aligned columns: numbers to the right, words to the left.</summary>
/// <param name="toRight">For each column, whether it is aligned to the right.</param>
internal sealed class TextTable(params bool[] toRight)
{
    private readonly List<string[]> _rows = [];

    /// <summary>Adds a row; cells that are missing are empty.</summary>
    /// <param name="cells">The cells.</param>
    public void Add(params string[] cells) => _rows.Add(cells);

    /// <summary>The rows, each indented and ended by a line feed.</summary>
    public override string ToString()
    {
        int[] widths = new int[toRight.Length];
        foreach (string[] row in _rows)
        {
            for (int i = 0; i < row.Length; i++)
            {
                widths[i] = Math.Max(widths[i], Width(row[i]));
            }
        }

        var text = new StringBuilder();
        foreach (string[] row in _rows)
        {
            var line = new StringBuilder("  ");
            for (int i = 0; i < row.Length; i++)
            {
                string blank = new(' ', widths[i] - Width(row[i]));
                _ = line.Append(toRight[i] ? blank + row[i] : row[i] + blank).Append("  ");
            }

            _ = text.Append(line.ToString().TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    private static int Width(string cell) => new StringInfo(cell).LengthInTextElements;
}
