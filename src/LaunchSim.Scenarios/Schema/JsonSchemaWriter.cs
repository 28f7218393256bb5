using System.Text.Json.Nodes;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Schema;

/// <summary>
/// Keys → JSON Schema (draft 2020-12). What only a run needs is not required by it, since a file that describes the side
/// view alone is a scenario too.
/// </summary>
internal static class JsonSchemaWriter
{
    private const string OtherThan = "other_than_";
    private const string RowOf = "row_of_";

    /// <summary>The schema of scenarios.</summary>
    public static JsonObject Write() => WithKinds(Whole());

    /// <summary>The schema of pass files.</summary>
    public static JsonObject WritePass()
    {
        JsonObject schema = Object(PassKeys.Pass);
        schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
        schema["title"] = "LaunchSim pass";
        schema["description"] = "One pass of a car: how it was set, and what was seen and logged.";
        var definitions = (JsonObject)Whole()["$defs"]!.DeepClone();
        definitions["moment"] = Texts(false, Patterns.Moment(true));
        definitions["happened"] = Texts(false, Patterns.Moment(false));
        definitions["day"] = Texts(false, Patterns.Day);
        definitions["doubtedRow"] = Texts(false, Patterns.DoubtedRow);
        schema["$defs"] = definitions;
        return WithKinds(schema);
    }

    private static JsonObject WithKinds(JsonObject schema)
    {
        var definitions = (JsonObject)schema["$defs"]!;
        foreach (QuantityKind kind in QuantityKind.All.Where(kind => kind != QuantityKind.Number && kind != QuantityKind.Frequency))
        {
            definitions[OtherThan + Name(kind)] = new JsonObject { ["pattern"] = Patterns.OtherThan(kind) };
            definitions[Name(kind)] = Of(kind, "quantity", "One number");
            definitions[RowOf + Name(kind)] = Of(kind, "row", "Numbers");
        }

        return schema;
    }

    private static JsonObject Of(QuantityKind kind, string notation, string what) => new()
    {
        ["description"] = $"{what}, {kind.Name}: {string.Join(", ", kind.Units)} or the like.",
        ["allOf"] = new JsonArray(Ref(notation), new JsonObject { ["not"] = Ref(OtherThan + Name(kind)) }),
    };

