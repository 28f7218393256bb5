using System.Text.RegularExpressions;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Reports.Tests.Words;

/// <summary>A key names a kind of sentence, over many launches and in either system of units.</summary>
public partial class SentenceKeyTests
{
    private static readonly (string Path, string Value)[][] Variations =
    [
        [],
        [("driveline.torque", "0 0 0 0 0 lb-ft")],
        [("driveline.torque", "0 -3900 -4400 -4800 -4800 lb-ft")],
        [("rear.tire.grip", "1.2")],
        [("rear.tire.grip", "3.5"), ("car.cg_height", "40 in")],
        [("rear.damper.travel.extend", "0.5 in")],
        [("rear.damper.extension.set", "0")],
        [("rear.linkage.upper.body.use", "3")],
        [("front.spring.rate", "60 lb/in")],
        [("run.duration", "0.2 s")],
        [("rear.linkage.upper.body.use", "1"), ("run.marks", "30 60 ft")],
    ];

    private static IEnumerable<Sentence> All()
    {
        ScenarioReader reader = StandingCheck.Reader(ReadPurpose.Run);
        IEnumerable<ReadResult> read = Variations.Select(set => reader.Read(Files.DoorCar, set))
            .Concat(Files.TestCars.Select(name => reader.Read(Files.Test(name))))
            .Concat(Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(path => reader.Read(path)));
        foreach (Scenario scenario in read.Select(result => result.Scenario).OfType<Scenario>())
        {
            LaunchOutcome launch = LaunchOutcome.Of(scenario, CancellationToken.None);
            foreach (UnitSystem system in Enum.GetValues<UnitSystem>())
            {
                foreach (Sentence sentence in Summary.Of(launch.Figures, new Readout(system)))
                {
                    yield return sentence;
                }
            }
        }
    }

    [Fact]
    public void Sentences_OfManyLaunches_BeginAlikeWhereTheirKeysAreAlike()
    {
        IGrouping<string, Sentence>[] kinds = [.. All().GroupBy(sentence => sentence.Key)];
        Assert.True(kinds.Length > 25, $"only {kinds.Length} kinds");
        foreach (IGrouping<string, Sentence> kind in kinds)
        {
            Assert.Matches(@"^[a-z_]+\.[a-z_]+$", kind.Key);
            Assert.Single(kind.Select(sentence => Opening(sentence.Text)).Distinct());
        }

        // And no two kinds that cannot be told apart: what makes another key makes another sentence.
        foreach (IGrouping<string, string> alike in kinds.GroupBy(kind => Shape(kind.First().Text), kind => kind.Key))
        {
            Assert.Single(alike);
        }
    }

    // Who does what: the first three words after the place of a mark.
    private static string Opening(string text) => string.Join(' ', Place().Replace(Shape(text), "").Split(' ')[..3]);

    private static string Shape(string text) => Numbers().Replace(text, "#");

    [GeneratedRegex(@"^# \w+ ")]
    private static partial Regex Place();

    [GeneratedRegex(@"-?\d+([.,/]\d+)*")]
    private static partial Regex Numbers();
}
