namespace LaunchSim.Fuzz.Mutations;

/// <summary>A scenario's text as lines and as blocks: a line with all that is indented below it.</summary>
internal static class Lines
{
    /// <summary>The lines of a text, without their ends.</summary>
    /// <param name="text">The text.</param>
    public static List<string> Of(string text) => [.. text.Split('\n')];

    /// <summary>The text of some lines.</summary>
    /// <param name="lines">The lines.</param>
    public static string Joined(IEnumerable<string> lines) => string.Join('\n', lines);

    /// <summary>How many lines the block at a line has.</summary>
    /// <param name="lines">All lines.</param>
    /// <param name="at">The block's first line.</param>
    public static int Block(List<string> lines, int at)
    {
        int end = at + 1;
        while (end < lines.Count && (lines[end].Trim().Length == 0 ? end + 1 < lines.Count && Indent(lines[end + 1]) > Indent(lines[at]) : Indent(lines[end]) > Indent(lines[at])))
        {
            end++;
        }

        return end - at;
    }

    /// <summary>Spaces before a line's text.</summary>
    /// <param name="line">The line.</param>
    public static int Indent(string line) => line.Length - line.TrimStart(' ').Length;

    /// <summary>A line that has a key; −1 when there is none.</summary>
    /// <param name="lines">All lines.</param>
    /// <param name="dice">Decides which.</param>
    public static int Keyed(List<string> lines, Dice dice)
    {
        int[] keyed = [.. Enumerable.Range(0, lines.Count).Where(i => Colon(lines[i]) >= 0)];
        return keyed.Length == 0 ? -1 : dice.Pick(keyed);
    }

    /// <summary>Where the colon of a line's key is; negative when it has none.</summary>
    /// <param name="line">The line.</param>
    public static int Colon(string line)
    {
        if (line.TrimStart().StartsWith('#'))
        {
            return -1;
        }

        int colon = line.IndexOf(": ", StringComparison.Ordinal);
        return colon > 0 ? colon : line.EndsWith(':') ? line.Length - 1 : -1;
    }

    /// <summary>A text with one of its keyed lines changed.</summary>
    /// <param name="text">The text.</param>
    /// <param name="dice">Decides which.</param>
    /// <param name="change">From the line and its colon's place to the line or lines in its place.</param>
    public static string Changed(string text, Dice dice, Func<string, int, string> change)
    {
        List<string> lines = Of(text);
        int at = Keyed(lines, dice);
        if (at < 0)
        {
            return text;
        }

        lines[at] = change(lines[at], Colon(lines[at]));
        return Joined(lines);
    }
}