    private static string Name(QuantityKind kind) => kind.Name[(kind.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..].Replace(' ', '_').Replace("'", "", StringComparison.Ordinal);

    private static JsonObject Whole() => new()
    {
        ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
        ["title"] = "LaunchSim scenario",
        ["description"] = "One set-up and one launch of a rear-drive car, or a variant of another scenario.",
        ["if"] = new JsonObject { ["anyOf"] = new JsonArray(Required("base"), Required("change")) },
        ["then"] = Ref("variant"),
        ["else"] = Ref("whole"),
        ["$defs"] = new JsonObject
        {
            ["whole"] = Object(ScenarioKeys.Whole),
            ["variant"] = Object(ScenarioKeys.Variant),
            ["change"] = Change(),
            ["choices"] = Choices(),
            ["choice"] = new JsonObject
            {
                ["type"] = "object",
                ["description"] = "What may be chosen, and how long the change takes in minutes.",
                ["properties"] = new JsonObject
                {
                    ["values"] = new JsonObject { ["type"] = new JsonArray("string", "number"), ["examples"] = new JsonArray("all", "0 to 12 by 1", "130 150 175 lb/in") },
                    ["minutes"] = Ref("number"),
                },
                ["required"] = new JsonArray("values", "minutes"),
                ["additionalProperties"] = false,
            },
            ["number"] = Texts(true, Patterns.Bare),
            ["numbers"] = Texts(true, Patterns.BareRow),
            ["quantity"] = Texts(false, Patterns.Quantity),
            ["row"] = Texts(false, Patterns.Row),
            ["point"] = new JsonObject { ["allOf"] = new JsonArray(Texts(false, Patterns.Point), new JsonObject { ["not"] = Ref(OtherThan + Name(QuantityKind.Length)) }) },
            ["word"] = new JsonObject { ["type"] = new JsonArray("string", "number"), ["minLength"] = 1 },
            ["pointOrHoles"] = new JsonObject
            {
                ["if"] = new JsonObject { ["type"] = "object" },
                ["then"] = new JsonObject
                {
                    ["properties"] = new JsonObject
                    {
                        ["holes"] = new JsonObject
                        {
                            ["type"] = "object",
                            ["description"] = "The bracket's holes by name.",
                            ["minProperties"] = 1,
                            ["propertyNames"] = new JsonObject { ["pattern"] = @"^\S+$" },
                            ["additionalProperties"] = Ref("point"),
                        },
                        ["use"] = new JsonObject { ["$ref"] = "#/$defs/word", ["description"] = "The hole in use." },
                    },
                    ["required"] = new JsonArray("holes", "use"),
                    ["additionalProperties"] = false,
                },
                ["else"] = Ref("point"),
            },
        },
    };

    private static JsonObject Object(Section section)
    {
        var properties = new JsonObject();
        foreach (IGrouping<string, SchemaKey> same in section.All().GroupBy(key => key.Name))
        {
            SchemaKey[] keys = [.. same];
            properties[same.Key] = keys.Length == 1 ? Described(keys[0]) : new JsonObject { ["anyOf"] = new JsonArray([.. keys.Select(Described)]) };
        }

        if (section.Path == "track" && properties["grip"]!["anyOf"] is JsonArray grips)
        {
            // The table may also stand in the place of the number (see TrackTable).
            grips.Add(new JsonObject
            {
                ["type"] = "object",
                ["properties"] = new JsonObject { ["distance"] = Ref(RowOf + Name(QuantityKind.Length)), ["grip"] = Ref("numbers") },
                ["required"] = new JsonArray("distance", "grip"),
                ["additionalProperties"] = false,
            });
        }

        var schema = new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        string[] required = [.. section.Keys.Where(key => key.Need == Need.Geometry).Select(key => key.Name)];
        if (required.Length > 0)
        {
            schema["required"] = Strings(required);
        }

        JsonArray forms = Forms(section);
        if (forms.Count > 0)
        {
            schema["allOf"] = forms;
        }

        return schema;
    }

    private static JsonArray Forms(Section section)
    {
        var all = new JsonArray();
        if (section.Selector is { } selector)
        {
            foreach (Form form in section.Forms)
            {
                HashSet<string> own = [.. form.Section.All().Select(key => key.Name)];
                var others = new JsonObject();
                foreach (string name in section.Forms.SelectMany(other => other.Section.All()).Select(key => key.Name).Distinct().Where(name => !own.Contains(name)))
                {
                    others[name] = false;
                }

                var then = new JsonObject { ["properties"] = others };
                string[] required = [.. form.Section.Keys.Where(key => key.Need == Need.Geometry).Select(key => key.Name)];
                if (required.Length > 0)
                {
                    then["required"] = Strings(required);
                }

                all.Add(new JsonObject
                {
                    ["if"] = new JsonObject { ["properties"] = new JsonObject { [selector] = new JsonObject { ["const"] = form.Name } }, ["required"] = new JsonArray(selector) },
                    ["then"] = then,
                });
            }
        }
        else
        {
            for (int i = 0; i < section.Forms.Count; i++)
            {
                for (int j = i + 1; j < section.Forms.Count; j++)
                {
                    foreach (string one in section.Forms[i].Markers)
                    {
                        foreach (string other in section.Forms[j].Markers)
                        {
                            all.Add(new JsonObject { ["not"] = new JsonObject { ["required"] = new JsonArray(one, other) } });
                        }
                    }
                }
            }
        }

        foreach (Form form in section.Forms)
        {
            foreach (JsonNode inner in Forms(form.Section).OfType<JsonNode>())
            {
                all.Add(inner.DeepClone());
            }
        }

        return all;
    }

    private static JsonObject Described(SchemaKey key)
    {
        JsonObject schema = Value(key.Kind);
        if (key is { Kind: TextKind, Need: Need.Optional })
        {
            schema["type"] = new JsonArray("string", "number", "boolean", "null");
        }

        schema["description"] = $"{key.What}.{(key.Measure.Length > 0 ? $" How to get it: {key.Measure}." : "")}{(key.LeftOut is { } leftOut ? $" Left out: {leftOut}." : "")}";
        if (key.Example.Length > 0 && key.Kind is NumberKind or RowKind or PointKind or TextKind)
        {
            schema["examples"] = new JsonArray(key.Example);
        }

        return schema;
    }

    private static JsonObject Value(KeyKind kind) => kind switch
    {
        NumberKind { Quantity: var quantity, Limits: var limits } => quantity == QuantityKind.Number ? Limited(Ref("number"), limits) : Ref(Name(quantity)),
        RowKind { Doubted: true } row => new JsonObject { ["allOf"] = new JsonArray(Ref("doubtedRow"), new JsonObject { ["not"] = Ref(OtherThan + Name(row.Quantity)) }) },
        RowKind row => Row(row.Quantity),
        MomentKind moment => Ref(moment.Never ? "moment" : "happened"),
        DateKind => Ref("day"),
        PointKind point => Ref(point.Holes ? "pointOrHoles" : "point"),
        ClicksKind clicks => new JsonObject
        {
            ["type"] = "object",
            ["minProperties"] = 1,
            ["patternProperties"] = new JsonObject { [Patterns.Click] = Row(clicks.Quantity) },
            ["additionalProperties"] = false,
        },
        TextKind => new JsonObject { ["type"] = new JsonArray("string", "number", "boolean") },
        WordKind word => new JsonObject { ["enum"] = Strings(word.Words) },
        SectionKind section => Object(section.Section),
        ListKind list => new JsonObject { ["type"] = "array", ["items"] = Object(list.Item) },
        ChangeKind => Ref("change"),
        ChoicesKind => Ref("choices"),
        _ => throw new InvalidOperationException($"No schema for {kind}."),
    };

    private static JsonObject Row(QuantityKind kind) => Ref(kind == QuantityKind.Number ? "numbers" : RowOf + Name(kind));

    private static JsonObject Limited(JsonObject schema, Limits limits)
    {
        if (double.IsFinite(limits.Least))
        {
            schema[limits.LeastOpen ? "exclusiveMinimum" : "minimum"] = limits.Least;
        }

        if (double.IsFinite(limits.Most))
        {
            schema[limits.MostOpen ? "exclusiveMaximum" : "maximum"] = limits.Most;
        }

        return schema;
    }

    private static JsonObject Change()
    {
        var properties = new JsonObject();
        var patterns = new JsonObject();
        foreach ((string path, SchemaKey key) in ScenarioPath.Known)
        {
            JsonObject whole = key.Kind switch
            {
                SectionKind or ListKind => Within(path),
                _ => path == "track.grip" ? Ref("numbers") : Value(key.Kind),
            };
            Put(path, "", whole);
            if (key.Kind is PointKind point)
            {
                Put(path, ".ahead", Ref(Name(QuantityKind.Length)));
                Put(path, ".up", Ref(Name(QuantityKind.Length)));
                if (point.Holes)
                {
                    Put(path, ".use", Ref("word"));
                    patterns[Exactly(path, @"\.holes\.\S+")] = new JsonObject { ["anyOf"] = new JsonArray(Ref("point"), Ref(Name(QuantityKind.Length))) };
                }
            }
            else if (key.Kind is ClicksKind clicks)
            {
                patterns[Exactly(path, @"\.\S+")] = Row(clicks.Quantity);
            }
        }

        JsonObject change = Paths(properties, patterns);
        change["type"] = new JsonArray("object", "null");
        return change;

        void Put(string path, string tail, JsonObject schema)
        {
            if (path.Contains("[]", StringComparison.Ordinal))
            {
                patterns[Exactly(path, tail.Replace(".", @"\.", StringComparison.Ordinal))] = schema;
            }
            else
            {
                properties[path + tail] = schema;
            }
        }
    }

    /// <summary>The schema of a section or a list as it is within a whole file.</summary>
    private static JsonObject Within(string path) => Ref("whole/properties/" + path.Replace("[]", "/items", StringComparison.Ordinal).Replace(".", "/properties/", StringComparison.Ordinal));

    private static JsonObject Choices()
    {
        var properties = new JsonObject();
        var patterns = new JsonObject();
        foreach ((string path, SchemaKey key) in ScenarioPath.Known)
        {
            string[] tails = key.Kind switch
            {
                NumberKind or WordKind => [""],
                PointKind { Holes: true } => [".use", ".ahead", ".up"],
                PointKind => [".ahead", ".up"],
                _ => [],
            };
            foreach (string tail in tails)
            {
                if (path.Contains("[]", StringComparison.Ordinal))
                {
                    patterns[Exactly(path, tail.Replace(".", @"\.", StringComparison.Ordinal))] = Ref("choice");
                }
                else
                {
                    properties[path + tail] = Ref("choice");
                }
            }

            if (key.Kind is PointKind { Holes: true })
            {
                patterns[Exactly(path, @"\.holes\.\S+\.(ahead|up)")] = Ref("choice");
            }
        }

        return Paths(properties, patterns);
    }

    private static JsonObject Paths(JsonObject properties, JsonObject patterns) => new()
    {
        ["type"] = "object",
        ["properties"] = properties,
        ["patternProperties"] = patterns,
        ["additionalProperties"] = false,
    };

    private static string Exactly(string path, string tail) =>
        $"^{path.Replace(".", @"\.", StringComparison.Ordinal).Replace("[]", @"\[\d+\]", StringComparison.Ordinal)}{tail}$";

    private static JsonObject Texts(bool bare, string pattern) => new()
    {
        ["type"] = bare ? new JsonArray("string", "number") : "string",
        ["pattern"] = pattern,
    };

    private static JsonObject Required(string name) => new() { ["required"] = new JsonArray(name) };

    private static JsonObject Ref(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonArray Strings(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)text)]);
}
