using System.Globalization;
using CsCheck;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Scenarios.Tests.Writing;

public class VariantTextTests
{
    private static readonly string Shipped = Path.Combine(Files.Root, "scenarios");
    private static readonly ScenarioReader Reader = StandingCheck.Reader(ReadPurpose.Run);

    private static readonly Scenario[] All =
        [.. Directory.EnumerateFiles(Shipped, "*.yaml").Order(StringComparer.Ordinal).Select(path => Reader.Read(path).Scenario!)];

    // Everything that YAML gives a meaning to, and what other scripts bring.
    private static readonly Gen<string> Names = Gen.OneOf(
        Gen.OneOf("Stiffer", "a: b", "a #b", "#a", "'", "''", "\"", "it's", "- x", "-x", "?", "? x", ": x", "x:", "[a]", "{a: b}", "&a", "*a", "!a", "|", ">", "%", "@", "`", "---", "--- a", "...", "null", "~", "yes", "1", "1:30", ".nan", "a\tb", "a\nb\r\nc", " a ", "\\", "\\n", "ü°±", "名前", "😀", "a\u2028b", "a\ufeffb", "\u200eleft", "a\u00a0b"),
        Gen.Char[" :#'\"-?[]{}&*!|>%@`\\abc,~.\n\t\u2029\ufeffé"].Array[1, 12].Select(chars => new string(chars)));

    [Fact]
    public void Text_OfAnyShippedScenarioWithRandomEdits_ReadsBackAsTheSameCar()
    {
        Gen.Select(Gen.Int[0, All.Length - 1], Gen.Int[0, int.MaxValue], Names, Names).Sample((which, seed, name, notes) =>
        {
            Scenario scenario = All[which];
            (string Path, string Value)[] written = [.. RandomEdits(scenario, new Random(seed))];
            EditResult read = EditReader.Read(scenario, written);
            Assert.Empty(read.Errors);
            if (scenario.With(read.Edits).Scenario is not { } edited)
            {
                // Not every number may be moved by itself.
                return;
            }

            string text = VariantText.Of(name, notes, Path.GetFileName(scenario.SourceFile), edited, read.Edits);
            ReadResult back = Reader.ReadText(text, "variant.yaml", folder: Shipped);
            Assert.True(back.Scenario is not null, $"{string.Join('\n', back.Errors)}\n{text}");
            Assert.Equal(edited.ContentHash, back.Scenario!.ContentHash);
            Assert.Equal(OnOneLine(name).Length > 0 ? OnOneLine(name) : scenario.Name, back.Scenario.Name);
            Assert.Equal(OnOneLine(notes).Length > 0 ? OnOneLine(notes) : scenario.Notes, back.Scenario.Notes);
            Assert.Equal(edited.Doubts.OrderBy(doubt => doubt.Key, StringComparer.Ordinal).Select(doubt => doubt.Key), back.Scenario.Doubts.OrderBy(doubt => doubt.Key, StringComparer.Ordinal).Select(doubt => doubt.Key));
            foreach ((string path, Doubt doubt) in edited.Doubts)
            {
                Assert.Equal(doubt.HalfWidth, back.Scenario.Doubts[path].HalfWidth, 1e-12 * doubt.HalfWidth);
            }

            Assert.Equal(scenario.Choices.Select(choice => choice.Path), back.Scenario.Choices.Select(choice => choice.Path));
        }, iter: 600);
    }

    [Fact]
    public void Text_WithoutNotes_SaysNothingOfThem()
    {
        string text = VariantText.Of("A", " ", "door-car.yaml", [("rear.spring.rate", "160 lb/in")]);
        Assert.Equal("name: A\nbase: door-car.yaml\nchange:\n  rear.spring.rate: 160 lb/in\n", text);
    }

    [Theory]
    [InlineData("a: b.yaml")]
    [InlineData("#1.yaml")]
    [InlineData("it's.yaml")]
    [InlineData("- x.yaml")]
    public void Text_OfABaseWithAnOddName_FindsIt(string name)
    {
        using var folder = new Folder();
        folder.Write(name, Files.DoorCarText);
        string text = VariantText.Of("A", "", name, [("rear.spring.rate", "160 lb/in")]);
        Assert.NotNull(Reader.ReadText(text, "a.yaml", folder: folder.At).Scenario);
    }

    /// <summary>Some numbers moved by a few percent, and other holes. A row, be it of one number, is no single value.</summary>
    private static IEnumerable<(string, string)> RandomEdits(Scenario scenario, Random dice)
    {
        string[] paths = [.. scenario.Written.Select(value => value.Path).Where(path => !path.StartsWith("run.", StringComparison.Ordinal) && scenario.Find(path) is { Count: 1 } && !path.Contains(".clicks.", StringComparison.Ordinal) && path != "driveline.gears.shift_at")];
        for (int i = dice.Next(1, 5); i > 0; i--)
        {
            string path = paths[dice.Next(paths.Length)];
            double moved = scenario.Find(path)!.Numbers[0] * (0.97 + (0.06 * dice.NextDouble()));
            yield return (path, $"{moved.ToString(dice.Next(2) == 0 ? "R" : "0.###", CultureInfo.InvariantCulture)} {scenario.Find(path)!.Unit.Text}".Trim());
        }

        foreach ((string path, Bracket bracket) in scenario.Brackets)
        {
            yield return (path + ".use", bracket.Holes[dice.Next(bracket.Holes.Count)].Key);
        }
    }

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
