namespace LaunchSim.Scenarios.Tests.Schema;

/// <summary>
/// The files that come out of the schema are committed. After a change of a key, run the tests once with
/// LAUNCHSIM_WRITE_GENERATED=1 and commit what they wrote.
/// </summary>
public class GeneratedFilesTests
{
    [Fact]
    public void JsonSchema_Committed_EqualsTheGenerated() =>
        Same(Path.Combine(Files.Root, "scenarios", "scenario.schema.json"), ScenarioSchema.ToJsonText());

    [Fact]
    public void Reference_Committed_EqualsTheGenerated() =>
        Same(Path.Combine(Files.Root, "docs", "scenario.md"), ScenarioSchema.ToReference());

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
