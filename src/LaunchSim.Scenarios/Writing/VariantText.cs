using System.Text;

namespace LaunchSim.Scenarios.Writing;

/// <summary>A variant file as text: the file it begins from, and what it changes by path.</summary>
public static class VariantText
{
    /// <summary>The text of a variant that is what a scenario becomes by some edits.</summary>
    /// <param name="name">What the variant is called; blanks of any kind become one space; empty for the base's name.</param>
    /// <param name="notes">Its notes, likewise; empty for none, which leaves it those of the base.</param>
    /// <param name="baseFile">The base as it is seen from the variant's folder, such as <c>door-car.yaml</c>.</param>
    /// <param name="edited">The scenario with the edits put in, which knows what doubt each value keeps.</param>
    /// <param name="edits">The edits, a path once.</param>
    /// <returns>The text; it ends in a line feed.</returns>
    public static string Of(string name, string notes, string baseFile, Scenario edited, IReadOnlyList<ScenarioEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(edited);
        ArgumentNullException.ThrowIfNull(edits);
        return Of(name, notes, baseFile, [.. edits.Select(edit => (edit.Path, edit.Quantity is null ? edit.Value : Written(edited, edit)))]);
    }

    /// <summary>The text of a variant.</summary>
    /// <param name="name">What the variant is called; blanks of any kind become one space; empty for the base's name.</param>
    /// <param name="notes">Its notes, likewise; empty for none, which leaves it those of the base.</param>
    /// <param name="baseFile">The base as it is seen from the variant's folder, such as <c>door-car.yaml</c>.</param>
    /// <param name="changes">Paths and values in the notation of the file.</param>
    /// <returns>The text; it ends in a line feed.</returns>
    public static string Of(string name, string notes, string baseFile, IReadOnlyList<(string Path, string Value)> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        var text = new StringBuilder();
        Line("name", OnOneLine(name));
        Line("notes", OnOneLine(notes));
        Line("base", baseFile);
        if (changes.Count > 0)
        {
            _ = text.Append("change:\n");
        }

        foreach ((string path, string value) in changes)
        {
            _ = text.Append("  ").Append(YamlScalar.Of(path)).Append(": ").Append(YamlScalar.Of(value)).Append('\n');
        }

        return text.ToString();

        void Line(string key, string value)
        {
            if (value.Length > 0)
            {
                _ = text.Append(key).Append(": ").Append(YamlScalar.Of(value)).Append('\n');
            }
        }
    }

    // A number that takes the place of a doubtful one is known as well as that was.
    private static string Written(Scenario edited, ScenarioEdit edit) =>
        edited.Find(edit.Path) is { } now && now.Unit.Text == edit.Quantity!.Unit.Text && now.Numbers.SequenceEqual(edit.Quantity.Numbers) ? now.ToString() : edit.Value;

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
