using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs;

/// <summary>How the rows of one log are written, with what a mapping left open told from the log's first lines.</summary>
/// <param name="Separator">What parts the cells.</param>
/// <param name="DecimalComma">Whether decimals stand after a comma.</param>
/// <param name="Comment">With what lines begin that are no rows; null for nothing.</param>
/// <param name="Lead">How many lines stand before the first row: junk, the names, and units where a line of them follows.</param>
/// <param name="Names">The columns' names; of a log without them #1, #2 …</param>
/// <param name="HeaderLine">The line of the names, from 1; 0 without.</param>
/// <param name="Units">Units of the columns from a line below the names, as many; empty without such a line.</param>
internal sealed record LogLayout(char Separator, bool DecimalComma, char? Comment, int Lead, IReadOnlyList<string> Names, int HeaderLine, IReadOnlyList<string> Units)
{
    private const int MostLines = 300;

    // In the order in which they are believed: a comma may be a decimal one, a space may stand in a name.
    private static readonly char[] Separators = ['\t', ';', '|', ',', ' '];

    /// <summary>Tells the layout of a log.</summary>
    /// <param name="path">The file as it was named.</param>
    /// <param name="table">What is known of it.</param>
    /// <param name="wanted">Names that have to be there; empty when any will do.</param>
    /// <param name="problem">Why it cannot be told, when null is returned.</param>
    /// <exception cref="LogTextException">It is no text of rows.</exception>
    public static LogLayout? Find(string path, LogTable table, IReadOnlyList<(string Name, WrittenPlace At)> wanted, out Diagnostic[] problem)
    {
        problem = [];
        List<string> lines = First(path, out Diagnostic? unreadable);
        if (unreadable is not null)
        {
            problem = [unreadable];
            return null;
        }

        bool IsRow(string line) => line.Trim().Length > 0 && !(table.Comment is { } mark && line.StartsWith(mark));
        char separator = table.Separator ?? Told(lines.Where(IsRow).ToList());
        List<string[]> cells = [.. lines.Select(line => IsRow(line) ? Split(line, separator) : [])];
        bool comma = table.DecimalComma ?? (separator != ',' && HasDecimalComma(cells));
        int data = FirstRow(cells, comma);
        if (data < 0)
        {
            problem = [new WrittenPlace(path, 0, 0).Error("", $"no row of numbers in the first {lines.Count} lines", "a log: names in one row, then a row of numbers for each instant", "look whether the logger's export came to its end, and at table.separator and table.decimal of the mapping")];
            return null;
        }

        int header = Header(table, wanted, cells, data);
        if (header < 0 && wanted.Any(one => one.Name[0] != '#'))
        {
            problem = NotThere(path, cells, data, wanted);
            return null;
        }

        if (header >= 0 && table.HeaderLine is not null && wanted.Count > 0 && wanted.Any(one => one.Name[0] != '#' && !cells[header].Contains(one.Name)))
        {
            problem = NotThere(path, cells, header + 1, wanted, header);
            return null;
        }

        string[] names = header >= 0 ? cells[header] : [.. Enumerable.Range(1, cells[data].Length).Select(i => string.Create(CultureInfo.InvariantCulture, $"#{i}"))];
        int lead = header >= 0 ? header + 1 : data;
        string[] units = header >= 0 && data > header + 1 && cells[header + 1].Length == names.Length ? cells[header + 1] : [];
        return new LogLayout(separator, comma, table.Comment, lead, names, header + 1, units);
    }

    /// <summary>How CSV is read, of this log.</summary>
    /// <param name="bad">Called for quote marks that do not belong where they are.</param>
    public CsvConfiguration Csv(BadDataFound bad) => Configuration(Separator, Comment, bad);

