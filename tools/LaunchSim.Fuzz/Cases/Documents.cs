using System.Globalization;
using System.Text;
using LaunchSim.Fuzz.Mutations;

namespace LaunchSim.Fuzz.Cases;

/// <summary>Puts scenario files into a case: whole ones, variants with their bases, part files, and files that are no scenario.</summary>
/// <param name="sources">The shipped scenarios.</param>
internal sealed class Documents(Sources sources)
{
    private readonly Texts _texts = new(sources);

    /// <summary>Adds a scenario that mostly can be run, and names it for the command.</summary>
    /// <param name="draft">The case.</param>
    public void AddSound(Draft draft)
    {
        Dice dice = draft.Dice;
        int kind = dice.Below(100);
        string name = kind < 55 ? Whole(draft) : kind < 90 ? Chain(draft) : Shipped(draft);
        draft.Named.Add(name);
    }

    /// <summary>Adds a part file.</summary>
    /// <param name="draft">The case.</param>
    public static void AddPart(Draft draft)
    {
        string name = draft.Free("part");
        draft.Add(CaseFile.OfText(name, Sources.Part));
        draft.Note("the part file");
        draft.Named.Add(name);
    }

    /// <summary>Spoils one of the files of a case.</summary>
    /// <param name="draft">The case, with one file at least.</param>
    public static void Spoil(Draft draft)
    {
        Dice dice = draft.Dice;
        CaseFile file = dice.Pick([.. draft.Files.Where(file => file is { IsFolder: false, LinkTo: null, IsEarlierResult: false })]);
        string text = Encoding.UTF8.GetString(file.Content);
        draft.IsWild = true;
        int times = dice.Below(10) switch { < 6 => 1, < 9 => 2, _ => dice.From(3, 8) };
        for (int i = 0; i < times; i++)
        {
            Mutation mutation = dice.Pick(Mutation.All, one => one.Weight);
            draft.Note($"{mutation.Name} in {file.Name}");
            text = mutation.Apply(text, dice);
        }

        draft.Add(file with { Content = Encoding.UTF8.GetBytes(text) });
    }

    /// <summary>Puts another form of file in the place of one.</summary>
    /// <param name="draft">The case, with one named file at least.</param>
    public static void Reform(Draft draft)
    {
        Dice dice = draft.Dice;
        string name = dice.Pick(draft.Named);
        if (draft.Files.FirstOrDefault(file => file.Name == name) is not { } file)
        {
            return;
        }

        FileForm form = dice.Pick(FileForm.All, one => one.Weight);
        draft.Note($"{form.Name}: {name}");
        form.Apply(draft, file);
    }

    /// <summary>Sound text in another coat, which changes nothing of what it says.</summary>
    private static byte[] Coated(string text, Draft draft)
    {
        Dice dice = draft.Dice;
        switch (dice.Below(25))
        {
            case 0:
                draft.Note("with CRLF");
                return Encoding.UTF8.GetBytes(text.Replace("\n", "\r\n", StringComparison.Ordinal));
            case 1:
                draft.Note("with a byte order mark");
                return [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)];
            case 2:
                return Encoding.UTF8.GetBytes(text.TrimEnd('\n'));
            default:
                return Encoding.UTF8.GetBytes(text);
        }
    }

    private string Shipped(Draft draft)
    {
        Source source = draft.Dice.Pick(sources.All);
        draft.Note($"{source.Name} as it is");
        draft.Hosts.Add(source);
        sources.AddBases(source, draft);
        draft.Add(CaseFile.OfText(source.Name, source.Text));
        return source.Name;
    }

    private string Whole(Draft draft)
    {
        string name = draft.Free(draft.Dice.Chance(0.97) ? "car" : draft.Dice.Pick(["a car", "ö", "@car", "car.with.dots", "-car", "c;a'r", "車", "%s{0}"]));
        draft.Add(new CaseFile(name, Coated(_texts.Sound(draft), draft)));
        return name;
    }

    private string Chain(Draft draft)
    {
        Dice dice = draft.Dice;
        string name = Base(dice.Pick(sources.All), draft);
        Source source = draft.Hosts[^1];
        int links = dice.Below(20) switch { < 14 => 1, < 18 => 2, 18 => 3, _ => dice.From(4, 12) };
        for (int i = 0; i < links; i++)
        {
            List<Change> changes = [.. Texts.Changes(source, i == 0 ? Texts.Values(dice) : dice.Below(3), draft)];
            if (dice.Chance(0.5))
            {
                OddCar odd = dice.Pick(OddCars.All);
                draft.Note(odd.Name);
                changes.AddRange(odd.Changes(dice));
            }

            name = Variant(draft, name, changes);
        }

        return name;
    }

    private string Base(Source source, Draft draft)
    {
        if (source.BaseName is not null || draft.Dice.Chance(0.7))
        {
            sources.AddBases(source, draft);
            draft.Add(CaseFile.OfText(source.Name, source.Text));
            draft.Hosts.Add(source);
            draft.Note($"on {source.Name}");
            return source.Name;
        }

        return Whole(draft);
    }

    private static string Variant(Draft draft, string baseName, List<Change> changes)
    {
        Dice dice = draft.Dice;
        string folder = dice.Chance(0.1) ? "sub/" : "";
        string name = draft.Free(folder + "variant");
        string up = (folder.Length > 0, baseName.StartsWith("sub/", StringComparison.Ordinal)) switch
        {
            (true, true) => baseName["sub/".Length..],
            (true, false) => "../" + baseName,
            _ => baseName,
        };
        var text = new StringBuilder();
        _ = text.Append(CultureInfo.InvariantCulture, $"name: variant {draft.Files.Count}\nbase: \"{up}\"\n{(dice.Chance(0.8) ? "choices: {}\n" : "")}");
        if (changes.Count > 0)
        {
            _ = text.Append("change:\n");
            foreach (Change change in changes.GroupBy(change => change.Path).Select(same => same.Last()))
            {
                draft.Note($"{change.Path}: {change.Value}");
                _ = text.Append(CultureInfo.InvariantCulture, $"  {change.Path}: {change.Value}\n");
            }
        }

        draft.Add(new CaseFile(name, Coated(text.ToString(), draft)));
        return name;
    }
}
