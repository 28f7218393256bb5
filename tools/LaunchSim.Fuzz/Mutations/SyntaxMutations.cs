using System.Text;

namespace LaunchSim.Fuzz.Mutations;

/// <summary>Damage to the YAML itself: aliases, tags, several documents, brackets and quotes left open, characters that do not belong.</summary>
internal static class SyntaxMutations
{
    private static readonly string[] Scraps =
    [
        "±", "%", ",", ":", ": ", "{", "}", "[", "]", "&a ", "*a", "!!x ", "!<tag:x> ", "-", "- ", "\t", "\n", "\r\n", "\r", "#", " #", "'", "\"", "|", "|+\n", ">", ">-\n", "---\n", "...\n", "?", "? ", "\u2028", "\u2029", "\u0085", "\u00a0", "\u200b", "\u202e",
        "\0", "\u001b[31m", "\u0007", "\u0008", "\u007f", "\ufeff", "\ufffd", "\U0001F3CE", "e\u0301\u0301\u0301\u0301", "\\", "\\u0041", "\"\\ud800\"", "\"\\x00\"", "null", "~", "@", "`", "%YAML 9\n", "%TAG ! x\n", "<<: *a", "= ", "1e400", "NaN", ".inf", "٣", "½", "√(", "((((((((((", "^", "^-9", "⁻¹",
    ];

    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("a scrap put in", 14, (text, dice) => text.Insert(dice.Below(text.Length + 1), dice.Pick(Scraps))),
        new("a scrap in a value", 10, (text, dice) => Lines.Changed(text, dice, (line, colon) => line.Insert(dice.From(Math.Min(colon + 1, line.Length), line.Length), dice.Pick(Scraps)))),
        new("characters cut out", 6, Cut),
        new("characters copied", 5, Copy),
        new("a character changed", 8, (text, dice) => text.Length == 0 ? text : new StringBuilder(text) { [dice.Below(text.Length)] = text[dice.Below(text.Length)] }.ToString()),
        new("an anchor and an alias", 4, (text, dice) => Lines.Changed(Lines.Changed(text, dice, (line, colon) => line.Insert(Math.Min(colon + 1, line.Length), " &a")), dice, (line, colon) => $"{line[..colon]}: *a")),
        new("aliases of aliases", 1, (text, _) => text + Bomb()),
        new("a tag", 4, (text, dice) => Lines.Changed(text, dice, (line, colon) => line.Insert(Math.Min(colon + 1, line.Length), dice.Pick([" !!str", " !!int", " !!binary", " !mine", " !!map", " !!python/object:os.system"])))),
        new("escapes in quotes", 3, (text, dice) => Lines.Changed(text, dice, (line, colon) => $"{line[..colon]}: \"{dice.Pick(["\\e[31m", "\\x9b2J", "\\a", "\\0", "\\u0085", "a\\nb", "\\r", "\\u202e", "\\ud800", "\\t", "\\U0001F3CE"])}\"")),
        new("escapes in names", 2, (text, dice) => text.Replace(dice.Pick(["1:", "2:", "name: "]), dice.Pick(["\"\\e[31m\":", "\"\\a\":", "name: \"\\e[31m\" #", "name: \"a\\nb\" #"]), StringComparison.Ordinal)),
        new("several documents", 4, (text, dice) => dice.Chance(0.5) ? $"{text}\n---\n{text}" : Insert(text, dice, "---")),
        new("no space after the colon", 5, (text, dice) => Lines.Changed(text, dice, (line, colon) => colon + 2 <= line.Length ? line.Remove(colon + 1, 1) : line)),
        new("no colon", 3, (text, dice) => Lines.Changed(text, dice, (line, colon) => line.Remove(colon, 1))),
        new("a tab", 4, (text, dice) => Lines.Changed(text, dice, (line, _) => "\t" + line.TrimStart())),
        new("a brace more or less", 6, Brace),
        new("a quote left open", 4, (text, dice) => Lines.Changed(text, dice, (line, colon) => line.Insert(Math.Min(colon + 2, line.Length), dice.Pick(["'", "\""])))),
        new("deep nesting", 2, (text, dice) => text + "\nnotes: " + new string(dice.Pick(['[', '{', '(']), dice.From(20, 20_000))),
        new("deep sections", 1, (text, dice) => text + string.Concat(Enumerable.Range(0, dice.From(20, 400)).Select(i => new string(' ', i) + "a:\n"))),
        new("a long line", 2, (text, dice) => Lines.Changed(text, dice, (line, colon) => $"{line[..colon]}: {new string(dice.Pick(['x', '1', ' ', '±', '-', '√']), dice.From(1_000, 200_000))}")),
        new("a long key", 1, (text, dice) => $"{text}\n{new string('k', dice.From(500, 5_000))}: 1\n"),
        new("nothing but scraps", 3, (_, dice) => string.Concat(Enumerable.Range(0, dice.Below(30)).Select(_ => dice.Pick(Scraps)))),
        new("comments only", 1, (text, _) => Lines.Joined(Lines.Of(text).Select(line => "# " + line))),
        new("empty", 1, (_, dice) => dice.Pick(["", "\n", " ", "---\n", "...\n", "~", "{}", "[]", "''"])),
    ];

    private static string Cut(string text, Dice dice)
    {
        int at = dice.Below(text.Length + 1);
        return text.Remove(at, Math.Min(dice.From(1, 60), text.Length - at));
    }

    private static string Copy(string text, Dice dice)
    {
        int from = dice.Below(text.Length + 1);
        return text.Insert(dice.Below(text.Length + 1), text.Substring(from, Math.Min(dice.From(1, 60), text.Length - from)));
    }

    private static string Insert(string text, Dice dice, string line)
    {
        List<string> lines = Lines.Of(text);
        lines.Insert(dice.Below(lines.Count + 1), line);
        return Lines.Joined(lines);
    }

    private static string Brace(string text, Dice dice)
    {
        int[] braces = [.. Enumerable.Range(0, text.Length).Where(i => text[i] is '{' or '}')];
        if (braces.Length == 0)
        {
            return text + "}";
        }

        int at = dice.Pick(braces);
        return dice.Chance(0.5) ? text.Remove(at, 1) : text.Insert(at, text[at].ToString());
    }

    private static string Bomb()
    {
        var text = new StringBuilder("\na0: &a0 [x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++)
        {
            _ = text.Append(System.Globalization.CultureInfo.InvariantCulture, $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 8))}]\n");
        }

        return text.ToString();
    }
}
