using System.Text;

namespace LaunchSim.Fuzz.Cases;

/// <summary>What may stand in the place of a scenario file.</summary>
/// <param name="Name">What it is, in a few words.</param>
/// <param name="Weight">How often it is taken, against the others.</param>
/// <param name="Apply">Puts it into the case in the place of a file.</param>
internal sealed record FileForm(string Name, int Weight, Action<Draft, CaseFile> Apply)
{
    private const int JustOverAMegabyte = (1 << 20) + 1;

    /// <summary>The register: one line a form.</summary>
    public static IReadOnlyList<FileForm> All { get; } =
    [
        new("missing", 4, (draft, file) => draft.Named[draft.Named.IndexOf(file.Name)] = "no-such-" + file.Name),
        new("empty", 2, (draft, file) => draft.Add(file with { Content = [] })),
        new("a folder", 2, (draft, file) => draft.Add(file with { Content = [], IsFolder = true })),
        new("random bytes", 4, (draft, file) => draft.Add(file with { Content = Noise(draft.Dice, draft.Dice.From(1, 3000)) })),
        new("random bytes within", 4, (draft, file) => draft.Add(file with { Content = [.. file.Content.Take(draft.Dice.Below(file.Content.Length + 1)), .. Noise(draft.Dice, 20), .. file.Content.Skip(200)] })),
        new("a byte changed", 4, ByteChanged),
        new("UTF-16", 3, (draft, file) => draft.Add(file with { Content = Recoded(file, Encoding.Unicode, draft.Dice) })),
        new("UTF-16, big end first", 2, (draft, file) => draft.Add(file with { Content = Recoded(file, Encoding.BigEndianUnicode, draft.Dice) })),
        new("UTF-32", 1, (draft, file) => draft.Add(file with { Content = Recoded(file, Encoding.UTF32, draft.Dice) })),
        new("Latin-1", 3, (draft, file) => draft.Add(file with { Content = Encoding.Latin1.GetBytes(Encoding.UTF8.GetString(file.Content)) })),
        new("two byte order marks", 1, (draft, file) => draft.Add(file with { Content = [0xEF, 0xBB, 0xBF, 0xEF, 0xBB, 0xBF, .. file.Content] })),
        new("old line ends", 2, (draft, file) => draft.Add(file with { Content = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(file.Content).Replace('\n', '\r')) })),
        new("zeros", 1, (draft, file) => draft.Add(file with { Content = new byte[draft.Dice.From(1, 5000)] })),
        new("huge", 1, (draft, file) => draft.Add(file with { Content = Padded(file, JustOverAMegabyte) })),
        new("as large as may be", 1, (draft, file) => draft.Add(file with { Content = Padded(file, JustOverAMegabyte - 1) })),
        new("many lines", 1, (draft, file) => draft.Add(file with { Content = [.. file.Content, .. Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat(draft.Dice.Pick(["#\n", "a: b\n", "- \n", "\n", "x\n"]), draft.Dice.From(1000, 100_000))))] })),
        new("a link to itself", 1, (draft, file) => draft.Add(file with { Content = [], LinkTo = Path.GetFileName(file.Name) })),
        new("a link to nowhere", 1, (draft, file) => draft.Add(file with { Content = [], LinkTo = "nowhere.yaml" })),
        new("a link to a scenario", 1, Linked),
        new("a device", 1, (draft, file) => draft.Named[draft.Named.IndexOf(file.Name)] = OperatingSystem.IsWindows() ? "NUL" : draft.Dice.Pick(["/dev/null", "/dev/zero"])),
        new("no name", 1, (draft, file) => draft.Named[draft.Named.IndexOf(file.Name)] = draft.Dice.Pick(["", " ", "no\0where", new string('n', 5000), "..", ".", "/", "*.yaml", "~", "?"])),
        new("its own base", 2, (draft, file) => draft.Add(CaseFile.OfText(file.Name, $"base: {Path.GetFileName(file.Name)}\nchange:\n  rear.spring.rate: 150 lb/in\n"))),
        new("a base that is not there", 2, (draft, file) => draft.Add(CaseFile.OfText(file.Name, "base: nowhere.yaml\nchange:\n  rear.sprung.rate: 150 lb/in\n"))),
        new("a long chain", 1, LongChain),
        new("a circle of bases", 1, Circle),
    ];

    private static byte[] Noise(Dice dice, int count)
    {
        byte[] noise = new byte[count];
        for (int i = 0; i < count; i++)
        {
            noise[i] = (byte)dice.Bits();
        }

        return noise;
    }

    private static void ByteChanged(Draft draft, CaseFile file)
    {
        byte[] content = [.. file.Content];
        for (int i = draft.Dice.Below(4); i >= 0 && content.Length > 0; i--)
        {
            content[draft.Dice.Below(content.Length)] = (byte)draft.Dice.Bits();
        }

        draft.Add(file with { Content = content });
    }

    private static byte[] Recoded(CaseFile file, Encoding encoding, Dice dice)
    {
        byte[] content = encoding.GetBytes(Encoding.UTF8.GetString(file.Content));
        return dice.Chance(0.5) ? [.. encoding.GetPreamble(), .. content] : content;
    }

    private static byte[] Padded(CaseFile file, int length)
    {
        byte[] padded = new byte[length];
        Array.Fill(padded, (byte)'#');
        file.Content.CopyTo(padded, 0);
        return padded;
    }

    private static void Linked(Draft draft, CaseFile file)
    {
        string real = draft.Free("real");
        draft.Add(file with { Name = real });
        draft.Add(file with { Content = [], LinkTo = real });
    }

    private static void LongChain(Draft draft, CaseFile file)
    {
        int links = draft.Dice.From(15, 25);
        string real = draft.Free("link");
        draft.Add(file with { Name = real });
        for (int i = 0; i < links; i++)
        {
            string next = i == links - 1 ? file.Name : draft.Free("link");
            draft.Add(CaseFile.OfText(next, $"base: \"{real}\"\n"));
            real = next;
        }
    }

    private static void Circle(Draft draft, CaseFile file)
    {
        string one = draft.Free("one");
        draft.Add(CaseFile.OfText(one, $"base: \"{file.Name}\"\n"));
        draft.Add(CaseFile.OfText(file.Name, $"base: \"{one}\"\n"));
    }
}
