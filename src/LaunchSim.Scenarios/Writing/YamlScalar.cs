using System.Globalization;
using System.Text;

namespace LaunchSim.Scenarios.Writing;

/// <summary>One text as a YAML scalar on one line: plain where that reads back as the same text, else in quotes.</summary>
internal static class YamlScalar
{
    // What means something to YAML where a value begins.
    private const string Indicators = ",[]{}#&*!|>'\"%@`";

    public static string Of(string text) => IsPlain(text) ? text : text.All(IsPrinted) ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'" : Escaped(text);

    /// <summary>The same within braces or brackets, where commas and brackets part what YAML reads.</summary>
    public static string InBraces(string text)
    {
        string scalar = Of(text);
        return scalar.Length > 0 && scalar[0] is '\'' or '"' || text.IndexOfAny([',', '{', '}', '[', ']', ':', '#']) < 0 ? scalar : $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
    }

    private static bool IsPlain(string text)
    {
        if (text.Length == 0 || text[0] == ' ' || text[^1] is ' ' or ':' || Indicators.Contains(text[0], StringComparison.Ordinal)
            || text.Contains(": ", StringComparison.Ordinal) || text.Contains(" #", StringComparison.Ordinal)
            || text.StartsWith("---", StringComparison.Ordinal) || text.StartsWith("...", StringComparison.Ordinal))
        {
            return false;
        }

        // These three begin a list, a key or a value only before a blank.
        return !(text[0] is '-' or '?' or ':' && (text.Length == 1 || text[1] == ' ')) && text.All(IsPrinted);
    }

    // Line ends of any script, tabs, marks of byte order and lone surrogates do not come through unharmed as they are.
    private static bool IsPrinted(char c) =>
        !char.IsControl(c) && char.GetUnicodeCategory(c) is not (UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse);

    private static string Escaped(string text)
    {
        var quoted = new StringBuilder("\"");
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                _ = quoted.Append(CultureInfo.InvariantCulture, $"\\U{char.ConvertToUtf32(c, text[++i]):X8}");
            }
            else
            {
                _ = c is '"' or '\\' ? quoted.Append('\\').Append(c) : IsPrinted(c) ? quoted.Append(c) : quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
            }
        }

        return quoted.Append('"').ToString();
    }
}
