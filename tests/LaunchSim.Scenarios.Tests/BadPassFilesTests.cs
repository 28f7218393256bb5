using System.Globalization;
using System.Text.RegularExpressions;
using Json.Schema;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Tests.Schema;
using YamlDotNet.Core;

namespace LaunchSim.Scenarios.Tests;

/// <summary>The corpus of wrong pass files in the folder BadPasses, held like that of wrong scenarios.</summary>
public sealed partial class BadPassFilesTests
{
    private static readonly JsonSchema Published = JsonSchema.FromText(File.ReadAllText(Path.Combine(Files.Root, "docs", "pass.schema.json")));
    private static readonly string Folder = Path.Combine(Files.Root, "tests", "LaunchSim.Scenarios.Tests", "BadPasses");

    public static TheoryData<string> All => [.. Directory.GetFiles(Folder).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(All))]
    public void BadPass_ReadByTheProgram_IsRefusedWhereItIsWrong(string name)
    {
        (string path, string[] places, _) = Announced(name);
        PassResult result = new PassReader(StandingCheck.Reader(ReadPurpose.Run)).Read(path);

        Assert.Null(result.Pass);
        Assert.Equal(places.Select(place => $"{path}:{place}"), result.Errors.Select(error => string.Create(CultureInfo.InvariantCulture, $"{error.File}:{error.Line}:{error.Column}")));
        Assert.All(result.Errors, error => Assert.NotEmpty(error.Allowed + error.Mend));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void BadPass_HeldAgainstThePublishedSchema_IsRefusedUnlessOnlyTheProgramCanKnow(string name)
    {
        (string path, _, bool bySchema) = Announced(name);
        Assert.Equal(bySchema, !IsAccepted(File.ReadAllText(path)));
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

    private static (string Path, string[] Places, bool BySchema) Announced(string name)
    {
        string path = Path.Combine(Folder, name);
        string first = File.ReadLines(path).First();
        Match match = FirstLine().Match(first);
        Assert.True(match.Success, $"{name} begins with `{first}`; allowed: # Wrong at LINE:COLUMN, for the schema too: WHAT. (or, for the program only)");
        return (path, match.Groups[1].Value.Split(" and "), match.Groups[2].Value == "schema too");
    }

    [GeneratedRegex(@"^# Wrong at (\d+:\d+(?: and \d+:\d+)*), for the (schema too|program only): .+\.$")]
    private static partial Regex FirstLine();
}
