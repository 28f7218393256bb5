using System.Text.RegularExpressions;

namespace LaunchSim.Fuzz.Checks;

/// <summary>Exit code and streams: a plain sentence for whatever is not done, and nothing that only a programmer would understand.</summary>
internal static partial class StreamChecks
{
    // The most errors are listed, not more; each is a line or two.
    private const int LongestError = 400_000;

    public static IEnumerable<string> ExitCode(Outcome outcome)
    {
        if (outcome.Code is not (0 or 1 or 2))
        {
            yield return outcome.Thrown is { } thrown ? $"{thrown.GetType()} came out of the program: {thrown.Message}" : $"{outcome.Code}, which is none of 0, 1 and 2";
        }

        if (outcome.Code == 0 && outcome.Error.Contains(": error: ", StringComparison.Ordinal))
        {
            yield return "0 in spite of an error";
        }
    }

    public static IEnumerable<string> Message(Outcome outcome)
    {
        // What was written, and what deserves a look, are no reasons.
        if (outcome.Code is not 0 && outcome.Error.Split('\n').All(line => line.Trim().Length == 0 || line.StartsWith("wrote ", StringComparison.Ordinal)
            || line.StartsWith("replaced ", StringComparison.Ordinal) || line.Contains(": warning: ", StringComparison.Ordinal)))
        {
            yield return $"exit {outcome.Code} without a word on the error stream";
        }

        foreach (string line in outcome.Error.Split('\n').Where(line => line.Contains(": error: ", StringComparison.Ordinal)))
        {
            if (!line.Contains("; allowed: ", StringComparison.Ordinal) && !line.Contains("; mend: ", StringComparison.Ordinal))
            {
                yield return $"neither what is allowed nor how to mend it: {line}";
            }
        }

        // A word that nothing can complete is answered by nothing.
        if (outcome.Code == 0 && outcome.Output.Length == 0 && !outcome.Has("--quiet") && outcome.Case.Command != "complete")
        {
            yield return "exit 0 without a result";
        }
    }

    public static IEnumerable<string> Fault(Outcome outcome)
    {
        if (outcome.Error.Contains("fault of the program", StringComparison.Ordinal))
        {
            yield return "the program calls it a fault of its own";
        }

        // A shell's script is a program itself and may name what it likes.
        if (StackTrace().IsMatch(outcome.Error) || (outcome.Case.Command != "completion" && StackTrace().IsMatch(outcome.Output)))
        {
            yield return "a stack trace or the name of an exception";
        }
    }

    public static IEnumerable<string> Streams(Outcome outcome)
    {
        foreach ((string name, string text) in new[] { ("output", outcome.Output), ("error", outcome.Error) })
        {
            int control = text.AsSpan().IndexOfAny(Controls);
            if (control >= 0)
            {
                yield return $"U+{(int)text[control]:X4} on the {name} stream, which a terminal may obey";
            }
        }

        if (outcome.Error.Length > LongestError)
        {
            yield return $"{outcome.Error.Length} characters on the error stream";
        }

        bool asksForIt = outcome.Case.Files.Any(file => Wild(System.Text.Encoding.UTF8.GetString(file.Content))) || outcome.Arguments.Any(Wild);
        if (!asksForIt && Wild(outcome.Output))
        {
            yield return "a number that is none among the results";
        }
    }

    private static readonly System.Buffers.SearchValues<char> Controls = System.Buffers.SearchValues.Create(
        [.. Enumerable.Range(0, 32).Append(127).Concat(Enumerable.Range(128, 32)).Select(code => (char)code).Where(c => c is not ('\n' or '\t'))]);

    private static bool Wild(string text) => NoNumber().IsMatch(text);

    [GeneratedRegex(@"^\s+at .*\(|Exception\b|System\.[A-Z]", RegexOptions.Multiline)]
    private static partial Regex StackTrace();

    [GeneratedRegex(@"\bNaN\b|∞|\bInfinity\b|�")]
    private static partial Regex NoNumber();
}
