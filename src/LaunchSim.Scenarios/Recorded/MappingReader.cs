using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Reads mapping files. Whatever a file holds comes back as a mapping or as errors; it throws for no content.</summary>
/// <param name="quantities">What a column may measure.</param>
public sealed class MappingReader(IReadOnlyList<RecordedQuantity> quantities)
{
    private const string Shape = "a mapping: `time:` and `columns:`";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    public MappingResult Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        return ScenarioText.Read(path, path, new Place(path, 0, 0), findings, "mapping") is { } text
            ? Read(text, path, findings)
            : new MappingResult(null, findings.Errors());
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The mapping.</param>
    /// <param name="displayName">What errors are to call it.</param>
    public MappingResult ReadText(string text, string displayName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(displayName);
        var findings = new Findings();
        return ScenarioText.Accept(text, displayName, findings) ? Read(text, displayName, findings) : new MappingResult(null, findings.Errors());
    }

    private MappingResult Read(string text, string path, Findings findings)
    {
        Node? node = NodeReader.Read(text, path, findings, Shape);
        if (node is not MapNode root)
        {
            if (node is not null)
            {
                findings.Error(node.Place, "", $"{Binder.Describe(node)} where a mapping is due", Shape, "see docs/logs.md");
            }

            return new MappingResult(null, findings.Errors());
        }

        BoundValues values = Binder.Bind(MappingKeys.Mapping, root, findings);
        LogTable table = Table(values, findings);
        LogClock? clock = Clock(values);
        List<LogColumn> columns = Columns(values, findings);
        if (values.CountOf("columns") == 0 && root.Get("columns") is ListNode none)
        {
            findings.Error(none.Place, "columns", "a mapping of no column", "at least one column", "write - {column: Rear RH, quantity: rear_ride_height, unit: mm}");
        }

        return new MappingResult(findings.HasErrors || clock is null ? null : new LogMapping
        {
            Name = values.Find("name")?.Text.Trim() is { Length: > 0 } name ? name : Path.GetFileNameWithoutExtension(path),
            SourceFile = path,
            Table = table,
            Clock = clock,
            Columns = columns,
            ParallaxDoubt = values.Number("parallax.doubt", 0),
        }, findings.Errors());
    }

