using System.Globalization;
using System.Text;

namespace LaunchSim.Scenarios;

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>The file cannot be used as it stands.</summary>
    Error,

    /// <summary>The file can be used; something in it deserves a look.</summary>
    Warning,
}

/// <summary>One thing found in a scenario: where, what, what is allowed, and how to mend it.</summary>
public sealed record Diagnostic
{
    /// <summary>The file as it was named, or <c>--set path=value</c> for a value given beside the file.</summary>
    public required string File { get; init; }

    /// <summary>Line from 1; 0 when the value did not come from a file.</summary>
    public required int Line { get; init; }

    /// <summary>Column in characters from 1; 0 when the value did not come from a file.</summary>
    public required int Column { get; init; }

    /// <summary>Error or warning.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What was found, in words that follow 'found', the offending text in backquotes.</summary>
    public required string Message { get; init; }

    /// <summary>What is allowed there; empty when there is nothing to add.</summary>
    public string Allowed { get; init; } = "";

    /// <summary>How to mend it; empty when there is nothing to add.</summary>
    public string Mend { get; init; } = "";

    /// <summary>The path of the value concerned, such as <c>rear.spring.rate</c>; empty when it concerns the file.</summary>
    public string Path { get; init; } = "";

    /// <summary><c>file:line:column: error: found …; allowed: …; mend: …</c></summary>
    public override string ToString()
    {
        var text = new StringBuilder(File);
        if (Line > 0)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $":{Line}:{Column}");
        }

        _ = text.Append(Severity == Severity.Error ? ": error: " : ": warning: ");
        if (Path.Length > 0)
        {
            _ = text.Append(Path).Append(": ");
        }

        _ = text.Append("found ").Append(Message);
        if (Allowed.Length > 0)
        {
            _ = text.Append("; allowed: ").Append(Allowed);
        }

        if (Mend.Length > 0)
        {
            _ = text.Append("; mend: ").Append(Mend);
        }

        return text.ToString();
    }
}
