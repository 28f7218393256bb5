using System.Text.RegularExpressions;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Studies.Tests.Doubting;

public partial class SentenceStatementsTests
{
    /// <summary>The keys as they are written in the source: braces stand for a part that is put together.</summary>
    private static readonly string[] Written =
    [
        .. Directory.EnumerateFiles(Path.Combine(Files.Root, "src", "LaunchSim.Reports", "Words"), "*.cs").Where(path => !path.EndsWith("SentenceStatements.cs", StringComparison.Ordinal))
            .SelectMany(path => Key().Matches(File.ReadAllText(path))).Select(match => match.Groups[1].Value).Distinct(),
    ];

    [Fact]
    public void All_KeysThatTheSourceSays_HaveAStatementAndNoOthers()
    {
        Regex[] patterns = [.. Written.Select(key => new Regex("^" + Part().Replace(Regex.Escape(key).Replace("\\{", "{", StringComparison.Ordinal), "[a-z_]*") + "$"))];

        Assert.True(Written.Length > 35);
        Assert.All(patterns, pattern => Assert.Contains(SentenceStatements.All, one => pattern.IsMatch(one.Key)));
        Assert.All(SentenceStatements.All, one => Assert.Contains(patterns, pattern => pattern.IsMatch(one.Key)));
    }

    [Fact]
    public void All_Statements_AreUniqueAndFitATable()
    {
        Assert.Equal(SentenceStatements.All.Count, SentenceStatements.All.Select(one => one.Key).Distinct().Count());
        Assert.Equal(SentenceStatements.All.Count, SentenceStatements.All.Select(one => one.Statement).Distinct().Count());
        Assert.All(SentenceStatements.All, one => Assert.InRange(one.Statement.Length, 10, 54));
    }

    [Fact]
    public void Of_EverySentenceOfEveryScenario_HasAStatement()
    {
        IEnumerable<string> files = Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Concat(Files.TestCars.Select(Files.Test));
        foreach (string file in files)
        {
            var run = LaunchOutcome.Of(Cars.Read(file), CancellationToken.None);
            foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
            {
                Assert.All(Summary.Of(run.Figures, new Readout(units)).Concat(Summary.Foremost(run, new Readout(units))), sentence => Assert.NotEmpty(SentenceStatements.Of(sentence.Key)));
            }
        }
    }

    [GeneratedRegex("\"((?:run|pitch|rise|gap|separation|hit|low|stop|spring|tire|wheelie_bar|grip|driveline|mark)\\.[a-z_]*(?:\\{[^}]*\\}[a-z_]*)*)\"")]
    private static partial Regex Key();

    [GeneratedRegex("\\{[^}]*\\}")]
    private static partial Regex Part();
}