    private static LogTable Table(BoundValues values, Findings findings)
    {
        char? separator = values.Find("table.separator")?.Text is { } word ? MappingKeys.Separators.First(one => one.Word == word).Character : null;
        bool? comma = values.Find("table.decimal")?.Text is { } mark ? mark == "comma" : null;
        Bound? comment = values.Find("table.comment"), header = values.Find("table.header"), line = values.Find("table.header_line");
        if (separator == ',' && comma == true)
        {
            findings.Error(values.Find("table.decimal")!.Place, "table.decimal", "a comma both between cells and before decimals", "one of them", "such logs part their cells by semicolons or tabs: look at the file in an editor");
        }

        if (comment is not null && comment.Text.Trim().Length != 1)
        {
            findings.Error(comment.Place, comment.Path, $"{Shown.Quoted(comment.Text)} as the beginning of comments", "one character", "write comment: \"#\"");
            comment = null;
        }

        if (line is not null && header?.Text == "none")
        {
            findings.Error(line.Place, line.Path, "the line of a header that there is none of", "one of `header: none` and `header_line`", "take one away");
        }

        return new LogTable(separator, comma, comment?.Text.Trim()[0], header?.Text != "none", line is null ? null : (int)line.Quantity!.Si(),
            values.Find("table.missing")?.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries) ?? []);
    }

    private static LogClock? Clock(BoundValues values)
    {
        Quantity? release = values.Find("time.release")?.Quantity, frame = values.Find("time.release_frame")?.Quantity;
        if (values.Find("time.rate")?.Quantity is { } rate)
        {
            return new FixedRate(rate.Si(), release?.Si(), release?.SiDoubt());
        }

        if (values.Find("time.frame") is { } frames && values.FindNumber("time.frames_per_second") is { } perSecond)
        {
            return new FrameColumn(frames.Text.Trim(), perSecond, frame?.Si() / perSecond, frame?.SiDoubt() / perSecond, WrittenPlace.Of(frames.Place));
        }

        return values.Find("time.column") is { } column && values.Find("time.unit")?.Text is { } unit
            ? new TimeColumn(column.Text.Trim(), MappingKeys.TimeUnits.First(one => one.Word == unit).Seconds, unit == "clock", release?.Si(), release?.SiDoubt(), WrittenPlace.Of(column.Place))
            : null;
    }

    private List<LogColumn> Columns(BoundValues values, Findings findings)
    {
        var columns = new List<LogColumn>();
        for (int i = 0; i < values.CountOf("columns"); i++)
        {
            if (Column(values, $"columns[{i}]", findings) is { } column)
            {
                if (columns.Find(other => other.Column == column.Column) is { } twice)
                {
                    findings.Error(values.Find($"{column.Path}.column")!.Place, column.Path, $"the column {Shown.Quoted(column.Column)} a second time", "each column once", $"it is {twice.Quantity} above; keep one");
                }

                columns.Add(column);
            }
        }

        return columns;
    }

    private LogColumn? Column(BoundValues values, string at, Findings findings)
    {
        if (values.Find($"{at}.column") is not { } name || values.Find($"{at}.quantity") is not { } key)
        {
            return null;
        }

        if (name.Text.Trim().Length == 0)
        {
            findings.Error(name.Place, name.Path, "a column without a name", "the column's name in the log, or #3 for the third one", "write the name as it stands in the log");
            return null;
        }

        string word = key.Text.Trim();
        RecordedQuantity? quantity = quantities.FirstOrDefault(one => one.Key == word);
        if (quantity is null)
        {
            string[] keys = [.. quantities.Select(one => one.Key)];
            findings.Error(key.Place, key.Path, $"the unknown quantity {Shown.Quoted(word)}", string.Join(", ", keys), Nearest.To(word, keys) is { } near ? $"did you mean `{near}`?" : "choose one of them, or leave the column out: columns that are not named are not read");
            return null;
        }

        bool isPixels = values.Find($"{at}.pixel") is not null;
        if ((isPixels ? Pixels(values, at, quantity, findings) : Measured(values, at, quantity, findings)) is not { } unit)
        {
            return null;
        }

        double scale = values.Number($"{at}.scale", 1);
        bool reversed = values.Find($"{at}.reversed")?.Text == "yes" ^ (isPixels && values.Find($"{at}.rows")?.Text != "up");
        Refuse($"{at}.ratio", quantity.Driveline, $"a ratio at {quantity.Words}", "a ratio only at what turns before the axle's gears");
        Refuse($"{at}.radius", unit.IsRolling, $"a rolling radius at {quantity.Words} in {unit.Text}", "a radius only where a wheel's turning is logged as a speed over the ground");
        Quantity? zero = Written(values.Find($"{at}.zero"), unit.Kind, findings), noise = Written(values.Find($"{at}.noise"), unit.Kind, findings);
        Bound? pixel = values.Find($"{at}.pixel");
        return new LogColumn
        {
            Column = name.Text.Trim(),
            Quantity = quantity.Key,
            Unit = unit.Text,
            UnitFactor = unit.Factor,
            Factor = (reversed ? -1 : 1) * scale * unit.Factor,
            Zero = zero?.Si(),
            Ratio = values.FindNumber($"{at}.ratio"),
            IsRolling = unit.IsRolling,
            Radius = values.FindNumber($"{at}.radius"),
            Noise = noise?.Si(),
            IsPixels = isPixels,
            PixelDoubt = pixel?.Quantity is { } length && length.SiDoubt() is { } half ? half / length.Si() : 0,
            At = WrittenPlace.Of(name.Place),
            UnitAt = WrittenPlace.Of((pixel ?? values.Find($"{at}.unit")!).Place),
            Path = at,
        };

        void Refuse(string path, bool applies, string found, string allowed)
        {
            if (!applies && values.Find(path) is { } bound)
            {
                findings.Error(bound.Place, path, found, allowed, "take it away");
            }
        }
    }

    private static ColumnUnit? Pixels(BoundValues values, string at, RecordedQuantity quantity, Findings findings)
    {
        Bound pixel = values.Find($"{at}.pixel")!;
        if (quantity.Kind != QuantityKind.Length)
        {
            findings.Error(pixel.Place, pixel.Path, $"rows of a picture at {quantity.Words}, which is {quantity.Kind.Name}", "pixels only for heights, gaps and travels", "write unit: in the place of pixel:");
            return null;
        }

        return new ColumnUnit($"pixels of {pixel.Quantity!.Numbers[0]:R} {pixel.Quantity.Unit.Text}", pixel.Quantity.Si(), QuantityKind.Length, false);
    }

    private static ColumnUnit? Measured(BoundValues values, string at, RecordedQuantity quantity, Findings findings)
    {
        if (values.Find($"{at}.unit") is not { } bound)
        {
            return null;
        }

        string text = bound.Text.Trim();
        if (Read(quantity.Kind, out string problem) is { } unit)
        {
            return new ColumnUnit(text, unit.Factor, quantity.Kind, false);
        }

        if (quantity.Rolls && Read(QuantityKind.Speed, out _) is { } speed)
        {
            return new ColumnUnit(text, speed.Factor, QuantityKind.Speed, true);
        }

        string also = quantity.Rolls ? $"; or a speed over the ground: {string.Join(", ", QuantityKind.Speed.Units)}" : "";
        findings.Error(bound.Place, bound.Path, problem, $"{quantity.Kind.Name} for {quantity.Words}: {string.Join(", ", quantity.Kind.Units)} or the like{also}", Mend(text, quantity.Kind));
        return null;

        Unit? Read(QuantityKind kind, out string found)
        {
            found = "";
            if (text.Length == 0 || !UnitReader.TryRead(text, kind.Dimension, out Unit read, out _))
            {
                found = $"{Shown.Quoted(text)}, which is not a known unit";
                return null;
            }

            found = $"{Shown.Quoted(text)}, the unit of {QuantityKind.NameOf(read.Dimension) ?? "something else"}";
            return read.Dimension == kind.Dimension ? read : null;
        }
    }

    private static string Mend(string text, QuantityKind kind) =>
        text is "V" or "mV" or "volt" or "volts" ? $"volts are not {kind.Name}: give scale: what one volt is, and unit: its unit"
        : UnitReader.TryRead(text.ToLowerInvariant(), kind.Dimension, out Unit small, out _) && small.Dimension == kind.Dimension ? $"did you mean `{text.ToLowerInvariant()}`?"
        : UnitSuggestion.For(text, text, kind) is { } near && near != text ? $"did you mean `{near}`?"
        : "write the unit in which the column's numbers are; a scale: beside it turns other numbers into it";

    private static Quantity? Written(Bound? bound, QuantityKind kind, Findings findings)
    {
        if (bound is null)
        {
            return null;
        }

        Quantity? quantity = QuantityReader.Read(QuantityText.Read(bound.Text), kind, out QuantityProblem? problem);
        if (problem is not null)
        {
            findings.Error(bound.Place, bound.Path, problem.Found, kind.Name, problem.Mend);
        }
        else if (quantity!.Count != 1)
        {
            findings.Error(bound.Place, bound.Path, $"{quantity.Count} numbers in {Shown.Quoted(bound.Text)}", $"one number: {kind.Name}", "keep one");
            return null;
        }
        else if (bound.Key.Name == "noise" && !(quantity.Si() > 0))
        {
            findings.Error(bound.Place, bound.Path, Shown.Quoted(bound.Text), "a noise above 0", "look at the number and its sign");
            return null;
        }

        return quantity;
    }

    private sealed record ColumnUnit(string Text, double Factor, QuantityKind Kind, bool IsRolling);
}
