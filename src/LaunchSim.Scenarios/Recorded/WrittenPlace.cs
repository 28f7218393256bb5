using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Where something was written, for errors that show only later.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Line">Line from 1; 0 for the file as a whole.</param>
/// <param name="Column">Column in characters from 1; 0 for the file as a whole.</param>
public sealed record WrittenPlace(string File, int Line, int Column)
{
    internal static WrittenPlace Of(Place place) => new(place.Origin, place.Line, place.Column);

    /// <summary>An error there.</summary>
    /// <param name="path">The path of the value concerned; empty for a file without paths.</param>
    /// <param name="found">What was found, in words that follow 'found'.</param>
    /// <param name="allowed">What is allowed there.</param>
    /// <param name="mend">How to mend it.</param>
    public Diagnostic Error(string path, string found, string allowed, string mend) => Build(Severity.Error, path, found, allowed, mend);

    /// <summary>A warning there.</summary>
    /// <param name="path">The path of the value concerned; empty for a file without paths.</param>
    /// <param name="found">What was found, in words that follow 'found'.</param>
    /// <param name="allowed">What is allowed there.</param>
    /// <param name="mend">How to mend it.</param>
    public Diagnostic Warning(string path, string found, string allowed, string mend) => Build(Severity.Warning, path, found, allowed, mend);

    private Diagnostic Build(Severity severity, string path, string found, string allowed, string mend) => new()
    {
        File = File,
        Line = Line,
        Column = Column,
        Severity = severity,
        Message = Shown.Plain(found),
        Allowed = Shown.Plain(allowed),
        Mend = Shown.Plain(mend),
        Path = Shown.Plain(path),
    };
}
