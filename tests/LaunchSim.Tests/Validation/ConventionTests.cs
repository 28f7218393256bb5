using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using LaunchSim.Launch;

namespace LaunchSim.Tests.Validation;

/// <summary>House rules that the compiler does not keep.</summary>
public partial class ConventionTests
{
    private static readonly Assembly Library = typeof(StandingCar).Assembly;

    // Said in other words ("1 over the final drive"), or a value whose unit is its definition's.
    private static readonly HashSet<string> WithoutUnit =
    [
        "IDriveline.PerFinalDrive", "AxleTorqueDriveline.PerFinalDrive", "EngineLine`1.PerFinalDrive",
        "Extremum.Value", "Figure.Value", "FigureSet.Item", "LaunchEvent.Amount",
    ];

    [Fact]
    public void PublicNumbers_InTheirDocumentation_NameTheirUnitOrSayThatTheyHaveNone()
    {
        Dictionary<string, string> documented = XDocument.Load(Path.ChangeExtension(Library.Location, ".xml")).Descendants("member")
            .ToDictionary(member => member.Attribute("name")!.Value, member => member.ToString());
        var silent = new List<string>();
        foreach (Type type in Library.GetExportedTypes().Where(type => !type.IsEnum))
        {
            const BindingFlags own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
            string name = type.FullName!.Replace('+', '.');
            IEnumerable<string> members = type.GetProperties(own).Where(p => IsNumber(p.PropertyType)).Select(p => $"P:{name}.{p.Name}")
                .Concat(type.GetFields(own).Where(f => IsNumber(f.FieldType)).Select(f => $"F:{name}.{f.Name}"));
            foreach (string member in members.Where(member => !WithoutUnit.Any(name => member.EndsWith('.' + name, StringComparison.Ordinal))))
            {
                // A positional record's property is documented as the record's parameter.
                string text = documented.TryGetValue(member, out string? own1)
                    ? own1
                    : Parameter(documented.GetValueOrDefault($"T:{name}", ""), member[(member.LastIndexOf('.') + 1)..]);
                if (!Unit().IsMatch(text) && !None().IsMatch(text))
                {
                    silent.Add($"{member}: {Regex.Replace(text, "<[^>]+>|\\s+", " ").Trim()}");
                }
            }
        }

        Assert.True(silent.Count == 0, string.Join(Environment.NewLine, silent));
    }

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?);

    private static string Parameter(string type, string name) =>
        type.Length == 0 ? "" : XElement.Parse(type).Elements("param").FirstOrDefault(p => p.Attribute("name")?.Value == name)?.ToString() ?? "";

    [GeneratedRegex(@"(?<![\p{L}·/])(m|kg|s|N|Pa|J|W|rad|m/s|m/s²|rad/s|rad/s²|N/m|N·m|N·s/m|kg·m²|kg/m³|kg/m|m²|m/rad|m/rad²|1/rad|rad/s² per N·m|N/m per Pa|per Pa|N·m/rad|N·m·s/rad|%)(?![\p{L}·²³/])|[Pp]ercent")]
    private static partial Regex Unit();

    [GeneratedRegex("[Rr]atio|[Cc]osine|[Ss]ine|factor|Factor|grip|Grip|per unit load|share|[Ee]fficiency|coefficient|multiplier|over (its |axle )?peak|without unit|unit vector|[Ll]oad sensitivity|[Ss]lope|derivative|[Dd]irection|Guard|guard|Gear")]
    private static partial Regex None();
}
