using LaunchSim.Fuzz.Mutations;

namespace LaunchSim.Fuzz.Cases;

/// <summary>Whole scenarios out of the shipped ones: with other values, with sections of each other, without what may be left out.</summary>
/// <param name="sources">The shipped scenarios.</param>
internal sealed class Texts(Sources sources)
{
    private static readonly string[] Sections = ["driveline", "front", "rear", "rear.linkage", "rear.tire", "rear.damper", "front.tire", "front.damper", "front.spring", "rear.spring", "run", "track", "choices"];
    private static readonly string[] Optional = ["aero", "ride_height", "ballast", "pinion_angle", "pressure", "wheelie_bar", "power", "track", "run", "choices", "notes", "efficiency", "rollout", "marks", "count_from", "duration", "sample"];

    /// <summary>A scenario that mostly can be run.</summary>
    /// <param name="draft">The case.</param>
    public string Sound(Draft draft)
    {
        Dice dice = draft.Dice;
        Source source = dice.Pick(sources.Whole);
        draft.Hosts.Add(source);
        draft.Note($"from {source.Name}");
        string text = Moved(source, draft, Values(dice));
        if (dice.Chance(0.25))
        {
            Source donor = dice.Pick(sources.Whole);
            string section = dice.Pick(Sections);
            string from = Moved(donor, draft, dice.Below(2));
            if (Transplanted(text, from, section) is { } changed)
            {
                text = changed;
                draft.Note($"{section} of {donor.Name}");
            }
        }

        if (dice.Chance(0.8))
        {
            // Choices fit the car that they were written for.
            text = Without(text, "choices");
        }

        if (dice.Chance(0.2))
        {
            string key = dice.Pick(Optional);
            draft.Note($"without {key}");
            text = Without(text, key);
        }

        return text;
    }

    /// <summary>How many values to move: none, a few, or many.</summary>
    /// <param name="dice">Decides.</param>
    public static int Values(Dice dice) => dice.Below(10) switch { 0 => 0, < 6 => dice.From(1, 3), < 9 => dice.From(3, 8), _ => dice.From(8, 30) };

    /// <summary>Values for paths that a source has.</summary>
    /// <param name="source">The source.</param>
    /// <param name="count">How many.</param>
    /// <param name="draft">The case, whose dice decide.</param>
    public static IEnumerable<Change> Changes(Source source, int count, Draft draft)
    {
        for (int i = 0; i < count; i++)
        {
            Slot slot = draft.Dice.Pick(source.Slots);
            yield return new Change(slot.Path, SoundValues.For(slot, false, draft));
        }
    }

    private static string Moved(Source source, Draft draft, int count)
    {
        Slot[] own = [.. source.Slots.Where(slot => slot.At >= 0)];
        var chosen = new SortedDictionary<int, Slot>();
        for (int i = 0; i < count; i++)
        {
            Slot slot = draft.Dice.Pick(own);
            chosen[slot.At] = slot;
        }

        string text = source.Text;
        foreach (Slot slot in chosen.Values.Reverse())
        {
            string value = SoundValues.For(slot, slot.InBraces, draft);
            draft.Note($"{slot.Path}: {value}");
            text = text.Remove(slot.At, slot.Length).Insert(slot.At, value);
        }

        return text;
    }

    private static string? Transplanted(string text, string donor, string section)
    {
        List<string> lines = Lines.Of(text), others = Lines.Of(donor);
        int at = Find(lines, section), from = Find(others, section);
        if (from < 0)
        {
            return null;
        }

        List<string> block = others.GetRange(from, Lines.Block(others, from));
        if (at >= 0)
        {
            lines.RemoveRange(at, Lines.Block(lines, at));
            lines.InsertRange(at, block);
        }
        else if (!section.Contains('.', StringComparison.Ordinal))
        {
            lines.AddRange(block);
        }

        return Lines.Joined(lines);
    }

    private static int Find(List<string> lines, string section)
    {
        int from = 0, to = lines.Count, indent = 0;
        foreach (string key in section.Split('.'))
        {
            from = lines.FindIndex(from, to - from, line => Lines.Indent(line) == indent && line.AsSpan(indent).StartsWith(key + ":", StringComparison.Ordinal));
            if (from < 0)
            {
                return -1;
            }

            to = from + Lines.Block(lines, from);
            indent += 2;
        }

        return from;
    }

    private static string Without(string text, string key)
    {
        List<string> lines = Lines.Of(text);
        int at = lines.FindIndex(line => line.TrimStart().StartsWith(key + ":", StringComparison.Ordinal));
        if (at >= 0)
        {
            lines.RemoveRange(at, Lines.Block(lines, at));
        }

        return Lines.Joined(lines);
    }
}
