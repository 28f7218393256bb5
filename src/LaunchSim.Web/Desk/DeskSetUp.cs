using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Web.Desk;

/// <summary>A file's scenario with what was moved on the desk.</summary>
/// <param name="Scenario">The scenario; null when there is an error.</param>
/// <param name="Edits">What was moved, a path once.</param>
/// <param name="Errors">Why it cannot be; empty when it can.</param>
internal sealed record DeskSetUp(Scenario? Scenario, IReadOnlyList<ScenarioEdit> Edits, IReadOnlyList<Diagnostic> Errors)
{
    /// <summary>Moves what was asked for.</summary>
    /// <param name="state">The file.</param>
    /// <param name="edits">Paths and values; of a path that is named twice the later one counts.</param>
    public static DeskSetUp Of(DeskState state, IReadOnlyList<(string Path, string Value)> edits)
    {
        if (state.Scenario is not { } scenario)
        {
            return new DeskSetUp(null, [], state.Errors);
        }

        var paths = state.Controls.Select(control => control.Path).ToHashSet(StringComparer.Ordinal);
        IReadOnlyList<Diagnostic> unknown = [.. edits.Where(edit => !paths.Contains(edit.Path)).Select(edit => NotMoved(edit.Path))];
        if (unknown.Count > 0)
        {
            return new DeskSetUp(null, [], unknown);
        }

        EditResult read = EditReader.Read(scenario, edits);
        if (read.Errors.Count > 0)
        {
            return new DeskSetUp(null, [], read.Errors);
        }

        ReadResult moved = scenario.With(read.Edits);
        return new DeskSetUp(moved.Scenario, read.Edits, moved.Errors);
    }

    private static Diagnostic NotMoved(string path) => new()
    {
        File = "",
        Line = 0,
        Column = 0,
        Severity = Severity.Error,
        Message = $"the path `{DeskLog.Plain(path)}`, which is not moved on the desk",
        Allowed = "a path of the file's controls",
        Mend = "name it under `choices` in the file",
    };
}
