using System.Text;
using CsCheck;

namespace LaunchSim.Scenarios.Tests.Reading;

/// <summary>Whatever is done to the example, reading it gives a scenario or errors with places in the file.</summary>
public class MutationTests
{
    private static readonly string[] Scraps =
    [
        "±", "%", ",", ":", ": ", "{", "}", "[", "]", "&a ", "*a", "!!x ", "-", "- ", "\t", "\n", "\r\n", "#", " #", "'", "\"", "|", ">", "---\n", "...\n", "?", "? ", "\u2028", "\u0085", "\ud800", "\0", "\ufeff",
        "1e400", "NaN", ".inf", "٣", "lb", "in", "/", "√(", "(", ")", "^", "base: x.yaml\n", "change:\n", "use", "holes", "null", "~", "@", "`", "%YAML 9\n", "<<: *a",
    ];

    private static readonly Gen<(int Kind, int At, int Length, int Scrap, int Other)> Edit =
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 100_000], Gen.Int[1, 40], Gen.Int[0, Scraps.Length - 1], Gen.Int[0, 100_000]);

    [Fact]
    public void ReadText_MutatedExample_NeverThrowsAndPlacesErrorsInTheFile() =>
        Edit.Array[1, 6].Sample(edits => Check(edits.Aggregate(Files.DoorCarText, Mutate)), iter: 1500);

    [Fact]
    public void ReadText_AnyText_NeverThrows() =>
        Gens.From(Scraps).Array[0, 20].Select(scraps => string.Concat(scraps)).Sample(Check, iter: 3000);

    [Fact]
    public void With_AnyPathAndValue_NeverThrows()
    {
        Scenario scenario = new ScenarioReader().Read(Files.DoorCar).Scenario!;
        string[] paths = [.. LaunchSim.Scenarios.Paths.ScenarioPath.Known.Keys.Select(path => path.Replace("[]", "[0]", StringComparison.Ordinal))];
        string[] tails = ["", ".ahead", ".up", ".use", ".holes.2", ".holes.2.up", ".clicks.6", ".clicks", "[0]", "[1]", "[-1]", "[", ".", "..", ".x"];
        Gen.Select(Gens.From(paths), Gens.From(tails), Gens.From(Scraps).Array[0, 4], Gens.From(["", "1", "2", "5 in", "1 2 in", "{", "[1]", "{holes: {1: 1 2 in}, use: 1}", "150 lb/in", "0 0"]))
            .Sample((path, tail, scraps, value) =>
            {
                ReadResult result = scenario.With([(path + tail, value + string.Concat(scraps))]);
                Assert.True(result.Scenario is null == result.Errors.Count > 0);
                _ = scenario.Find(path + tail);
                _ = scenario.FindText(path + tail);
                _ = scenario.PlaceOf(path + tail);
            }, iter: 3000);
    }

    private static void Check(string text)
    {
        foreach (ReadPurpose purpose in new[] { ReadPurpose.Run, ReadPurpose.Check })
        {
            ReadResult result = new ScenarioReader { Purpose = purpose }.ReadText(text, "x");
            Assert.True(result.Scenario is null == result.Errors.Count > 0);
            int lines = text.Split('\n', '\r', '\u2028', '\u2029', '\u0085').Length + 1;
            foreach (Diagnostic error in result.Errors.Concat(result.Warnings))
            {
                Assert.InRange(error.Line, 1, lines);
                Assert.InRange(error.Column, 1, text.Length + 2);
                Assert.NotEmpty(error.Message);
                Assert.DoesNotContain('\n', error.ToString());
            }

            _ = result.Scenario?.ContentHash;
            _ = result.Scenario?.Doubts;
            _ = result.Scenario?.Brackets;
            _ = result.Scenario?.Clicks;
        }
    }

    private static string Mutate(string text, (int Kind, int At, int Length, int Scrap, int Other) edit)
    {
        if (text.Length == 0)
        {
            return Scraps[edit.Scrap];
        }

        int at = edit.At % text.Length;
        int length = Math.Min(edit.Length, text.Length - at);
        int other = edit.Other % text.Length;
        return edit.Kind switch
        {
            0 => text.Remove(at, length),
            1 => text.Insert(at, Scraps[edit.Scrap]),
            2 => text.Remove(at, length).Insert(at, Scraps[edit.Scrap]),
            3 => text.Insert(other, text.Substring(at, length)),
            _ => new StringBuilder(text) { [at] = text[other] }.ToString(),
        };
    }
}
