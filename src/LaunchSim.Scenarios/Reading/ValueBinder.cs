using System.Globalization;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>One value's text → number, row, point or word of its key, or errors.</summary>
internal sealed class ValueBinder(BoundValues values, Findings findings)
{
    public Bound? Bind(SchemaKey key, Node node, string path, string parent) => key.Kind switch
    {
        NumberKind number => Number(key, number.Quantity, number.Limits, node, path),
        RowKind row => Row(key, row, node, path, parent),
        PointKind point => Point(key, point.Holes, node, path),
        ClicksKind clicks => Clicks(key, clicks, node, path, parent),
        WordKind word => Word(key, word, node, path),
        TextKind => Text(key, node, path),
        MomentKind moment => Moment(key, moment, node, path),
        DateKind => Date(key, node, path),
        _ => throw new InvalidOperationException($"No binding for {key.Kind}."),
    };

    private Quantity? Read(SchemaKey key, QuantityKind kind, Node node, string path, string example)
    {
        if (node is not ScalarNode scalar)
        {
            string mend = node is ListNode ? $"write the numbers on one line, parted by spaces: {key.Name}: {example}" : $"write {key.Name}: {example}";
            findings.Error(node.Place, path, $"{Binder.Describe(node)} where {kind.Name} is due", Binder.Allowed(key), mend);
            return null;
        }

        Quantity? quantity = QuantityReader.Read(scalar.Quantity, kind, out QuantityProblem? problem);
        if (problem is not null)
        {
            findings.Error(scalar.PlaceOf(problem.At), path, problem.Found, Binder.Allowed(key), problem.Mend.Contains("as in", StringComparison.Ordinal) || problem.Mend.StartsWith("write the decimals", StringComparison.Ordinal) ? problem.Mend : $"{problem.Mend}, as in {key.Name}: {example}");
        }

        return quantity;
    }

    private bool InRange(Quantity quantity, Limits range, QuantityKind kind, ScalarNode node, string path)
    {
        for (int i = 0; i < quantity.Count; i++)
        {
            if (!range.Holds(quantity.Si(i)))
            {
                string number = quantity.Numbers[i].ToString("R", CultureInfo.InvariantCulture);
                string found = quantity.Count == 1 ? Shown.Quoted(node.Text) : $"`{number}` in {Shown.Quoted(node.Text)}";
                findings.Error(node.PlaceOf(node.Quantity.NumbersAt[i]), path, found, Binder.Words(kind, range), "look at the number and its sign");
                return false;
            }
        }

        return true;
    }

    private Bound? Number(SchemaKey key, QuantityKind kind, Limits range, Node node, string path)
    {
        Quantity? quantity = Read(key, kind, node, path, key.Example);
        var scalar = node as ScalarNode;
        if (quantity is null)
        {
            return null;
        }

        if (quantity.Count != 1)
        {
            findings.Error(scalar!.PlaceOf(scalar.Quantity.NumbersAt[1]), path, $"{quantity.Count} numbers in {Shown.Quoted(scalar.Text)}", $"one number: {Binder.Allowed(key)}", $"keep one, as in {key.Name}: {key.Example}");
            return null;
        }

        if (quantity.RowDoubtPercent is { } percent)
        {
            string half = (Math.Abs(quantity.Numbers[0]) * percent / 100).ToString("G6", CultureInfo.InvariantCulture);
            findings.Error(node.Place, path, $"a doubt in percent at one number, {Shown.Quoted(scalar!.Text)}", "± in the number's own unit; percent only for a row", $"write {quantity.Numbers[0].ToString("R", CultureInfo.InvariantCulture)} ±{half} {quantity.Unit.Text}".TrimEnd());
            return null;
        }

        return InRange(quantity, range, kind, scalar!, path) ? new Bound(path, key, node) { Quantity = quantity } : null;
    }

