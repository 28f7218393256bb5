using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace LaunchSim.Scenarios.Tests.Reading;

/// <summary>Files that are no scenario: one plain sentence each, never an exception.</summary>
public class BadFileTests
{
    [Fact]
    public void Read_EmptyFile_SaysSo() => Says("an empty file", folder => folder.Write("a.yaml", ""));

    [Fact]
    public void Read_OnlyComments_SaysEmpty() => Says("an empty file", folder => folder.Write("a.yaml", "# nothing\n\n"));

    [Fact]
    public void Read_BinaryFile_SaysSo() => Says("a binary file", folder => folder.Write("a.yaml", [0x7f, 0x45, 0x4c, 0x46, 0, 1, 2, 0xff, 0xfe]));

    [Fact]
    public void Read_Utf16_SaysSo() => Says("UTF-16", folder => folder.Write("a.yaml", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("name: x")]));

    [Fact]
    public void Read_Folder_SaysSo() => Says("which is a folder", folder => folder.At);

    [Fact]
    public void Read_MissingFile_OffersTheNearest() => Says("no file", folder =>
    {
        folder.Write("door-car.yaml", "name: x");
        return Path.Combine(folder.At, "door-cra.yaml");
    }, "door-car.yaml");

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    public void Read_ImpossibleName_IsAnError(string name) => Assert.NotEmpty(new ScenarioReader().Read(name).Errors);

    [Fact]
    public void Read_FiftyMegabytes_IsRefusedQuicklyBySize()
    {
        using var folder = new Folder();
        string path = folder.Write("big.yaml", Encoding.ASCII.GetBytes(new string('a', 50_000_000)));
        var watch = Stopwatch.StartNew();
        Diagnostic error = Assert.Single(new ScenarioReader().Read(path).Errors);
        Assert.Contains("larger than 1 MB", error.Message, StringComparison.Ordinal);

        // A ceiling for a slow machine: reading a megabyte takes milliseconds.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), watch.Elapsed.ToString());
    }

    [Fact]
    public void Read_WithoutPermission_SaysSo()
    {
        if (RuntimeInformation.IsOSPlatform(OSPlatform.Windows))
        {
            return;
        }

        using var folder = new Folder();
        string path = folder.Write("a.yaml", "name: x");
        File.SetUnixFileMode(path, UnixFileMode.None);
        ReadResult result = new ScenarioReader().Read(path);

        // Root may read everything: then it is the content that is refused.
        Assert.NotEmpty(result.Errors);
        if (Environment.UserName != "root")
        {
            Assert.Contains("cannot be read", Assert.Single(result.Errors).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Read_InvalidUtf8_NamesThePlace()
    {
        using var folder = new Folder();
        string path = folder.Write("a.yaml", [.. Encoding.UTF8.GetBytes("name: x\nnotes: f"), 0xfc, .. Encoding.UTF8.GetBytes("r\n")]);
        Diagnostic error = Assert.Single(new ScenarioReader().Read(path).Errors);
        Assert.Contains("not UTF-8", error.Message, StringComparison.Ordinal);
        Assert.Equal((2, 9), (error.Line, error.Column));
    }

    [Fact]
    public void Read_ByteOrderMarkAndCarriageReturns_AreAccepted()
    {
        using var folder = new Folder();
        byte[] text = Encoding.UTF8.GetBytes(Files.DoorCarText.Replace("\n", "\r\n", StringComparison.Ordinal));
        ReadResult result = new ScenarioReader().Read(folder.Write("a.yaml", [0xef, 0xbb, 0xbf, .. text]));
        Assert.Empty(result.Errors);
        Assert.Equal(new ScenarioReader().Read(Files.DoorCar).Scenario!.ContentHash, result.Scenario!.ContentHash);
    }

    [Fact]
    public void ReadText_ByteOrderMark_IsAccepted() => Assert.Empty(new ScenarioReader().ReadText("\ufeff" + Files.DoorCarText, "x").Errors);

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    [InlineData('(')]
    public void ReadText_DeepNesting_IsRefused(char bracket) => Assert.NotEmpty(new ScenarioReader().ReadText("name: x\ncar: " + new string(bracket, 200_000), "x").Errors);

    [Fact]
    public void ReadText_DeepBlocks_AreRefused()
    {
        var text = new StringBuilder();
        for (int i = 0; i < 900; i++)
        {
            text.Append(' ', i).Append("a:\n");
        }

        Assert.Contains("levels of nesting", Assert.Single(new ScenarioReader().ReadText(text.ToString(), "x").Errors).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadText_AliasBomb_IsRefusedQuickly()
    {
        var text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++)
        {
            text.AppendLine(System.Globalization.CultureInfo.InvariantCulture, $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]");
        }

        IReadOnlyList<Diagnostic> errors = new ScenarioReader().ReadText(text.ToString(), "x").Errors;
        Assert.Contains(errors, error => error.Message.Contains("the alias `*a0`", StringComparison.Ordinal));
        Assert.Contains(errors, error => error.Message.Contains("the anchor `&a0`", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("name: !!str x", "the tag")]
    [InlineData("name: !thing x", "the tag")]
    [InlineData("name: x\n---\nname: y", "a second document")]
    [InlineData("42", "`42` where a scenario is due")]
    [InlineData("- name: x", "a list where a scenario is due")]
    [InlineData("? [a, b]\n: c", "a key that is not a word")]
    [InlineData("name: \"\\ud800\"", "")]
    [InlineData("name: a\u0007b", "control character U+0007")]
    [InlineData("name: \"\\e[31mred\"", "control character U+001B")]
    [InlineData("name: x\nrear: {linkage: {upper: {body: {holes: {\"\\x9b1\": 14 15 in}}}}}", "control character U+009B")]
    [InlineData("name: 'x", "")]
    [InlineData("name: {a: b", "")]
    [InlineData("name: x\n  y: z", "")]
    [InlineData("@", "")]
    [InlineData("%", "")]
    [InlineData("name: x\n\tcar: y", "a tab at the start")]
    [InlineData("name: x\ncar:\n\twheelbase: 105.5 in", "a tab at the start")]
    [InlineData("name: x\ncar:\n  wheelbase:105.5 in\n  cg_height: 21 in", "without a space after the colon")]
    public void ReadText_YamlThatIsNoScenario_IsRefused(string text, string says)
    {
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().ReadText(text, "x").Errors;
        Assert.Contains(errors, error => error.Message.Contains(says, StringComparison.Ordinal));
        Assert.All(errors, error => Assert.DoesNotContain('\ud800', error.ToString()));
    }

    [Fact]
    public void ReadText_LoneSurrogate_NamesThePlace()
    {
        // Not as inline data: attributes are kept in UTF-8, which has no half characters.
        Diagnostic error = Assert.Single(new ScenarioReader().ReadText("name: x\nnotes: a\ud800b\n", "x").Errors);
        Assert.Contains("half a character", error.Message, StringComparison.Ordinal);
        Assert.Equal((2, 9), (error.Line, error.Column));
    }

    [Fact]
    public void ReadText_ThousandsOfErrors_AreCountedNotListed()
    {
        string text = string.Concat(Enumerable.Range(0, 5000).Select(i => $"key{i}: x\n"));
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().ReadText(text, "x").Errors;
        Assert.InRange(errors.Count, 100, 201);
        Assert.Contains("more errors", errors[^1].Message, StringComparison.Ordinal);
    }

    private static void Says(string found, Func<Folder, string> write, string mend = "")
    {
        using var folder = new Folder();
        Diagnostic error = Assert.Single(new ScenarioReader().Read(write(folder)).Errors);
        Assert.Contains(found, error.Message, StringComparison.Ordinal);
        Assert.Contains(mend, error.Mend, StringComparison.Ordinal);
        Assert.Equal((1, 1), (error.Line, error.Column));
    }
}
