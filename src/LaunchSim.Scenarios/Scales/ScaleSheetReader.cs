using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Scales;

/// <summary>Reads scale sheets: a file, or one lift from options. Whatever they hold comes back as a sheet or as errors.</summary>
public static class ScaleSheetReader
{
    // The tape is laid along the floor: a wheel centre this far up and the other down is no lift any more.
    private const double SteepestSine = 0.9;

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    public static ScaleSheetResult Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        string? text = ScenarioText.Read(Path.GetFullPath(path), path, new Place(path, 1, 1), findings);
        return Of(text is null ? null : NodeReader.Read(text, path, findings), path, findings);
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The sheet.</param>
    /// <param name="displayName">What errors are to call it.</param>
    public static ScaleSheetResult ReadText(string text, string displayName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(displayName);
        var findings = new Findings();
        return Of(ScenarioText.Accept(text, displayName, findings) ? NodeReader.Read(text, displayName, findings) : null, displayName, findings);
    }

    /// <summary>Reads one lift out of options; errors name the option.</summary>
    /// <param name="values">For each option its name, the key of the sheet that it stands for (a key of a lift after <c>lifts.</c>), and what was written.</param>
    public static ScaleSheetResult ReadOptions(IEnumerable<(string Option, string Key, string Value)> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var findings = new Findings();
        var nowhere = new Place("scales", 0, 0);
        var root = new MapNode(nowhere, [], false);
        var lift = new MapNode(nowhere, [], false);
        foreach ((string option, string key, string value) in values)
        {
            string shown = Shown.Plain($"{option} {value}");
            var place = new Place(shown.Length > 120 ? shown[..120] + "…" : shown, 0, 0);
            if (!ScenarioText.Accept(value, place.Origin, findings))
            {
                continue;
            }

            string[] parts = key.Split('.');
            var leaf = new ScalarNode(place, value.Trim(), -1);
            if (parts[0] == "lifts")
            {
                lift = lift.With(new ScalarNode(place, parts[1], -1), leaf);
            }
            else if (parts.Length == 1)
            {
                root = root.With(new ScalarNode(place, key, -1), leaf);
            }
            else
            {
                var part = root.Get(parts[0]) as MapNode ?? new MapNode(nowhere, [], false);
                root = root.With(new ScalarNode(place, parts[0], -1), part.With(new ScalarNode(place, parts[1], -1), leaf));
            }
        }

        root = root.With(new ScalarNode(nowhere, "lifts", -1), new ListNode(nowhere, [lift]));
        return Of(root, "", findings);
    }

    private static ScaleSheetResult Of(Node? node, string file, Findings findings)
    {
        if (node is null)
        {
            return new ScaleSheetResult(null, findings.Errors());
        }

        if (node is not MapNode root)
        {
            findings.Error(node.Place, "", $"{Binder.Describe(node)} where a scale sheet is due", "`key: value` lines: wheelbase, loaded_radius, level, lifts", "begin from the one in docs/commands.md");
            return new ScaleSheetResult(null, findings.Errors());
        }

        BoundValues values = Binder.Bind(ScaleKeys.Sheet, root, findings);
        foreach (Bound bound in values.All.Where(bound => bound.Quantity?.SiDoubt() == 0))
        {
            findings.Error(bound.Place, bound.Path, $"a doubt of nothing, {Shown.Quoted(((ScalarNode)bound.Node).Text)}", "how far off it may be, above 0; or no ±", "a scale is good to a pound or two, a tape to a sixteenth");
        }

        if (values.CountOf("lifts") == 0 && values.HasSection("level") && root.Get("lifts") is ListNode list)
        {
            findings.Error(list.Place, "lifts", "no lift", "one or more", $"write - {{raised: rear, height: 36 in, load: 1590 lb}}");
        }

        ScaleSheet? sheet = findings.HasErrors ? null : Build(values, file);
        if (sheet is not null)
        {
            Check(sheet, values, findings);
        }

        return findings.HasErrors ? new ScaleSheetResult(null, findings.Errors()) : new ScaleSheetResult(sheet, []);
    }

