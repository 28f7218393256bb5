namespace LaunchSim.Scenarios.Reading;

/// <summary>Collects what is found, so that all of it can be reported in one go.</summary>
internal sealed class Findings
{
    /// <summary>More than this is not a list to work through; the rest is counted.</summary>
    private const int Most = 200;

    private readonly List<Diagnostic> _errors = [];
    private readonly List<Diagnostic> _warnings = [];
    private readonly HashSet<(Place, string)> _seen = [];
    private int _more;

    public bool HasErrors => _errors.Count > 0;

    public IReadOnlyList<Diagnostic> Warnings => _warnings;

    public IReadOnlyList<Diagnostic> Errors()
    {
        if (_more > 0)
        {
            Diagnostic last = _errors[^1];
            return [.. _errors, last with { Message = $"{_more} more errors, not shown", Allowed = "", Mend = "mend those above first", Path = "" }];
        }

        return [.. _errors];
    }

    public void Error(Place place, string path, string found, string allowed = "", string mend = "")
    {
        if (!_seen.Add((place, found)))
        {
            return;
        }

        if (_errors.Count < Most)
        {
            _errors.Add(Build(Severity.Error, place, path, found, allowed, mend));
        }
        else
        {
            _more++;
        }
    }

    public void Warning(Place place, string path, string found, string allowed = "", string mend = "")
    {
        if (_warnings.Count < Most)
        {
            _warnings.Add(Build(Severity.Warning, place, path, found, allowed, mend));
        }
    }

    private static Diagnostic Build(Severity severity, Place place, string path, string found, string allowed, string mend) => new()
    {
        File = place.Origin,
        Line = place.Line,
        Column = place.Column,
        Severity = severity,
        Message = Shown.Plain(found),
        Allowed = Shown.Plain(allowed),
        Mend = Shown.Plain(mend),
        Path = Shown.Plain(path),
    };
}
