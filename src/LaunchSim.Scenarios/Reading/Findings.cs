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

    /// <summary>How much was found so far, doubled findings included.</summary>
    public int Count { get; private set; }

    public IReadOnlyList<Diagnostic> Warnings() => Sorted(_warnings);

    /// <summary>Whether something was found at a path or at the value that it is a part of.</summary>
    public bool Has(string path) => _errors.Concat(_warnings).Any(finding => finding.Path.Length > 0
        && (finding.Path == path || path == finding.Path + ".ahead" || path == finding.Path + ".up"));

    public IReadOnlyList<Diagnostic> Errors()
    {
        List<Diagnostic> sorted = Sorted(_errors);
        if (_more > 0)
        {
            Diagnostic last = sorted[^1];
            return [.. sorted, last with { Message = $"{_more} more errors, not shown", Allowed = "", Mend = "mend those above first", Path = "" }];
        }

        return sorted;
    }

    public void Error(Place place, string path, string found, string allowed = "", string mend = "")
    {
        Count++;
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
        Count++;
        if (_warnings.Count < Most)
        {
            _warnings.Add(Build(Severity.Warning, place, path, found, allowed, mend));
        }
    }

    // In the order of the file, the files in the order in which something was found in them.
    private static List<Diagnostic> Sorted(List<Diagnostic> findings)
    {
        List<string> files = [.. findings.Select(finding => finding.File).Distinct()];
        return [.. findings.OrderBy(finding => files.IndexOf(finding.File)).ThenBy(finding => finding.Line).ThenBy(finding => finding.Column)];
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