    /// <summary>The place of a column.</summary>
    /// <param name="name">Its name, or #3 for the third one.</param>
    /// <returns>From 0; -1 when there is none, -2 when there are several of that name.</returns>
    public int IndexOf(string name)
    {
        int found = -1;
        for (int i = 0; i < Names.Count; i++)
        {
            if (Names[i] == name)
            {
                if (found >= 0)
                {
                    return -2;
                }

                found = i;
            }
        }

        return found >= 0 ? found
            : name[0] == '#' && int.TryParse(name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= Names.Count ? number - 1
            : -1;
    }

    /// <summary>A cell's number.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="comma">Whether decimals stand after a comma.</param>
    /// <param name="value">The number; may be not a number or infinite, where that is written.</param>
    public static bool TryNumber(ReadOnlySpan<char> cell, bool comma, out double value)
    {
        cell = cell.Trim();
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (!comma || cell.IndexOf(',') < 0)
        {
            return double.TryParse(cell, Style, CultureInfo.InvariantCulture, out value);
        }

        value = double.NaN;
        if (cell.Length > 64 || cell.Contains('.'))
        {
            return false;
        }

        Span<char> pointed = stackalloc char[cell.Length];
        cell.CopyTo(pointed);
        pointed.Replace(',', '.');
        return double.TryParse(pointed, Style, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>The time of a cell such as 14:03:11.020.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="comma">Whether decimals stand after a comma.</param>
    /// <param name="seconds">The time, s.</param>
    public static bool TryClock(string cell, bool comma, out double seconds)
    {
        seconds = 0;
        foreach (string part in cell.Split(':'))
        {
            if (!TryNumber(part, comma, out double number) || number < 0)
            {
                return false;
            }

            seconds = (60 * seconds) + number;
        }

        return cell.Contains(':', StringComparison.Ordinal);
    }

    private static CsvConfiguration Configuration(char separator, char? comment, BadDataFound? bad) => new(CultureInfo.InvariantCulture)
    {
        Delimiter = separator.ToString(),
        HasHeaderRecord = false,
        IgnoreBlankLines = true,
        AllowComments = comment is not null,
        Comment = comment ?? '#',
        TrimOptions = separator is ' ' or '\t' ? TrimOptions.None : TrimOptions.Trim,
        WhiteSpaceChars = separator is ' ' or '\t' ? [] : [' ', '\t'],
        LineBreakInQuotedFieldIsBadData = true,
        MaxFieldSize = LogText.LongestLine,
        BadDataFound = bad,
        CacheFields = false,
    };

    private static List<string> First(string path, out Diagnostic? problem)
    {
        var lines = new List<string>();
        using LogText? text = LogText.Open(path, out problem);
        while (text is not null && lines.Count < MostLines && text.ReadLine() is { } line)
        {
            lines.Add(line);
        }

        return lines;
    }

    private static string[] Split(string line, char separator)
    {
        // Several spaces part two cells as one does.
        if (separator == ' ')
        {
            line = string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        }

        using var parser = new CsvParser(new StringReader(line), Configuration(separator, null, null));
        return parser.Read() ? [.. parser.Record!.Select(cell => cell.Trim())] : [];
    }

    // That which parts most of the later lines into the same number of cells.
    private static char Told(List<string> lines)
    {
        char best = ',';
        double most = 0;
        List<string> later = lines.Count > 20 ? lines[(lines.Count / 2)..] : lines[(lines.Count / 3)..];
        foreach (char separator in Separators)
        {
            IGrouping<int, int>? usual = later.Select(line => Cells(line, separator)).Where(count => count > 1).GroupBy(count => count).MaxBy(group => group.Count());
            double share = usual is null ? 0 : (double)usual.Count() / later.Count;
            if (share > most + 0.05)
            {
                (best, most) = (separator, share);
            }
        }

        return best;
    }

    private static int Cells(string line, char separator)
    {
        int cells = 1;
        bool quoted = false;
        char before = separator;
        foreach (char c in line)
        {
            quoted ^= c == '"';
            cells += c == separator && !quoted && !(separator == ' ' && before == ' ') ? 1 : 0;
            before = c;
        }

        return cells;
    }

    private static bool HasDecimalComma(List<string[]> cells)
    {
        int commas = 0, points = 0;
        foreach (string cell in cells.SelectMany(row => row))
        {
            commas += cell.Contains(',', StringComparison.Ordinal) && TryNumber(cell, true, out _) ? 1 : 0;
            points += cell.Contains('.', StringComparison.Ordinal) && TryNumber(cell, false, out _) ? 1 : 0;
        }

        return commas > points;
    }

    // A row has numbers in most of its cells, and so has the one after it.
    private static int FirstRow(List<string[]> cells, bool comma)
    {
        bool IsData(int i) => cells[i].Length > 0 && cells[i].Count(cell => TryNumber(cell, comma, out _)) is > 0 and var numbers && numbers >= 0.5 * cells[i].Count(cell => cell.Length > 0);
        int last = cells.FindLastIndex(row => row.Length > 0);
        int width = last < 0 ? 0 : cells.Where(row => row.Length > 0).GroupBy(row => row.Length).MaxBy(group => group.Count())!.Key;
        for (int i = 0; i <= last; i++)
        {
            int next = cells.FindIndex(i + 1, row => row.Length > 0);
            if (IsData(i) && (cells[i].Length >= width || i == last) && (next < 0 || IsData(next)))
            {
                return i;
            }
        }

        return -1;
    }

    private static int Header(LogTable table, IReadOnlyList<(string Name, WrittenPlace At)> wanted, List<string[]> cells, int data)
    {
        if (!table.HasHeader)
        {
            return -1;
        }

        if (table.HeaderLine is { } line)
        {
            return line <= cells.Count ? line - 1 : -1;
        }

        string[] names = [.. wanted.Select(one => one.Name).Where(name => name[0] != '#')];
        if (names.Length > 0)
        {
            return cells.FindIndex(row => row.Length > 0 && names.All(row.Contains));
        }

        // Names may be followed by a line of units: the names are the first of the lines that are as wide as the rows.
        int header = -1;
        for (int i = data - 1; i >= 0 && i >= data - 3; i--)
        {
            if (cells[i].Length == cells[data].Length && cells[i].Count(cell => cell.Length > 0 && !TryNumber(cell, table.DecimalComma ?? false, out _)) >= 0.5 * cells[i].Length)
            {
                header = i;
            }
            else if (cells[i].Length > 0)
            {
                break;
            }
        }

        return header;
    }

    private static Diagnostic[] NotThere(string path, List<string[]> cells, int data, IReadOnlyList<(string Name, WrittenPlace At)> wanted, int asked = -1)
    {
        string[] Named() => [.. wanted.Select(one => one.Name).Where(name => name[0] != '#')];
        string[] all = Named();

        // The row that has most of the names, or the last one before the numbers.
        int best = asked >= 0 ? asked : Enumerable.Range(0, Math.Max(1, Math.Min(cells.Count, data + 1))).OrderByDescending(i => cells[i].Intersect(all).Count()).ThenByDescending(i => cells[i].Length).ThenByDescending(i => i).First();
        string[] there = [.. cells[best].Where(cell => cell.Length > 0)];
        string shown = there.Length == 0 ? "nothing" : string.Join(", ", there.Take(30).Select(name => $"`{name}`"));
        return [.. wanted.Where(one => one.Name[0] != '#' && !there.Contains(one.Name)).Select(one => one.At.Error(
            "", $"no column `{one.Name}` in {path}, line {best + 1}", $"its columns: {shown}",
            there.FirstOrDefault(name => name.Equals(one.Name, StringComparison.OrdinalIgnoreCase)) is { } cased ? $"did you mean `{cased}`?"
            : Nearest.To(one.Name, there) is { } near ? $"did you mean `{near}`?"
            : "write the name as it stands there, or name the column by its number, as in #3; `launchsim columns` proposes a mapping for this log"))];
    }
}