    private Bound? Row(SchemaKey key, RowKind row, Node node, string path, string parent)
    {
        Quantity? quantity = RowOf(key, row.Quantity, row.Limits, node, path, key.Example, row.Doubted);
        if (quantity is null)
        {
            return null;
        }

        var scalar = (ScalarNode)node;
        if (quantity.Count < row.Least)
        {
            findings.Error(node.Place, path, $"{quantity.Count} number in {Shown.Quoted(scalar.Text)}", $"at least {row.Least} numbers", $"as in {key.Name}: {key.Example}");
            return null;
        }

        for (int i = 1; row.Rising && i < quantity.Count; i++)
        {
            if (quantity.Si(i) <= quantity.Si(i - 1))
            {
                findings.Error(scalar.PlaceOf(scalar.Quantity.NumbersAt[i]), path, $"`{quantity.Numbers[i].ToString("R", CultureInfo.InvariantCulture)}` after `{quantity.Numbers[i - 1].ToString("R", CultureInfo.InvariantCulture)}` in {Shown.Quoted(scalar.Text)}", "numbers that rise from each to the next", "put them in rising order, each once");
                return null;
            }
        }

        return SameLength(quantity, row.Against, scalar, path, parent) ? new Bound(path, key, node) { Quantity = quantity } : null;
    }

    private Quantity? RowOf(SchemaKey key, QuantityKind kind, Limits range, Node node, string path, string example, bool doubted = false)
    {
        Quantity? quantity = Read(key, kind, node, path, example);
        if (quantity is null || node is not ScalarNode scalar || !InRange(quantity, range, kind, scalar, path))
        {
            return null;
        }

        // A single number of a list that holds only one is no table's number: it may have its own doubt.
        for (int i = 0; i < quantity.Count && !doubted; i++)
        {
            if (quantity.SiDoubt(i) is not null && quantity.Count > 1)
            {
                findings.Error(scalar.PlaceOf(scalar.Quantity.NumbersAt[i]), path, $"a ± at a number of a row, {Shown.Quoted(scalar.Text)}", "one doubt for the whole row, in percent, after the unit", $"as in {example} ±10 %");
                return null;
            }
        }

        return quantity;
    }

    private bool SameLength(Quantity quantity, string? against, ScalarNode scalar, string path, string parent)
    {
        if (against is null || values.Find($"{parent}.{against}") is not { Quantity: { } first } || first.Count == quantity.Count)
        {
            return true;
        }

        findings.Error(scalar.Place, path, $"{Count(quantity.Count)} in {Shown.Quoted(scalar.Text)}, and {first.Count} at `{against}`", "rows of one length", "give one number for each of the first row");
        return false;
    }

    private static string Count(int count) => count == 1 ? "1 number" : $"{count} numbers";

    private Bound? Clicks(SchemaKey key, ClicksKind clicks, Node node, string path, string parent)
    {
        const string Example = "0 35 60 105 155 225 lb";
        if (node is not MapNode map || map.Entries.Count == 0)
        {
            findings.Error(node.Place, path, $"{Binder.Describe(node)} where rows by click are due", "a row of forces for each click", $"write {key.Name}: {key.Example}");
            return null;
        }

        var rows = new SortedList<double, Bound>();
        bool good = true;
        foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
        {
            QuantityText click = entry.Key.Quantity;
            if (click.Problem is not null || click.Numbers.Length != 1 || click.UnitText.Length > 0 || !double.IsNaN(click.Doubts[0]) || click.RowPercent is not null)
            {
                bool brace = map.InBraces && entry.Value is ScalarNode { Text: "" };
                findings.Error(entry.Key.Place, path, brace ? $"{Shown.Quoted(entry.Key.Text)} without a value: a comma, or a missing space after the colon" : $"the click {Shown.Quoted(entry.Key.Text)}, which is not a number", "clicks as numbers", brace ? "part numbers by spaces, and put a space after each colon" : $"write {key.Name}: {key.Example}");
                good = false;
                continue;
            }

            string at = $"{path}.{entry.Key.Text.Trim()}";
            if (rows.ContainsKey(click.Numbers[0]))
            {
                findings.Error(entry.Key.Place, at, $"the click {Shown.Quoted(entry.Key.Text)} a second time", "each click once", "keep one");
                good = false;
            }
            else if (RowOf(key, clicks.Quantity, clicks.Limits, entry.Value, at, Example) is { } quantity && SameLength(quantity, clicks.Against, (ScalarNode)entry.Value, at, parent))
            {
                rows.Add(click.Numbers[0], new Bound(at, key, entry.Value) { Quantity = quantity });
            }
            else
            {
                good = false;
            }
        }

        return good ? new Bound(path, key, node) { Clicks = [.. rows] } : null;
    }