    private static ScaleSheet Build(BoundValues values, string file) => new()
    {
        Name = values.Find("name")?.Text is { } name && OnOneLine(name) is { Length: > 0 } own ? own : file.Length > 0 ? Path.GetFileNameWithoutExtension(file) : "one lift",
        SourceFile = file,
        UnitSystem = ScenarioParts.UnitSystem(values),
        Wheelbase = Reading(values, "wheelbase")!,
        FrontRadius = Reading(values, "loaded_radius.front")!,
        RearRadius = Reading(values, "loaded_radius.rear")!,
        FrontTrack = Reading(values, "track.front"),
        RearTrack = Reading(values, "track.rear"),
        Front = Load(values, "level.front", "level.front_left", "level.front_right"),
        Rear = Load(values, "level.rear", "level.rear_left", "level.rear_right"),
        Lifts =
        [
            .. Enumerable.Range(0, values.CountOf("lifts")).Select(i => $"lifts[{i}]").Select(at => new ScaleLift(
                values.Word(at + ".raised") == "front",
                Reading(values, at + ".height")!,
                Reading(values, at + ".standing_height"),
                Load(values, at + ".load", at + ".left", at + ".right"),
                Reading(values, at + ".raised_load"))),
        ],
    };

    private static void Check(ScaleSheet sheet, BoundValues values, Findings findings)
    {
        double rise = sheet.FrontRadius.Value - sheet.RearRadius.Value;
        double centres = Math.Sqrt((sheet.Wheelbase.Value * sheet.Wheelbase.Value) + (rise * rise));
        for (int i = 0; i < sheet.Lifts.Count; i++)
        {
            ScaleLift lift = sheet.Lifts[i];
            string at = $"lifts[{i}]";
            (ScaleReading raised, ScaleReading standing) = lift.RaisesFront ? (sheet.FrontRadius, sheet.RearRadius) : (sheet.RearRadius, sheet.FrontRadius);
            Place height = values.Find(at + ".height")!.Place;
            if (lift.Height.Value <= raised.Value)
            {
                findings.Error(height, at + ".height", $"`{lift.Height.Text}`, no higher than on the level ({raised.Text})", "the height of the raised wheel centres above the level on which the other axle's tyres stand", "to the middle of the hub, not by how much it was lifted");
            }
            else if (lift.Height.Value - (lift.StandingHeight ?? standing).Value >= SteepestSine * centres)
            {
                findings.Error(height, at + ".height", $"`{lift.Height.Text}`, nearly as high as the wheelbase is long", "a lift", "look at the unit");
            }

            if (lift.Load.Total >= sheet.Weight)
            {
                Place load = (values.Find(at + ".load") ?? values.Find(at + ".left"))!.Place;
                findings.Error(load, at, $"`{string.Join("` and `", lift.Load.Pads.Select(pad => pad.Text))}`, all of the car's weight on one axle", "less than the four tyres together on the level", "look at which axle stayed on the scales");
            }
        }
    }

    private static AxleLoad Load(BoundValues values, string whole, string left, string right) =>
        Reading(values, whole) is { } both ? new AxleLoad([both]) : new AxleLoad([Reading(values, left)!, Reading(values, right)!]);

    private static ScaleReading? Reading(BoundValues values, string path)
    {
        if (values.Find(path) is not { Quantity: { } quantity } bound)
        {
            return null;
        }

        string place = bound.Place.Line == 0 ? bound.Place.Origin : FormattableString.Invariant($"{bound.Place.Origin}:{bound.Place.Line}:{bound.Place.Column}");
        return new ScaleReading(quantity.Si(), quantity.SiDoubt(), place, quantity.ToString());
    }

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
