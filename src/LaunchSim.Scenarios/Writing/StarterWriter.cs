using System.Text;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Writing;

/// <summary>
/// Walks the schema and writes every key: with its value, or switched off by a # right before it. A new key of the schema
/// shows up here without a change.
/// </summary>
internal sealed class StarterWriter(StarterCar car, KnownCar known)
{
    private const int WrapAt = 100;
    private const string Choices = """
        # What you can change at the track, how far, and how many minutes it takes: studies propose nothing else.
        #choices:
        #  rear.tire.pressure.set: {values: 14 to 18 by 0.5 psi, minutes: 2}
        #  rear.spring.rate: {values: 130 150 175 lb/in, minutes: 40}
        """;

    // What most cars begin with, though it may be left out.
    private static readonly Dictionary<string, (string Shop, string Si)> Usual = new(StringComparer.Ordinal)
    {
        ["car.ride_height.front"] = ("0 in", "0 mm"),
        ["car.ride_height.rear"] = ("0 in", "0 mm"),
        ["track.grip"] = ("1.0", "1.0"),
        ["run.marks"] = ("60 ft", "60 ft"),
        ["run.rollout"] = ("12 in", "300 mm"),
    };

    private static readonly string[] UsualSections = ["car.aero", "car.ride_height", "front.tire.pressure", "rear.tire.pressure", "track", "run"];

    private readonly StringBuilder _text = new();
    private string _said = "";
    private readonly List<string> _typical = [];
    private readonly Dictionary<string, string> _entered = Last(car.Entered);

    /// <summary>The paths that were filled with typical values so far.</summary>
    public IReadOnlyList<string> Typical => _typical;

    public string Write()
    {
        Comment(0, "A scenario to begin with. A value with `# typical` behind it was not measured: the number is what cars like this one "
            + "usually have, its ± how far off that may be, and the lines above it say how to get it. Measure, write the number in, make its ± smaller, run again.");
        Comment(0, "A line with # right before its key is switched off; take the # away to use it. Points are: ahead of the rear axle's "
            + "centreline, then up from the floor, car at ride height on a level floor, driver aboard, tyres at launch pressure.");
        Comment(0, "A launch can hurt people: the rules of your class, rated parts and qualified people come first.");
        _ = _text.Append('\n');
        Keys(ScenarioKeys.Whole, 0);
        return _text.ToString();
    }

    private static Dictionary<string, string> Last(IReadOnlyList<(string Path, string Value)> entered)
    {
        var last = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((string path, string value) in entered)
        {
            last[path] = value;
        }

        return last;
    }

    private void Keys(Section section, int indent)
    {
        Form? form = Chosen(section);
        SchemaKey? selector = section.Keys.FirstOrDefault(key => key.Name == section.Selector);

        // The word that chooses a form stands first and the form's keys follow it; without one the form adds to what is always there.
        IEnumerable<SchemaKey> all = selector is null ? section.Keys : [selector];
        IEnumerable<SchemaKey> rest = selector is null ? [] : section.Keys.Where(key => key != selector);
        foreach (SchemaKey key in all)
        {
            Key(key, indent);
        }

        if (form is not null)
        {
            Keys(form.Section, indent);
        }

        foreach (SchemaKey key in rest)
        {
            Key(key, indent);
        }
    }

    private Form? Chosen(Section section)
    {
        if (section.Forms.Count == 0)
        {
            return null;
        }

        if (section.Selector is { } selector)
        {
            string word = car.Words.First(pair => pair.Path == $"{section.Path}.{selector}").Value;
            return section.Forms.First(form => form.Name == word);
        }

        // A form of which something was entered, else the one that was asked for, else the first.
        return section.Forms.FirstOrDefault(form => form.Section.All().Any(key => key.Kind is not SectionKind && IsEntered(key.Path)))
            ?? section.Forms.FirstOrDefault(form => form.Name == (car.Driveline == StarterDriveline.Clutch ? "clutch" : "converter"))
            ?? section.Forms[0];
    }

