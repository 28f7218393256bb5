using System.Text;

namespace LaunchSim.Fuzz.Mutations;

/// <summary>Keys dropped, doubled, moved, misspelt, nested where they do not belong; lists for sections and sections for lists.</summary>
internal static class StructureMutations
{
    private static readonly string[] Strangers = ["colour: red", "wheelbase: 105 in", "base: door-car.yaml", "change: {}", "choices:", "grip: 1", "use: 2", "? [a, b]: c", "- mass: 4 lb", "name: again", "rear.spring.rate: 150 lb/in", "\"\": 1", "1: 2", "~: ~", "<<: {a: b}", "holes: {1: 2 3 in}"];
    private static readonly string[] Stand_ins = ["", "~", "null", "on", "[]", "{}", "[1, 2]", "{a: b}", "- 1", "''", "\"\"", "|", ">", "!!null", "{holes: {}, use: 1}", "{holes: {1: 2 3 in}}", "{speed: 0 1 in/s}", "all", "none", "1:30", "0x10", "2001-01-01", "[[[[[[]]]]]]", "{1: {2: {3: 4}}}", ".", "-", "1 2 3 4 5 6 7 8 9 in"];

    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("a line dropped", 6, (text, dice) => Edit(text, dice, (lines, at) => lines.RemoveAt(at))),
        new("a section dropped", 10, (text, dice) => Edit(text, dice, (lines, at) => lines.RemoveRange(at, Lines.Block(lines, at)))),
        new("a line doubled", 4, (text, dice) => Edit(text, dice, (lines, at) => lines.Insert(at, lines[at]))),
        new("a section doubled", 4, (text, dice) => Edit(text, dice, (lines, at) => lines.InsertRange(at, lines.GetRange(at, Lines.Block(lines, at))))),
        new("a section moved", 6, Move),
        new("two lines swapped", 4, (text, dice) => Edit(text, dice, (lines, at) =>
        {
            int other = dice.Below(lines.Count);
            (lines[at], lines[other]) = (lines[other], lines[at]);
        })),
        new("a key misspelt", 10, (text, dice) => Lines.Changed(text, dice, (line, colon) => Misspelt(line[..colon], dice) + line[colon..])),
        new("a key of elsewhere", 6, (text, dice) => Edit(text, dice, (lines, at) => lines.Insert(at, new string(' ', Lines.Indent(lines[at])) + dice.Pick(Strangers)))),
        new("another kind of value", 12, (text, dice) => Lines.Changed(text, dice, (line, colon) => $"{line[..colon]}: {dice.Pick(Stand_ins)}")),
        new("a list for a value", 4, (text, dice) => Lines.Changed(text, dice, (line, colon) => $"{line[..colon]}: [{Value(line, colon)}]")),
        new("a section for a value", 4, (text, dice) => Lines.Changed(text, dice, (line, colon) => $"{line[..colon]}: {{value: {Value(line, colon)}}}")),
        new("a list item", 3, (text, dice) => Lines.Changed(text, dice, (line, colon) => line.Insert(Lines.Indent(line), "- "))),
        new("indented otherwise", 6, Indent),
        new("a brace entry dropped", 5, (text, dice) => BraceEntry(text, dice, (entries, at) => entries.RemoveAt(at))),
        new("a brace entry doubled", 4, (text, dice) => BraceEntry(text, dice, (entries, at) => entries.Insert(at, entries[at]))),
        new("a brace entry misspelt", 5, (text, dice) => BraceEntry(text, dice, (entries, at) => entries[at] = Misspelt(entries[at], dice))),
        new("cut off", 3, (text, dice) => text[..dice.Below(text.Length + 1)]),
        new("twice over", 2, (text, _) => text + text),
        new("many errors", 2, (text, dice) => text + string.Concat(Enumerable.Range(0, dice.From(150, 600)).Select(i => $"key{i}: x\n"))),
    ];

    private static string Edit(string text, Dice dice, Action<List<string>, int> edit)
    {
        List<string> lines = Lines.Of(text);
        edit(lines, dice.Below(lines.Count));
        return Lines.Joined(lines);
    }

    private static string Value(string line, int colon) => line[(colon + 1)..].Split(" #")[0].Trim();

    private static string Move(string text, Dice dice) => Edit(text, dice, (lines, at) =>
    {
        int count = Lines.Block(lines, at);
        List<string> block = lines.GetRange(at, count);
        lines.RemoveRange(at, count);
        int to = dice.Below(lines.Count + 1);
        int shift = to < lines.Count ? Lines.Indent(lines[to]) - Lines.Indent(block[0]) : 0;
        lines.InsertRange(to, block.Select(line => shift >= 0 ? new string(' ', shift) + line : line.Length > -shift ? line[-shift..] : line));
    });

    private static string Indent(string text, Dice dice) => Edit(text, dice, (lines, at) =>
    {
        int count = dice.Chance(0.5) ? 1 : Lines.Block(lines, at);
        int by = dice.Pick([-4, -2, -1, 1, 2, 4, 40]);
        for (int i = at; i < at + count; i++)
        {
            lines[i] = by > 0 ? new string(' ', by) + lines[i] : lines[i][Math.Min(-by, Lines.Indent(lines[i]))..];
        }
    });

    private static string Misspelt(string key, Dice dice)
    {
        int at = key.Length == 0 ? 0 : dice.Below(key.Length);
        return dice.Below(6) switch
        {
            0 => key.Length == 0 ? key : key.Remove(at, 1),
            1 => key.Insert(at, "e"),
            2 => key.ToUpperInvariant(),
            3 => key.Replace('_', '-'),
            4 => key + " ",
            _ => key.Length == 0 ? key : new StringBuilder(key) { [at] = "xyzøß"[dice.Below(5)] }.ToString(),
        };
    }

    private static string BraceEntry(string text, Dice dice, Action<List<string>, int> edit)
    {
        List<string> lines = Lines.Of(text);
        int[] braced = [.. Enumerable.Range(0, lines.Count).Where(i => lines[i].Contains('{', StringComparison.Ordinal) && lines[i].Contains('}', StringComparison.Ordinal))];
        if (braced.Length == 0)
        {
            return text;
        }

        int at = dice.Pick(braced);
        int open = lines[at].IndexOf('{', StringComparison.Ordinal), close = lines[at].LastIndexOf('}');
        if (close < open)
        {
            return text;
        }

        List<string> entries = [.. lines[at][(open + 1)..close].Split(',')];
        edit(entries, dice.Below(entries.Count));
        lines[at] = lines[at][..(open + 1)] + string.Join(',', entries) + lines[at][close..];
        return Lines.Joined(lines);
    }
}
