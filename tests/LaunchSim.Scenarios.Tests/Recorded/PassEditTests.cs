using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Scenarios.Tests.Recorded;

public class PassEditTests
{
    private const string Text = """
        # Typed on the return road
        car: ../door-car.yaml   # as it was in May
        track: left lane, sprayed
        changed:
          rear.spring.rate: 175 lb/in  # the new ones
          rear.tire.pressure.set: 15 psi

        # By the video
        seen:
          rear_moves: frame 131   # by the tape
          marks: 60 ft
        logs:
          - {file: a.csv, mapping: l.yaml}
          - file: b.csv
        corrections:
        notes: >-
          Two lines
          of them.
        # The end

        """;

    private const string Braces = "{car: a.yaml, seen: {rear_moves: 0.1 s, shake: none}, logs: [], corrections: [{path: track}]}\n";

    [Theory]
    [InlineData("track", "right lane", "track: left lane, sprayed\n", "track: right lane\n")]
    [InlineData("seen.rear_moves", "frame 133", "frame 131   #", "frame 133   #")]
    [InlineData("changed.rear.spring.rate", "200 lb/in", "175 lb/in  #", "200 lb/in  #")]
    [InlineData("changed.rear.linkage.upper.body.use", "3", "set: 15 psi\n", "set: 15 psi\n  rear.linkage.upper.body.use: 3\n")]
    [InlineData("seen.shake", "light", "marks: 60 ft\n", "marks: 60 ft\n  shake: light\n")]
    [InlineData("weather", "cold: 5 °C", "  of them.\n", "  of them.\nweather: 'cold: 5 °C'\n")]
    [InlineData("logs[1].file", "c.csv", "b.csv", "c.csv")]
    [InlineData("logs[0].file", "a, b.csv", "{file: a.csv,", "{file: 'a, b.csv',")]
    [InlineData("logs[1].mapping", "l.yaml", "file: b.csv\n", "file: b.csv\n    mapping: l.yaml\n")]
    [InlineData("notes", "One line.", "notes: >-\n  Two lines\n  of them.\n", "notes: One line.\n")]
    [InlineData("changed.rear.damper.extension", "{speed: 0 1 in/s, force: 0 10 lb}", "set: 15 psi\n", "set: 15 psi\n  rear.damper.extension: {speed: 0 1 in/s, force: 0 10 lb}\n")]
    [InlineData("seen.rear_moves", null, "  rear_moves: frame 131   # by the tape\n", "")]
    [InlineData("track", null, "track: left lane, sprayed\n", "")]
    [InlineData("weather", null, "", "")]
    public void Set_ValueInLines_ChangesItAndNothingElse(string path, string? value, string before, string after)
    {
        foreach (string end in new[] { "\n", "\r\n" })
        {
            string With(string text) => text.Replace("\n", end, StringComparison.Ordinal);
            string expected = before.Length == 0 ? Text : Text.Replace(before, after, StringComparison.Ordinal);
            Assert.True(before.Length == 0 || Text != expected);

            Assert.Equal(With(expected), PassEdit.Set(With(Text), path, value));
        }
    }

    [Theory]
    [InlineData("seen.rear_moves", "frame 5", "{rear_moves: frame 5, shake: none}")]
    [InlineData("seen.rear_open", "0.2 s", "{rear_moves: 0.1 s, shake: none, rear_open: 0.2 s}")]
    [InlineData("seen.shake", null, "{rear_moves: 0.1 s}")]
    [InlineData("seen.rear_moves", null, "{shake: none}")]
    public void Set_ValueInBraces_ChangesItAndNothingElse(string path, string? value, string seen) =>
        Assert.Equal(Braces.Replace("{rear_moves: 0.1 s, shake: none}", seen, StringComparison.Ordinal), PassEdit.Set(Braces, path, value));

