namespace LaunchSim.Scenarios.Schema;

/// <summary>When a key has to be there.</summary>
internal enum Need
{
    /// <summary>Always, also in a file that only describes the side view.</summary>
    Geometry,

    /// <summary>For a run.</summary>
    Run,

    /// <summary>Never: there is a value to take in its place, or the part is not on the car.</summary>
    Optional,
}

/// <summary>One key of the scenario file: everything that the reader, the JSON Schema and the reference page know about it.</summary>
internal sealed class SchemaKey(string name, KeyKind kind, Need need, string what, string measure, string example, string? leftOut)
{
    public string Name { get; } = name;

    public KeyKind Kind { get; } = kind;

    public Need Need { get; } = need;

    /// <summary>What it is, in one sentence without the final stop.</summary>
    public string What { get; } = what;

    /// <summary>How to measure it or where to get it; empty for a section.</summary>
    public string Measure { get; } = measure;

    /// <summary>A value as it may be written; empty for a section.</summary>
    public string Example { get; } = example;

    /// <summary>What holds when it is left out; null when it has to be there.</summary>
    public string? LeftOut { get; } = leftOut;

    /// <summary>The whole path from the file's root; a list's items have the index <c>[]</c>.</summary>
    public string Path { get; private set; } = name;

    /// <summary>Hangs the key and all below it under a path.</summary>
    public void Hang(string parent)
    {
        Path = parent.Length == 0 ? Name : $"{parent}.{Name}";
        if (Kind is SectionKind { Section: var section })
        {
            section.Hang(Path);
        }
        else if (Kind is ListKind { Item: var item })
        {
            item.Hang(Path + "[]");
        }
    }
}