    private Bound? Point(SchemaKey key, bool holes, Node node, string path)
    {
        if (node is MapNode map && holes)
        {
            return Holes(key, map, path);
        }

        if (node is not PointNode parts)
        {
            return WholePoint(key, node, path);
        }

        if (WholePoint(key, parts.Whole, path) is not { } whole)
        {
            return null;
        }

        Quantity? ahead = parts.Ahead is null ? OnePart(whole.Quantity!, 0) : PartOf(key, parts.Ahead, path + ".ahead", Limits.Any);
        Quantity? up = parts.Up is null ? OnePart(whole.Quantity!, 1) : PartOf(key, parts.Up, path + ".up", Limits.NotNegative);
        return ahead is null || up is null ? null : new Bound(path, key, node) { Quantity = ahead, Up = up };
    }

    private Quantity? PartOf(SchemaKey key, ScalarNode node, string path, Limits range) =>
        Number(new SchemaKey(path[(path.LastIndexOf('.') + 1)..], new NumberKind(QuantityKind.Length, range), Need.Optional, key.What, key.Measure, "21 in", null), QuantityKind.Length, range, node, path)?.Quantity;

    private static Quantity OnePart(Quantity whole, int index) =>
        new([whole.Numbers[index]], [whole.SiDoubt(index) is { } doubt ? doubt / whole.Unit.Factor : double.NaN], whole.Unit, null);

    private Bound? WholePoint(SchemaKey key, Node node, string path)
    {
        Quantity? quantity = Read(key, QuantityKind.Length, node, path, key.Example);
        if (quantity is null)
        {
            return null;
        }

        var scalar = (ScalarNode)node;
        if (quantity.Count != 2 || quantity.RowDoubtPercent is not null)
        {
            string found = quantity.RowDoubtPercent is null ? $"{Count(quantity.Count)} in {Shown.Quoted(scalar.Text)}" : $"a doubt in percent at a point, {Shown.Quoted(scalar.Text)}";
            findings.Error(node.Place, path, found, "a point: how far ahead of the axle centreline, how far above the floor, then one unit; ± in that unit", $"as in {key.Name}: {key.Example}");
            return null;
        }

        if (quantity.Si(1) < 0)
        {
            findings.Error(scalar.PlaceOf(scalar.Quantity.NumbersAt[1]), path, $"a point below the floor, {Shown.Quoted(scalar.Text)}", "a height above the floor, 0 or more", "write ahead first, then up");
            return null;
        }

        return new Bound(path, key, node) { Quantity = quantity };
    }

