using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Tests.Schema;

/// <summary>The JSON Schema against an independent validator (JsonSchema.Net): it accepts what the reader accepts, and catches what an editor should.</summary>
public class JsonSchemaTests
{
    private static readonly JsonSchema Compiled = JsonSchema.FromText(ScenarioSchema.ToJsonText());

    public static TheoryData<string> Shipped => [.. Directory.GetFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(file => Path.GetFileName(file)!)];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void JsonSchema_ShippedScenario_Accepted(string name)
    {
        string text = File.ReadAllText(Path.Combine(Files.Root, "scenarios", name));
        Assert.True(Accepts(text));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void JsonSchema_ShippedScenario_IsFoundByItsFirstLine(string name)
    {
        // As an editor does it: the path is seen from the scenario's folder.
        string folder = Path.Combine(Files.Root, "scenarios");
        string first = File.ReadLines(Path.Combine(folder, name)).First();
        const string Comment = "# yaml-language-server: $schema=";
        Assert.StartsWith(Comment, first, StringComparison.Ordinal);
        Assert.Equal(ScenarioSchema.ToJsonText(), File.ReadAllText(Path.GetFullPath(Path.Combine(folder, first[Comment.Length..]))));
    }

    [Fact]
    public void JsonSchema_ItsOwnReferences_AllLeadSomewhere()
    {
        JsonObject schema = ScenarioSchema.ToJson();
        var references = new List<string>();
        Collect(schema);
        Assert.True(references.Count > 200);
        Assert.All(references, reference => Assert.NotNull(reference[2..].Split('/').Aggregate((JsonNode?)schema, (node, key) => node is JsonObject at ? at[key] : null)));

        void Collect(JsonNode? node)
        {
            foreach ((string key, JsonNode? value) in node as JsonObject ?? [])
            {
                if (key == "$ref" && value is JsonValue)
                {
                    references.Add(value.GetValue<string>());
                }

                Collect(value);
            }

            foreach (JsonNode? item in node as JsonArray ?? [])
            {
                Collect(item);
            }
        }
    }

    [Theory]
    [InlineData("name: v\nbase: door-car.yaml\n")]
    [InlineData("base: door-car.yaml\nchange:\n  rear.linkage.upper.body.use: 3\n  car.ride_height.rear: +0.5 in\n  car.ballast[0].mass: 30 lb\n  rear.damper.extension.clicks.6: 0 1 2 3 4 5 lb\n  rear.linkage.lower.body: 21 ±1 9 in\n  rear.linkage.lower.body.up: 9-5/8 in\n  rear.linkage.upper.body.holes.2.up: 14 in\n  track.grip: 0.9\n  rear.wheelie_bar: {wheel: -58 4 in, rate: 800 lb/in, damping: 8 lb·s/in}\n")]
    [InlineData("base: b.yaml\nchoices:\n  rear.spring.rate: {values: 130 150 lb/in, minutes: 40}\n  car.ballast[0].at.up: {values: 8 to 10 by 1 in, minutes: 2}\n")]
    public void JsonSchema_Variant_Accepted(string text) => Assert.True(Accepts(text));

    [Fact]
    public void JsonSchema_PartFile_Accepted() => Assert.True(Accepts(Samples.Part));

    [Theory]
    [InlineData(Samples.EngineClutch)]
    [InlineData(Samples.EngineConverter)]
    public void JsonSchema_OtherDrivelines_Accepted(string driveline) => Assert.True(Accepts(Samples.WithDriveline(driveline)));

    [Theory]
    [InlineData("105.5in")]
    [InlineData("2.68 m")]
    [InlineData("105-1/2 ±1/16 in")]
    [InlineData("105.5 +-1 in")]
    [InlineData("8 ft")]
    [InlineData("1.0e2 in")]
    public void JsonSchema_LegalLength_Accepted(string length)
    {
        string text = Files.DoorCarWith("wheelbase: 105.5 in", $"wheelbase: {length}");
        Assert.True(Accepts(text));
        Assert.Empty(new ScenarioReader().ReadText(text, "x").Errors);
    }

    [Theory]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 inn")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105,5 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbse: 105.5 in")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: [105.5 in]")]
    [InlineData("  wheelbase: 105.5 in\n", "")]
    [InlineData("type: four-link", "type: five-link")]
    [InlineData("type: four-link", "type: ladder-bar")]
    [InlineData("sliding_ratio: 0.65", "sliding_ratio: 1.2")]
    [InlineData("lower: {axle: 1.0 7.6 in", "lower: {axle: 1.0 in")]
    [InlineData("use: 2}", "uses: 2}")]
    [InlineData(", use: 2}", "}")]
    [InlineData("set: 6", "set: six")]
    [InlineData("minutes: 12", "minute: 12")]
    [InlineData("rear.spring.rate:", "rear.spring.rat:")]
    [InlineData("track: {grip: 1.0}", "track: {grip: 1.0 lb}")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 lb")]
    [InlineData("wheelbase: 105.5 in", "wheelbase: 105.5 ±1 lb/in")]
    [InlineData("front: 1560 lb", "front: 707 kg")]
    [InlineData("at: -25 18 in", "at: -25 18 lb")]
    [InlineData("0 40 70 130 190 280 lb", "0 40 70 130 190 280 lb/in ±5 %")]
    [InlineData("torque: 0 3900 4400 4800 4800 lb-ft", "torque: 0 3900 4400 4800 4800 lb")]
    [InlineData("torsional_rate: 14 kN·m/rad", "torsional_rate: 14 kN·m")]
    [InlineData("6: 0 35 60 105 155 225 lb", "6: 0 35 60 105 155 225 in")]
    [InlineData("type: axle-torque", "type: engine")]
    public void JsonSchema_WrongFile_Refused(string part, string replacement)
    {
        string text = Files.DoorCarWith(part, replacement);
        Assert.False(Accepts(text));
        Assert.NotEmpty(new ScenarioReader().ReadText(text, "x").Errors);
    }

    [Theory]
    [InlineData("base: b.yaml\ncar: {}\n")]
    [InlineData("change: {}\n")]
    [InlineData("base: b.yaml\nchange:\n  rear.spring.rat: 3 lb/in\n")]
    [InlineData("base: b.yaml\nchange:\n  rear.spring.rate: 3\n")]
    [InlineData("base: b.yaml\nchange:\n  car.ballast[x].mass: 3 lb\n")]
    [InlineData("base: b.yaml\nchange:\n  car.ballast: {mass: 40 lb, at: -25 18 in}\n")]
    [InlineData("base: b.yaml\nchange:\n  car.ballast[1]: {mass: 40 lb, at: -25 in}\n")]
    [InlineData("base: b.yaml\nchange:\n  rear.wheelie_bar: {wheel: -58 4 in, rat: 800 lb/in}\n")]
    [InlineData("base: b.yaml\nchange:\n  driveline.engine: {speed: 0 100 rpm, torque: 10 20 lb}\n")]
    [InlineData("base: b.yaml\nchange:\n  rear.linkage.lower.body.up: 9 lb\n")]
    public void JsonSchema_WrongVariant_Refused(string text) => Assert.False(Accepts(text));

    [Fact]
    public void JsonSchema_WhatTheReaderAccepts_IsAccepted()
    {
        (string Part, string Kind)[] places =
        [
            ("wheelbase: 105.5 in", "quantity"), ("cg_height: 21 in", "quantity"), ("grip: 2.3", "number"), ("axle: 2.5 17.0 in", "point"), ("2: 14.0 14.6 in", "point"),
            ("0 40 70 130 190 280 lb", "row"), ("rate: 150 lb/in\n    axle", "rate"), ("unsprung: 340 lb", "quantity"), ("front: 1560 lb", "quantity"), ("pinion_angle: 2 °", "quantity"), ("share: 0.9 1.0", "numbers"), ("at: -25 18 in", "point"), ("name: Door car, as measured", "text"), ("notes: >-", "notes"),
        ];
        string[] numbers = ["2", "+2", "2.", ".5", "5/8", "13-5/8", "2e0", "2.5E+0", "2 ±0.1", "2±1/16", "2 +- 0.1", "2 +/-1"];
        string[] units = ["in", " in", " inch", " ft", " mm", "\"", " m", " km", " thou", "  in ", " in*in/in", " in²/in", " in^2·in⁻¹", " √(in²)", " ft-lb/lbf", " (in)", " 1/in·in²", " sqrt(in^2)", " m·s/s", " %", "", " lb", " lb ±5 %", " lbf", " kg", " kgf", " N", " lb/in", " N/mm", " lb·in/in²", " in·lb/in²", " lb-in", " N/m/Pa", " kN/m·rad/rad", " °", " deg", " rad", " g", " oz", " rad·s/s"];
        int accepted = 0;
        Gen.Select(Gens.From(places), Gens.From(numbers), Gens.From(numbers), Gens.From(units), Gens.From([" ", ", ", "  ", ","])).Sample((place, one, two, unit, between) =>
        {
            string key = place.Part[..(place.Part.IndexOf(':', StringComparison.Ordinal) + 1)];
            string value = place.Kind switch
            {
                "quantity" => one + unit,
                "rate" => $"{one}{unit}\n    axle",
                "number" => one + unit,
                "point" => one + between + two + unit,
                "row" => "0 40 70 130" + between + "190 280" + unit,
                "numbers" => one + between + two + unit,
                _ => one,
            };
            string text = Files.DoorCarWith(place.Part, place.Kind == "row" ? value : $"{key} {value}");
            if (new ScenarioReader().ReadText(text, "x").Scenario is not null)
            {
                Interlocked.Increment(ref accepted);
                Assert.True(Accepts(text), $"{key} {value}");
            }
        }, iter: 800);
        Assert.InRange(accepted, 50, 800);
    }

    [Theory]
    [InlineData("notes:")]
    [InlineData("notes: 12")]
    [InlineData("notes: on")]
    public void JsonSchema_AnyNotes_Accepted(string notes)
    {
        string text = Samples.Part + "\n" + notes + "\n";
        Assert.True(Accepts(text));
        Assert.NotNull(new ScenarioReader { Purpose = ReadPurpose.Check }.ReadText(text, "x").Scenario);
    }

    [Fact]
    public void Examples_OfEveryKey_MatchTheirOwnSchema()
    {
        foreach (SchemaKey key in LaunchSim.Scenarios.Paths.ScenarioPath.Known.Values)
        {
            string? pattern = key.Kind switch
            {
                NumberKind number => number.Quantity == LaunchSim.Scenarios.Units.QuantityKind.Number ? Patterns.Bare : Patterns.Quantity,
                RowKind row => row.Quantity == LaunchSim.Scenarios.Units.QuantityKind.Number ? Patterns.BareRow : Patterns.Row,
                PointKind => Patterns.Point,
                _ => null,
            };
            if (pattern is not null)
            {
                Assert.Matches(pattern, key.Example);
            }
        }
    }

    internal static bool Accepts(string yaml) => EditorYaml.Documents(yaml).All(document => Compiled.Evaluate(document).IsValid);
}