    [Fact]
    public void Set_SectionThatIsNotThere_BeginsIt()
    {
        Assert.Equal("car: a.yaml\nseen:\n  shake: light\n", PassEdit.Set("car: a.yaml", "seen.shake", "light"));
        Assert.Equal("{car: a.yaml, seen: {shake: light}}", PassEdit.Set("{car: a.yaml}", "seen.shake", "light"));
        Assert.Equal("car: a.yaml\ntrack: left\nseen:\n  shake: light\n", PassEdit.Set("car: a.yaml\nseen:\ntrack: left\n", "seen.shake", "light"));
        Assert.Equal("car: a.yaml\ntrack: left # lane\n", PassEdit.Set("car: a.yaml\ntrack: # lane\n", "track", "left"));
        Assert.Null(PassEdit.Set("car: a.yaml\n", "logs[0].file", "b.csv"));
    }

    [Fact]
    public void Find_WhatIsWritten_ComesOnOneLine()
    {
        Assert.Equal("frame 131", PassEdit.Find(Text, "seen.rear_moves"));
        Assert.Equal("175 lb/in", PassEdit.Find(Text, "changed.rear.spring.rate"));
        Assert.Equal("b.csv", PassEdit.Find(Text, "logs[1].file"));
        Assert.Equal("Two lines of them.", PassEdit.Find(Text, "notes"));
        Assert.Null(PassEdit.Find(Text, "seen.shake"));
        Assert.Null(PassEdit.Find(Text, "corrections"));
    }

    [Fact]
    public void Correct_OneAfterTheOther_StandsBehindTheOthers()
    {
        var one = new PassCorrection("2026-09-14", "track", "left, wet", "right", "The other lane: seen on video");
        var two = new PassCorrection("2026-09-15", "seen.shake", null, "light", "Seen");

        string first = PassEdit.Correct(Text, one)!, second = PassEdit.Correct(first, two)!;

        Assert.Equal(
            Text.Replace("corrections:\n", "corrections:\n  - {when: 2026-09-14, path: track, was: 'left, wet', is: right, why: 'The other lane: seen on video'}\n  - {when: 2026-09-15, path: seen.shake, is: light, why: Seen}\n", StringComparison.Ordinal),
            second);
        Assert.Equal("car: a.yaml\ncorrections:\n  - {when: 2026-09-15, path: seen.shake, is: light, why: Seen}\n", PassEdit.Correct("car: a.yaml\n", two));
        Assert.EndsWith("[{path: track}, {when: 2026-09-15, path: seen.shake, is: light, why: Seen}]}\n", PassEdit.Correct(Braces, two), StringComparison.Ordinal);
        Assert.Equal("car: a.yaml\ncorrections:\n    -   path: track\n        why: W\n    - {when: 2026-09-15, path: seen.shake, is: light, why: Seen}\n# End\n", PassEdit.Correct("car: a.yaml\ncorrections:\n    -   path: track\n        why: W\n# End\n", two));
    }

    [Fact]
    public void PassText_OfADraft_ReadsBackAndKnowsItsLines()
    {
        PassText text = PassText.Of(new PassDraft
        {
            Name = "Third: one hole down",
            When = "2026-09-12 14:10",
            Car = "../car.yaml",
            CarHash = "0123456789abcdef",
            Changed = [("rear.spring.rate", "175 lb/in"), ("rear.linkage.upper.body.use", "3"), ("rear.spring.rate", "200 lb/in")],
            Track = "left\nlane",
            Logs = [("a, b.csv", "l.yaml"), ("c.csv", null)],
            Seen = [("rear_moves", "frame 131"), ("first_up", "rear")],
            Notes = "- none #1",
        });

        string[] lines = text.Text.TrimEnd('\n').Split('\n');
        Assert.Equal(lines.Length, text.Sources.Count);
        Assert.Equal("changed.rear.spring.rate", text.Sources[Array.IndexOf(lines, "  rear.spring.rate: 200 lb/in")]);
        Assert.Equal("200 lb/in", PassEdit.Find(text.Text, "changed.rear.spring.rate"));
        Assert.Equal("Third: one hole down", PassEdit.Find(text.Text, "name"));
        Assert.Equal("left lane", PassEdit.Find(text.Text, "track"));
        Assert.Equal("a, b.csv", PassEdit.Find(text.Text, "logs[0].file"));
        Assert.Equal("- none #1", PassEdit.Find(text.Text, "notes"));
    }
}