    private Bound? Holes(SchemaKey key, MapNode map, string path)
    {
        const string Shape = "{holes: {NAME: point, …}, use: NAME}";
        bool good = true;
        foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
        {
            if (entry.Key.Text is not ("holes" or "use"))
            {
                bool brace = map.InBraces && entry.Value is ScalarNode { Text: "" };
                string found = brace ? $"{Shown.Quoted(entry.Key.Text)} without a value: a comma, or a missing space after the colon" : $"the unknown key {Shown.Quoted(entry.Key.Text)}";
                findings.Error(entry.Key.Place, path, found, Shape, Nearest.To(entry.Key.Text, ["holes", "use"]) is { } near ? $"did you mean `{near}`?" : $"a point is written {key.Example}");
                good = false;
            }
        }

        if (map.Get("holes") is not MapNode { Entries.Count: > 0 } holes)
        {
            findings.Error((map.Get("holes") ?? map).Place, path, "a bracket without holes", Shape, $"as in {{holes: {{1: {key.Example}}}, use: 1}}");
            return null;
        }

        var points = new List<KeyValuePair<string, Bound>>();
        foreach (KeyValuePair<ScalarNode, Node> entry in holes.Entries)
        {
            string name = entry.Key.Text.Trim();
            Node value = entry.Value;
            if (value is ScalarNode { Text: "" } && holes.InBraces)
            {
                findings.Error(entry.Key.Place, path, $"{Shown.Quoted(name)} without a value: a comma, or a missing space after the colon", "`NAME: point, NAME: point`", "part numbers by spaces, and put a space after each colon");
                good = false;
            }
            else if (name.Length == 0 || name.Any(char.IsWhiteSpace))
            {
                findings.Error(entry.Key.Place, path, $"the hole's name {Shown.Quoted(name)}", "one word or number", "write the name without spaces");
                good = false;
            }
            else if (points.Exists(other => other.Key == name))
            {
                findings.Error(entry.Key.Place, path, $"the hole {Shown.Quoted(name)} a second time", "each hole once", "keep one");
                good = false;
            }
            else if (Point(key, false, value, $"{path}.holes.{name}") is { } point)
            {
                points.Add(new(name, point));
            }
            else
            {
                good = false;
            }
        }

        string names = string.Join(", ", holes.Entries.Select(entry => entry.Key.Text));
        if (map.Get("use") is not ScalarNode { Text.Length: > 0 } use)
        {
            findings.Error((map.Get("use") ?? map).Place, path + ".use", "no `use`", $"one of the holes: {names}", "say which hole is in use");
            return null;
        }

        if (!holes.Entries.Any(entry => entry.Key.Text.Trim() == use.Text.Trim()))
        {
            string mend = Nearest.To(use.Text, holes.Entries.Select(entry => entry.Key.Text)) is { } near ? $"did you mean `{near}`?" : "name one of them";
            findings.Error(use.Place, path + ".use", $"the hole {Shown.Quoted(use.Text)}, which the bracket does not have", names, mend);
            return null;
        }

        return good ? new Bound(path, key, map) { Holes = points, Use = use.Text.Trim() } : null;
    }

    private Bound? Word(SchemaKey key, WordKind word, Node node, string path)
    {
        if (node is ScalarNode scalar && word.Words.Contains(scalar.Text.Trim()))
        {
            return new Bound(path, key, node) { Text = scalar.Text.Trim() };
        }

        string near = node is ScalarNode text && Nearest.To(text.Text.Trim(), word.Words) is { } nearest ? $"did you mean `{nearest}`?" : $"write {key.Name}: {word.Words[0]}";
        findings.Error(node.Place, path, $"{Binder.Describe(node)}, which is none of the words", Binder.Allowed(key), near);
        return null;
    }

    private Bound? Moment(SchemaKey key, MomentKind kind, Node node, string path)
    {
        if (node is not ScalarNode scalar)
        {
            findings.Error(node.Place, path, $"{Binder.Describe(node)} where a time or a frame is due", Binder.Allowed(key), $"write {key.Name}: {key.Example}");
            return null;
        }

        if (MomentText.Read(scalar, kind.Never, out QuantityProblem? problem) is { } moment)
        {
            return new Bound(path, key, node) { Moment = moment };
        }

        findings.Error(scalar.PlaceOf(problem!.At), path, problem.Found, Binder.Allowed(key), problem.Mend);
        return null;
    }

    private Bound? Date(SchemaKey key, Node node, string path)
    {
        if (node is ScalarNode scalar && DateText.TryRead(scalar.Text, out _))
        {
            return new Bound(path, key, node) { Text = scalar.Text.Trim() };
        }

        findings.Error(node.Place, path, $"{Binder.Describe(node)} where a day is due", Binder.Allowed(key), $"year, month and day with hyphens, as in {key.Name}: {key.Example}");
        return null;
    }

    private Bound? Text(SchemaKey key, Node node, string path)
    {
        if (node is ScalarNode scalar)
        {
            return new Bound(path, key, node) { Text = scalar.Text };
        }

        findings.Error(node.Place, path, $"{Binder.Describe(node)} where a text is due", "plain text", $"write {key.Name}: {key.Example}; put it in quotes if it begins with a bracket");
        return null;
    }
}
