using System.Globalization;
using System.Text;
using LaunchSim.Fuzz.Checks;

namespace LaunchSim.Fuzz;

/// <summary>Keeps failed cases: their files as they were before the command, the command, and what was wrong.</summary>
/// <param name="folder">Where to.</param>
internal sealed class Keeper(string folder)
{
    /// <summary>Keeps a case.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="complaints">What is wrong with it.</param>
    public void Keep(Outcome outcome, IReadOnlyList<string> complaints)
    {
        string own = Path.Combine(folder, "seed-" + outcome.Case.Seed.ToString(CultureInfo.InvariantCulture));
        if (Directory.Exists(own))
        {
            Directory.Delete(own, true);
        }

        outcome.Case.Make(own);
        File.WriteAllText(Path.Combine(own, "CASE.txt"), Text(outcome, complaints));
    }

    /// <summary>All about a case, for a person.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="complaints">What is wrong with it; may be nothing.</param>
    public static string Text(Outcome outcome, IReadOnlyList<string> complaints)
    {
        var text = new StringBuilder();
        _ = text.Append(CultureInfo.InvariantCulture, $"seed {outcome.Case.Seed}\n");
        foreach (string complaint in complaints)
        {
            _ = text.Append("wrong: ").Append(complaint).Append('\n');
        }

        _ = text.Append("made: ").AppendJoin("; ", outcome.Case.Steps).Append('\n');
        _ = text.Append("in its folder: launchsim ").AppendJoin(' ', outcome.Case.ArgumentsIn(".").Select(Quoted)).Append('\n');
        _ = text.Append(CultureInfo.InvariantCulture, $"exit {outcome.Code?.ToString(CultureInfo.InvariantCulture) ?? "none"} after {outcome.Took.TotalMilliseconds:0} ms\n");
        if (outcome.Thrown is { } thrown)
        {
            _ = text.Append(thrown).Append('\n');
        }

        foreach ((string name, byte[] content) in outcome.Written)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"wrote {name}, {content.Length} bytes\n");
        }

        return text.Append("--- error stream\n").Append(outcome.Error).Append("--- output stream\n").Append(outcome.Output).ToString();
    }

    // For a POSIX shell.
    private static string Quoted(string argument) =>
        argument.Length > 0 && argument.All(c => char.IsAsciiLetterOrDigit(c) || "-_./=".Contains(c, StringComparison.Ordinal)) ? argument : $"'{argument.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
