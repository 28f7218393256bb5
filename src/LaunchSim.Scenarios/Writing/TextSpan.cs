using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Writing;

/// <summary>Where a value stands in a text, quotes and all.</summary>
/// <param name="From">Its first character, from 0.</param>
/// <param name="To">Behind its last.</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Text">The value.</param>
/// <param name="InBraces">Whether it stands between braces, where a comma parts.</param>
internal sealed record TextSpan(int From, int To, int Line, string Text, bool InBraces)
{
    /// <summary>The place of a value; null when it is not written on one line as it reads.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="value">The value, read from that text.</param>
    /// <param name="inBraces">Whether it stands between braces.</param>
    public static TextSpan? Of(string text, ScalarNode value, bool inBraces)
    {
        int at = LineStart(text, value.Place.Line);
        if (at < 0)
        {
            return null;
        }

        at += value.Place.Column - 1;
        int quote = at < text.Length && text[at] is '\'' or '"' ? 1 : 0;
        int end = at + quote + value.Text.Length;
        return end + quote <= text.Length
            && text.AsSpan(at + quote, value.Text.Length).SequenceEqual(value.Text)
            && (quote == 0 || text[end] == text[at])
            ? new TextSpan(at, end + quote, value.Place.Line, value.Text, inBraces)
            : null;
    }

    private static int LineStart(string text, int line)
    {
        int at = 0;
        for (int passed = 1; passed < line; passed++)
        {
            int end = text.AsSpan(at).IndexOfAny("\n\r\u0085\u2028\u2029");
            if (end < 0)
            {
                return -1;
            }

            at += end + (text[at + end] == '\r' && at + end + 1 < text.Length && text[at + end + 1] == '\n' ? 2 : 1);
        }

        return at;
    }
}
