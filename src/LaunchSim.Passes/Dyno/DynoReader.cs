using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Dyno;

/// <summary>
/// Reads dyno sheets: text with columns, parted by commas, semicolons or tabs, any heading before the column names, units beside
/// the names or below them, decimal commas where commas do not part.
/// </summary>
public sealed partial class DynoReader
{
    // A sheet is some hundred kilobytes; what is larger is another file.
    private const long Largest = 64L << 20;

    private const int HeadingLines = 200;

    // Common spellings that the scenario file does not have.
    private static readonly Dictionary<string, string> Spellings = new(StringComparer.OrdinalIgnoreCase)
    {
        ["lbs"] = "lb",
        ["pounds"] = "lb",
        ["ips"] = "in/s",
        ["in/sec"] = "in/s",
        ["mm/sec"] = "mm/s",
        ["m/sec"] = "m/s",
        ["inch"] = "in",
        ["inches"] = "in",
        ["newton"] = "N",
        ["n"] = "N",
    };

    private readonly string _path;
    private readonly DynoMapping _mapping;
    private readonly List<Diagnostic> _errors = [];
    private readonly List<string> _notes = [];

    private DynoReader(string path, DynoMapping mapping) => (_path, _mapping) = (path, mapping);

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    /// <param name="click">The click that it was run at; null when a column or nobody tells.</param>
    /// <param name="mapping">What is known of its columns.</param>
    public static DynoReadResult Read(string path, double? click, DynoMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(mapping);
        try
        {
            if (Directory.Exists(path) || !File.Exists(path))
            {
                return Refused(path, Directory.Exists(path) ? $"`{path}`, which is a folder" : $"no file `{path}`", "a dyno sheet: text with columns", "look at the name and the folder");
            }

            if (new FileInfo(path).Length > Largest)
            {
                return Refused(path, $"`{path}`, a file larger than 64 MB", "a dyno sheet, which is some hundred kilobytes", "export force over velocity alone");
            }

            return ReadText(File.ReadAllText(path, Encoding.UTF8), path, click, mapping);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refused(path, $"`{path}`, which cannot be read", "a file that may be read", exception.Message);
        }
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The sheet.</param>
    /// <param name="path">What errors are to call it.</param>
    /// <param name="click">The click that it was run at.</param>
    /// <param name="mapping">What is known of its columns.</param>
    public static DynoReadResult ReadText(string text, string path, double? click, DynoMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(text);
        var reader = new DynoReader(path, mapping);
        IReadOnlyList<DynoRun> runs = reader.Runs(text.TrimStart('\ufeff').Split('\n'), click);
        return reader._errors.Count > 0 ? new DynoReadResult([], reader._errors, []) : new DynoReadResult(runs, [], reader._notes);
    }

    private static DynoReadResult Refused(string path, string found, string allowed, string mend) =>
        new([], [new Diagnostic { File = path, Line = 0, Column = 0, Severity = Severity.Error, Message = found, Allowed = allowed, Mend = mend }], []);

    private void Error(int line, string found, string allowed, string mend) =>
        _errors.Add(new Diagnostic { File = _path, Line = line, Column = line > 0 ? 1 : 0, Severity = Severity.Error, Message = found, Allowed = allowed, Mend = mend });

    private List<DynoRun> Runs(string[] lines, double? click)
    {
        if (Header(lines) is not { } header)
        {
            return [];
        }

        var columns = new Dictionary<DynoQuantity, (int Index, double Factor)>();
        string[] below = header.Line + 1 < lines.Length ? Cells(lines[header.Line + 1], header.Separator) : [];
        bool hasUnits = below.Length > 0 && header.Columns.All(column => !IsNumber(Cell(below, column.Value), header.Separator)) && below.Any(cell => cell.Length > 0);
        int first = header.Line + (hasUnits ? 2 : 1);
        foreach ((DynoQuantity quantity, int index) in header.Columns)
        {
            string written = _mapping.Units.TryGetValue(quantity, out string? said) ? said
                : hasUnits && Cell(below, index).Trim('(', ')', '[', ']', ' ') is { Length: > 0 } unit ? unit
                : UnitOf(header.Cells[index], quantity.Kind);
            if (Factor(quantity, written) is { } factor)
            {
                columns[quantity] = (index, factor);
            }
            else
            {
                (double low, double high) = Span(lines, first, header.Separator, index);
                string range = double.IsFinite(low) ? string.Create(CultureInfo.InvariantCulture, $", with values from {low:G5} to {high:G5}") : "";
                string what = written.Length > 0 ? $"the unit `{written}` at the column `{header.Cells[index]}`" : $"the column `{header.Cells[index]}` without a unit";
                Error(header.Line + 1, what + range, quantity.Kind.Name, $"say which it is, as in --unit {quantity.Key}={quantity.Kind.Units[0]}");
            }
        }

        return _errors.Count > 0 ? [] : Rows(lines, first, header.Separator, columns, click);
    }

    private List<DynoRun> Rows(string[] lines, int first, char separator, Dictionary<DynoQuantity, (int Index, double Factor)> columns, double? click)
    {
        bool isSided = !columns.ContainsKey(DynoQuantity.Force);
        DynoQuantity[] needed = isSided ? [DynoQuantity.Velocity, DynoQuantity.Extension, DynoQuantity.Compression] : [DynoQuantity.Velocity, DynoQuantity.Force];
        bool hasPlace = !isSided && columns.ContainsKey(DynoQuantity.Displacement);
        bool hasClick = click is null && columns.ContainsKey(DynoQuantity.Click);
        needed = [.. needed, .. hasPlace ? [DynoQuantity.Displacement] : Array.Empty<DynoQuantity>(), .. hasClick ? [DynoQuantity.Click] : Array.Empty<DynoQuantity>()];
        var byClick = new List<(double? Click, List<double> Velocities, List<double> Forces, List<double> Places)>();
        int dropped = 0, kept = 0;
        double[] values = new double[needed.Length];
        for (int i = first; i < lines.Length; i++)
        {
            string line = lines[i].Trim();
            if (line.Length == 0)
            {
                continue;
            }

            string[] cells = Cells(lines[i], separator);
            bool isGood = true;
            for (int k = 0; k < needed.Length; k++)
            {
                (int index, double factor) = columns[needed[k]];
                isGood &= Number(Cell(cells, index), separator, out values[k]);
                values[k] *= factor;
            }

            if (!isGood)
            {
                dropped++;
                continue;
            }

            kept++;
            double? own = hasClick ? values[^1] : click;
            int at = byClick.FindIndex(one => one.Click == own);
            if (at < 0)
            {
                byClick.Add((own, [], [], []));
                at = byClick.Count - 1;
            }

            if (isSided)
            {
                // Either side's force resists, whatever its sign on the sheet; a row stands for both.
                double speed = Math.Abs(values[0]);
                byClick[at].Velocities.AddRange([speed, -speed]);
                byClick[at].Forces.AddRange([values[1], values[2]]);
            }
            else
            {
                byClick[at].Velocities.Add(values[0]);
                byClick[at].Forces.Add(values[1]);
                byClick[at].Places.Add(hasPlace ? values[2] : 0);
            }
        }

        if (kept < 3 || dropped > kept)
        {
            Error(0, string.Create(CultureInfo.InvariantCulture, $"{kept} rows with numbers and {dropped} without"), "a row of numbers for each point, three or more", "look at the separator, the decimal sign and the columns");
            return [];
        }

        if (dropped > 0)
        {
            _notes.Add(string.Create(CultureInfo.InvariantCulture, $"{_path}: {dropped} rows without a number are left out, {kept} kept"));
        }

        return [.. byClick.Select(one => new DynoRun(_path, one.Click, one.Velocities, isSided ? Resisting(one.Forces) : one.Forces, hasPlace ? one.Places : null, isSided))];
    }

    // Sheets write both sides' forces up, or one of them down: what most of a side's rows have is its way of resisting.
    private static double[] Resisting(List<double> forces)
    {
        double extension = 0, compression = 0;
        for (int i = 0; i < forces.Count; i += 2)
        {
            extension += forces[i];
            compression += forces[i + 1];
        }

        return [.. forces.Select((force, i) => i % 2 == 0 ? Math.Sign(extension) * force : -Math.Sign(compression) * force)];
    }

    private (int Line, char Separator, string[] Cells, Dictionary<DynoQuantity, int> Columns)? Header(string[] lines)
    {
        List<string> seen = [];
        for (int i = 0; i < Math.Min(lines.Length, HeadingLines); i++)
        {
            foreach (char separator in "\t;,")
            {
                string[] cells = Cells(lines[i], separator);
                if (cells.Length < 2)
                {
                    continue;
                }

                seen = cells.Count(cell => cell.Length > 0 && !IsNumber(cell, separator)) > seen.Count ? [.. cells] : seen;
                if (!cells.Any(cell => Matches(cell, DynoQuantity.Velocity)) || !cells.Any(cell => Matches(cell, DynoQuantity.Force) || Matches(cell, DynoQuantity.Extension)))
                {
                    continue;
                }

                return Columns(cells, i) is { } columns ? (i, separator, cells, columns) : null;
            }
        }

        string names = seen.Count > 0 ? $"; the columns seem to be {string.Join(", ", seen.Where(cell => cell.Length > 0).Select(cell => $"`{cell}`"))}" : "";
        Error(0, $"no line that names a velocity and a force{names}", "columns parted by commas, semicolons or tabs, with their names in one line", "say which they are, as in --column velocity=NAME --column force=NAME");
        return null;
    }

    private Dictionary<DynoQuantity, int>? Columns(string[] cells, int line)
    {
        var columns = new Dictionary<DynoQuantity, int>();
        var taken = new HashSet<int>();
        foreach (DynoQuantity quantity in DynoQuantity.All)
        {
            List<int> found = [.. Enumerable.Range(0, cells.Length).Where(i => !taken.Contains(i) && Matches(cells[i], quantity))];
            if (found.Count > 1 && quantity.Names.Select(name => found.Where(i => NameOf(cells[i]).Equals(name, StringComparison.OrdinalIgnoreCase)).ToList()).FirstOrDefault(exact => exact.Count == 1) is { } one)
            {
                found = one;
            }

            if (found.Count > 1)
            {
                Error(line + 1, $"{string.Join(" and ", found.Select(i => $"`{cells[i]}`"))}, either of which may be the {quantity.Key}", "one column for each", $"say which, as in --column \"{quantity.Key}={cells[found[0]]}\"");
            }
            else if (found.Count == 1)
            {
                columns[quantity] = found[0];
                taken.Add(found[0]);
            }
        }

        // Two sides' forces are a sheet of their own kind only together and without a plain one.
        bool isSided = columns.ContainsKey(DynoQuantity.Extension) && columns.ContainsKey(DynoQuantity.Compression);
        if (isSided && !_mapping.Columns.ContainsKey(DynoQuantity.Force))
        {
            columns.Remove(DynoQuantity.Force);
        }
        else
        {
            columns.Remove(DynoQuantity.Extension);
            columns.Remove(DynoQuantity.Compression);
        }

        if (_errors.Count == 0 && (!columns.ContainsKey(DynoQuantity.Velocity) || (!isSided && !columns.ContainsKey(DynoQuantity.Force))))
        {
            Error(line + 1, $"the columns {string.Join(", ", cells.Select(cell => $"`{cell}`"))}", "a velocity and a force, or a velocity and a force for either side", "say which they are, as in --column velocity=NAME --column force=NAME");
        }

        return _errors.Count > 0 ? null : columns;
    }

    private bool Matches(string cell, DynoQuantity quantity)
    {
        if (_mapping.Columns.TryGetValue(quantity, out string? name))
        {
            return cell.Equals(name, StringComparison.OrdinalIgnoreCase) || NameOf(cell).Equals(name, StringComparison.OrdinalIgnoreCase);
        }

        return !double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            && quantity.Names.Any(known => NameOf(cell).Contains(known, StringComparison.OrdinalIgnoreCase));
    }

    private static string NameOf(string cell) => InBrackets().Match(cell) is { Success: true } match ? cell[..match.Index].Trim(' ', '_') : cell.Trim();

    private static string UnitOf(string cell, QuantityKind kind)
    {
        if (InBrackets().Match(cell) is { Success: true } match)
        {
            return match.Groups[1].Value.Trim();
        }

        string last = cell.Split(' ', '_')[^1];
        return Parsed(last, kind) is not null ? last : "";
    }

    private static double? Factor(DynoQuantity quantity, string unit) =>
        quantity.Kind == QuantityKind.Number ? 1 : Parsed(unit.Trim(), quantity.Kind);

    private static double? Parsed(string unit, QuantityKind kind)
    {
        string known = Spellings.GetValueOrDefault(unit, unit);
        return known.Length > 0 && Quantity.TryParse($"1 {known}", kind, out Quantity? one, out _) ? one!.Si() : null;
    }

    private static (double Low, double High) Span(string[] lines, int first, char separator, int index)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int i = first; i < lines.Length; i++)
        {
            if (Number(Cell(Cells(lines[i], separator), index), separator, out double value))
            {
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
            }
        }

        return (low, high);
    }

    private static string[] Cells(string line, char separator) => [.. line.Split(separator).Select(cell => cell.Trim().Trim('"').Trim())];

    private static string Cell(string[] cells, int index) => index < cells.Length ? cells[index] : "";

    private static bool IsNumber(string cell, char separator) => Number(cell, separator, out _);

    private static bool Number(string cell, char separator, out double value)
    {
        string text = separator != ',' && cell.Contains(',', StringComparison.Ordinal) && !cell.Contains('.', StringComparison.Ordinal) ? cell.Replace(',', '.') : cell;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    [GeneratedRegex(@"[\(\[]([^\)\]]*)[\)\]]\s*$")]
    private static partial Regex InBrackets();
}
