using System.Text;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Text of a file made fit to show: on one line, not too long, nothing that a terminal would obey.</summary>
internal static class Shown
{
    private const int Longest = 60;

    public static string Quoted(string text)
    {
        text = text.Trim();
        return text.Length > Longest ? $"`{text[..Longest]}…`" : $"`{text}`";
    }

    public static string Plain(string text)
    {
        if (text.Length <= 1000 && !text.AsSpan().ContainsAnyInRange('\0', '\x1f') && !text.AsSpan().ContainsAnyInRange('\x7f', '\x9f') && !text.AsSpan().ContainsAnyInRange('\ud800', '\udfff'))
        {
            return text;
        }

        var plain = new StringBuilder(text.Length);
        for (int i = 0; i < Math.Min(text.Length, 1000); i++)
        {
            char c = text[i];
            bool pair = char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            if (pair)
            {
                _ = plain.Append(c).Append(text[++i]);
            }
            else
            {
                _ = plain.Append(char.IsSurrogate(c) ? '\ufffd' : char.IsControl(c) ? ' ' : c);
            }
        }

        return plain.ToString();
    }
}
