using System.Text.RegularExpressions;

namespace LaunchSim.Web.Tests.Front;

/// <summary>What may not stand in the front end's files, and why.</summary>
internal static partial class FrontRules
{
    private static readonly (Regex Form, string Mend)[] Scripts =
    [
        (Markup(), "build elements and set textContent: a name out of a file must never become markup"),
        (Evaluation(), "the page's policy forbids text that becomes a script"),
        (InlineStyle(), "the page's policy forbids style attributes: use a class, or element.style.setProperty"),
        (Handler(), "use addEventListener"),
        (Outside(), "a page asks nobody for anything"),
        (Unchecked(), "mend the type instead"),
        (LateImport(), "import at the head of the module: the bundle knows no other"),
        (ScriptEnd(), "would end or hide the script that it stands in"),
        (Remnant(), "left over from looking for a mistake"),
    ];

    private static readonly (Regex Form, string Mend)[] Sheets =
    [
        (File(), "a page is one file"),
        (Import(), "name the sheet where the page is made"),
        (Outside(), "a page asks nobody for anything"),
        (StyleEnd(), "would end the style that it stands in"),
    ];

    private static readonly (Regex Form, string Mend) Colour = (Colours(), "declare it as a custom property in style/base.css, for light and dark");

    /// <summary>What is wrong in a file, one line each: place, finding, mend.</summary>
    public static IEnumerable<string> Breaches(string name, string text)
    {
        IEnumerable<(Regex Form, string Mend)> rules = name.EndsWith(".css", StringComparison.Ordinal)
            ? name == "style/base.css" ? Sheets : [.. Sheets, Colour]
            : Scripts;
        string[] lines = text.Split('\n');
        return
            from line in Enumerable.Range(0, lines.Length)
            from rule in rules
            let match = rule.Form.Match(lines[line])
            where match.Success
            select $"{name}:{line + 1}:{match.Index + 1}: found `{match.Value.Trim()}`; {rule.Mend}";
    }

    [GeneratedRegex(@"\b(?:innerHTML|outerHTML|insertAdjacentHTML|setHTMLUnsafe|parseFromString|createContextualFragment|srcdoc)\b|\bdocument\.write(?:ln)?\b")]
    private static partial Regex Markup();

    [GeneratedRegex(@"\beval\s*\(|\bnew\s+Function\b|\bFunction\s*\(|\bset(?:Timeout|Interval)\s*\(\s*['""`]|javascript:")]
    private static partial Regex Evaluation();

    [GeneratedRegex(@"\bstyle\s*=\s*[""'\\]|setAttribute\(\s*['""`]style['""`]")]
    private static partial Regex InlineStyle();

    [GeneratedRegex(@"\.on[a-z]+\s*=(?!=)|\bon[a-z]+=[""']|setAttribute\(\s*['""`]on[a-z]+['""`]")]
    private static partial Regex Handler();

    [GeneratedRegex(@"(?:https?:|wss?:)?//(?!www\.w3\.org/(?:2000/svg|1999/xlink|1999/xhtml))[a-z0-9.-]+\.[a-z]{2,}\b(?=[/:'""`)])", RegexOptions.IgnoreCase)]
    private static partial Regex Outside();

    [GeneratedRegex(@"\burl\(\s*['""]?(?!#|data:)[^)\s]", RegexOptions.IgnoreCase)]
    private static partial Regex File();

    [GeneratedRegex(@"@ts-(?:ignore|nocheck|expect-error)")]
    private static partial Regex Unchecked();

    [GeneratedRegex(@"(?:\bawait|=>|[=(,?:])\s*import\s*\((?=[^)]*\)(?!\.[A-Z]|[.\w]*[}>]))")]
    private static partial Regex LateImport();

    [GeneratedRegex(@"</script|<script|<!--", RegexOptions.IgnoreCase)]
    private static partial Regex ScriptEnd();

    [GeneratedRegex(@"</style", RegexOptions.IgnoreCase)]
    private static partial Regex StyleEnd();

    [GeneratedRegex(@"\bconsole\.\w+\s*\(|\bdebugger\s*;|\balert\s*\(")]
    private static partial Regex Remnant();

    [GeneratedRegex(@"@import\b")]
    private static partial Regex Import();

    [GeneratedRegex(@":[^;{]*(#[0-9a-f]{3,8}\b|\b(?:rgb|rgba|hsl|hsla|hwb|lab|lch|oklab|oklch)\(|\b(?:red|green|blue|black|white|gr[ae]y|orange|yellow|purple)\b)", RegexOptions.IgnoreCase)]
    private static partial Regex Colours();
}
