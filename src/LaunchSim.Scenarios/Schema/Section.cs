namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys that stand together, and the forms of which exactly one is taken.</summary>
internal sealed class Section(params SchemaKey[] keys)
{
    /// <summary>Keys in every form.</summary>
    public IReadOnlyList<SchemaKey> Keys { get; } = keys;

    /// <summary>The forms, or none. Chosen by the word at <see cref="Selector"/>, else by which form's own keys are there.</summary>
    public IReadOnlyList<Form> Forms { get; init; } = [];

    /// <summary>The key whose word names the form; null when the keys themselves tell.</summary>
    public string? Selector { get; init; }

    /// <summary>The path of the section.</summary>
    public string Path { get; private set; } = "";

    public void Hang(string path)
    {
        Path = path;
        foreach (SchemaKey key in Keys)
        {
            key.Hang(path);
        }

        foreach (Form form in Forms)
        {
            form.Section.Hang(path);
        }
    }

    /// <summary>This section's keys and those of all its forms.</summary>
    public IEnumerable<SchemaKey> All() => Keys.Concat(Forms.SelectMany(form => form.Section.All()));
}

/// <summary>
/// One form of a section. <paramref name="Markers"/> are the keys whose presence chooses it; a form without any is
/// taken when no other is.
/// </summary>
internal sealed record Form(string Name, string What, Section Section, params string[] Markers);
