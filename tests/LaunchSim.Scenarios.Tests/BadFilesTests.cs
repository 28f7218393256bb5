using System.Globalization;
using System.Text.RegularExpressions;
using Json.Schema;
using LaunchSim.Scenarios.Tests.Schema;
using YamlDotNet.Core;

namespace LaunchSim.Scenarios.Tests;

/// <summary>
/// A corpus of wrong files in the folder Bad, each with one mistake. The first line says what is wrong, where the program has to
/// say so, and whether the JSON Schema has to refuse it too or only the program can know. A new mistake is one new file.
/// </summary>
public sealed partial class BadFilesTests
{
    private static readonly JsonSchema Published = JsonSchema.FromText(File.ReadAllText(Path.Combine(Files.Root, "docs", "scenario.schema.json")));
    private static readonly string Folder = Path.Combine(Files.Root, "tests", "LaunchSim.Scenarios.Tests", "Bad");

    public static TheoryData<string> All => [.. Names];

    private static IEnumerable<string> Names => Directory.GetFiles(Folder).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal);

    [Theory]
    [MemberData(nameof(All))]
    public void BadFile_ReadByTheProgram_IsRefusedWhereItIsWrong(string name)
    {
        Announced announced = Announced.Of(name);
        ReadResult result = StandingCheck.Reader(ReadPurpose.Check).Read(announced.Path);

        Assert.Null(result.Scenario);
        Assert.Equal(announced.Places.Select(place => $"{announced.Path}:{place}"), result.Errors.Select(error => string.Create(CultureInfo.InvariantCulture, $"{error.File}:{error.Line}:{error.Column}")));
        Assert.All(result.Errors, error => Assert.NotEmpty(error.Allowed + error.Mend));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void BadFile_HeldAgainstThePublishedSchema_IsRefusedUnlessOnlyTheProgramCanKnow(string name)
    {
        Announced announced = Announced.Of(name);
        Assert.Equal(announced.BySchema, !IsAccepted(File.ReadAllText(announced.Path)));
    }

    [Fact]
    public void BadFiles_OfBothKinds_AreThere()
    {
        Announced[] all = [.. Names.Select(Announced.Of)];
        Assert.Contains(all, one => one.BySchema);
        Assert.Contains(all, one => !one.BySchema);
    }

    private static bool IsAccepted(string text)
    {
        try
        {
            return EditorYaml.Documents(text).All(document => Published.Evaluate(document).IsValid);
        }
        catch (YamlException)
        {
            return false;
        }
    }

    private sealed partial record Announced(string Path, string[] Places, bool BySchema)
    {
        public static Announced Of(string name)
        {
            string path = System.IO.Path.Combine(Folder, name);
            string first = File.ReadLines(path).First();
            Match match = FirstLine().Match(first);
            Assert.True(match.Success, $"{name} begins with `{first}`; allowed: # Wrong at LINE:COLUMN, for the schema too: WHAT. (or, for the program only)");
            return new(path, match.Groups[1].Value.Split(" and "), match.Groups[2].Value == "schema too");
        }

        [GeneratedRegex(@"^# Wrong at (\d+:\d+(?: and \d+:\d+)*), for the (schema too|program only): .+\.$")]
        private static partial Regex FirstLine();
    }
}
