using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Schema;

/// <summary>
/// The files that come out of the schema are committed. After a change of a key, run the tests once with
/// LAUNCHSIM_WRITE_GENERATED=1 and commit what they wrote.
/// </summary>
public class GeneratedFilesTests
{
    [Fact]
    public void JsonSchema_Committed_EqualsTheGenerated() =>
        Same(Path.Combine(Files.Root, "docs", "scenario.schema.json"), ScenarioSchema.ToJsonText());

    [Fact]
    public void Reference_Committed_EqualsTheGenerated() =>
        Same(Path.Combine(Files.Root, "docs", "scenario.md"), ScenarioSchema.ToReference());

    [Fact]
    public void PassSchema_Committed_EqualsTheGenerated() =>
        Same(Path.Combine(Files.Root, "docs", "pass.schema.json"), ScenarioSchema.PassToJsonText());

    [Fact]
    public void PassReference_Committed_EqualsTheGenerated() =>
        Same(Path.Combine(Files.Root, "docs", "pass-file.md"), ScenarioSchema.PassToReference());

    [Fact]
    public void TypicalValues_Committed_EqualTheRegister()
    {
        Scenario door = new ScenarioReader().Read(Files.DoorCar).Scenario!, clutch = new ScenarioReader().Read(Path.Combine(Files.Root, "scenarios", "clutch-car.yaml")).Scenario!;
        var known = new Dictionary<string, Quantity>();
        foreach (string path in TypicalRegister.All.OfType<MeasuredValue>().Select(entry => entry.Path).Concat(["car.cg_height", "rear.tire.pressure.measured"]))
        {
            if ((path.StartsWith("driveline.", StringComparison.Ordinal) ? clutch : door).Find(path) is { } quantity)
            {
                known.Add(path, quantity);
            }
        }

        Same(Path.Combine(Files.Root, "docs", "typical-values.md"), TypicalPage.Write(new KnownCar(known)));
    }

    private static void Same(string path, string generated)
    {
        if (Environment.GetEnvironmentVariable("LAUNCHSIM_WRITE_GENERATED") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, generated);
        }

        Assert.Equal(generated, File.ReadAllText(path));
    }
}