    private void Key(SchemaKey key, int indent)
    {
        switch (key.Kind)
        {
            case ChoicesKind:
                _ = _text.Append('\n').Append(Choices).Append('\n');
                break;
            case TextKind when key.Path == "name":
                Line(indent, $"name: '{car.Name.Replace("'", "''", StringComparison.Ordinal)}'");
                break;
            case TextKind:
                Line(indent, $"#{key.Name}: {key.Example}");
                break;
            case WordKind:
                if (car.Words.FirstOrDefault(pair => pair.Path == key.Path).Value is { } word)
                {
                    Comment(indent, $"{key.What}: {string.Join(", or ", ((WordKind)key.Kind).Words)}.");
                    Line(indent, $"{key.Name}: {word}");
                }

                break;
            case SectionKind part when Holds(key):
                Heading(key, indent);
                Line(indent, $"{key.Name}:");
                Keys(part.Section, indent + 2);
                break;
            case SectionKind or ListKind:
                Heading(key, indent);
                Off(key, indent, 0);
                break;
            default:
                Value(key, indent);
                break;
        }
    }

    private void Heading(SchemaKey key, int indent)
    {
        // Right below its parent's line a section needs no room.
        if (!Ends(":\n"))
        {
            _ = _text.Append('\n');
        }

        Comment(indent, key.Need == Need.Optional ? $"{key.What}. May be left out: {key.LeftOut}." : $"{key.What}.");
    }

    private bool Holds(SchemaKey section) => section.Need != Need.Optional || UsualSections.Contains(section.Path)
        || _entered.Keys.Any(path => path.StartsWith(section.Path + ".", StringComparison.Ordinal));

    private bool IsEntered(string path) => _entered.ContainsKey(path);

    private void Value(SchemaKey key, int indent)
    {
        RegisterEntry? entry = TypicalRegister.Find(key.Path);
        TypicalEstimate? typical = IsEntered(key.Path) ? null : (entry as TypicalValue)?.For(known);
        string how = entry?.HomeTest is { } test ? $"{test.How} ({test.Takes})" : key.Measure.Length > 0 ? key.Measure + "." : "";
        Comment(indent, $"{key.What}.{(key.LeftOut is { } leftOut ? $" Left out: {leftOut}." : "")}");
        if (how.Length > 0)
        {
            Comment(indent, how == _said ? "How: as above." : $"How: {how}");
        }

        _said = how;

        if (_entered.TryGetValue(key.Path, out string? value))
        {
            Line(indent, $"{key.Name}: {value}");
        }
        else if (Usual.TryGetValue(key.Path, out (string Shop, string Si) usual))
        {
            Line(indent, $"{key.Name}: {(car.Units == UnitSystem.Shop ? usual.Shop : usual.Si)}");
        }
        else if (typical is not null && (key.Need != Need.Optional || key.Path.StartsWith("driveline.", StringComparison.Ordinal)))
        {
            _typical.Add(key.Path);
            Comment(indent, $"Typical: {typical.Entry.Formula} ({typical.Entry.Source}).");

            // The first row of a table is where it is read, not what was measured: it has no doubt.
            bool isFirstRow = key.Kind is RowKind { Rising: true };
            Line(indent, $"{key.Name}: {typical.Text(car.Units, !isFirstRow)}  # typical");
        }
        else
        {
            Line(indent, $"#{key.Name}: {ExampleText.Of(key, car.Units)}");
        }
    }

    /// <summary>A part that is not on the car: each key on one line, all of them switched off.</summary>
    private void Off(SchemaKey key, int indent, int depth)
    {
        string blank = new(' ', 2 * depth);
        if (key.Kind is ListKind list)
        {
            Line(indent, $"#{blank}{key.Name}:");
            Line(indent, $"#{blank}  - {{{string.Join(", ", list.Item.Keys.Select(item => $"{item.Name}: {ExampleText.Of(item, car.Units)}"))}}}");
            foreach (SchemaKey item in list.Item.Keys)
            {
                Comment(indent, $"  {item.Name}: {item.What}. How: {item.Measure}.");
            }

            return;
        }

        if (key.Kind is not SectionKind { Section: var section })
        {
            string estimate = (TypicalRegister.Find(key.Path) as TypicalValue)?.For(known)?.Text(car.Units, key.Kind is not RowKind { Rising: true }) ?? ExampleText.Of(key, car.Units);
            Line(indent, $"#{blank}{key.Name}: {estimate}  # {key.What}. How: {key.Measure}.");
            return;
        }

        Line(indent, $"#{blank}{key.Name}:");
        foreach (SchemaKey inner in section.Keys.Concat(section.Forms.Take(1).SelectMany(form => form.Section.Keys)))
        {
            Off(inner, indent, depth + 1);
        }
    }

    private void Comment(int indent, string text)
    {
        string blank = new(' ', indent);
        var line = new StringBuilder();
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && indent + 2 + line.Length + 1 + word.Length > WrapAt)
            {
                _ = _text.Append(blank).Append("# ").Append(line).Append('\n');
                _ = line.Clear();
            }

            _ = line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        _ = _text.Append(blank).Append("# ").Append(line).Append('\n');
    }

    private bool Ends(string text) => _text.Length >= text.Length && _text.ToString(_text.Length - text.Length, text.Length) == text;

    private void Line(int indent, string line) => _text.Append(' ', indent).Append(line).Append('\n');
}
