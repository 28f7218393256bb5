using System.Text;
using System.Text.RegularExpressions;
using LaunchSim.Figures;
using LaunchSim.Launch;

namespace LaunchSim.Cli.Tests;

/// <summary>
/// The pages for readers stay true. Tables in docs/model.md that come out of the code are committed: after a change of a
/// figure or a column, run the tests once with LAUNCHSIM_WRITE_GENERATED=1 and commit what they wrote.
/// </summary>
public sealed partial class DocumentTests
{
    private static readonly string[] Pages =
        ["README.md", "DEVELOPERS.md",
        .. Directory.EnumerateDirectories(Path.Combine(Files.Root, "src")).Where(folder => File.Exists(Path.Combine(folder, "README.md"))).Select(folder => $"src/{Path.GetFileName(folder)}/README.md"),
        .. Directory.EnumerateFiles(Path.Combine(Files.Root, "docs"), "*.md").Select(path => "docs/" + Path.GetFileName(path))];

    public static TheoryData<string> AllPages { get; } = [.. Pages];

    [Fact]
    public void ModelPage_FigureTables_EqualTheCatalog()
    {
        var text = new StringBuilder();
        foreach (IFigureFamily family in FigureCatalog.For(1).Families)
        {
            text.Append($"\n**{family.Title}**\n\n| key | what |\n|---|---|\n");
            foreach (FigureDefinition figure in family.Definitions)
            {
                string key = figure.Key.Replace("mark_1_", "mark_N_", StringComparison.Ordinal);
                text.Append($"| `{key}` | {Cell(figure.Description)} |\n");
            }
        }

        Same("figures", text.ToString());
    }

    [Fact]
    public void ModelPage_ColumnTable_EqualsTheTrace()
    {
        var text = new StringBuilder("\n| column | what |\n|---|---|\n");
        foreach (TraceColumn column in TraceColumns.All)
        {
            text.Append($"| `{column.Name}` | {Cell(column.Description)} |\n");
        }

        Same("columns", text.ToString());
    }

    /// <summary>The scenarios' table in the README names every shipped file and no other.</summary>
    [Fact]
    public void Readme_ExampleTable_NamesTheShippedScenarios()
    {
        string readme = Read("README.md");
        string table = readme[readme.IndexOf("| file in `scenarios/`", StringComparison.Ordinal)..];
        string[] rows = [.. table.Split('\n').Skip(2).TakeWhile(line => line.StartsWith('|'))];
        string[] named = [.. rows.SelectMany(row => Code().Matches(row.Split('|')[1]).Select(match => match.Groups[1].Value)).Order(StringComparer.Ordinal)];
        string[] shipped = [.. Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)!).Order(StringComparer.Ordinal)];
        Assert.Equal(shipped, named);
    }

    /// <summary>What the README explains line by line is what the program prints, to the letter.</summary>
    [Fact]
    public void Readme_PastedOutput_IsWhatTheProgramPrints()
    {
        string printed = Printed.By("run", Files.DoorCar).Output;
        string[] blocks = [.. TextBlock().Matches(Read("README.md")).Select(match => match.Groups[1].Value)];
        Assert.NotEmpty(blocks);
        foreach (string line in blocks.SelectMany(block => block.Split('\n', StringSplitOptions.RemoveEmptyEntries)))
        {
            Assert.Contains(line, printed, StringComparison.Ordinal);
        }
    }

    /// <summary>The part file that the README begins with is enough for the geometry.</summary>
    [Fact]
    public void Readme_PartFile_IsEnoughForGeometry()
    {
        using var folder = new Folder();
        string part = YamlBlock().Match(Read("README.md")).Groups[1].Value;
        Printed printed = Printed.By("geometry", folder.Write("my-car.yaml", part));
        Assert.True(printed.Code == 0, printed.Error);
    }

    [Theory]
    [MemberData(nameof(AllPages))]
    public void Page_Links_LeadToFilesAndHeadings(string page)
    {
        string folder = Path.GetDirectoryName(Path.Combine(Files.Root, page))!;
        foreach (string link in Link().Matches(Read(page)).Select(match => match.Groups[1].Value).Where(link => !link.Contains("://", StringComparison.Ordinal)))
        {
            string[] parts = link.Split('#');
            string target = parts[0].Length == 0 ? Path.Combine(Files.Root, page) : Path.Combine(folder, parts[0]);
            Assert.True(Path.Exists(target), $"{page}: {link}");
            if (parts.Length > 1)
            {
                Assert.Contains(parts[1], File.ReadLines(target).Where(line => line.StartsWith('#')).Select(Anchor));
            }
        }
    }

    private static string Anchor(string heading) =>
        NotInAnchor().Replace(heading.TrimStart('#').Trim().ToLowerInvariant(), "").Replace(' ', '-');

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    private static string Read(string page) => File.ReadAllText(Path.Combine(Files.Root, page));

    private static void Same(string name, string generated)
    {
        string path = Path.Combine(Files.Root, "docs", "model.md"), page = File.ReadAllText(path);
        string begin = $"<!-- {name} -->\n", end = $"<!-- end of {name} -->";
        int from = page.IndexOf(begin, StringComparison.Ordinal) + begin.Length, to = page.IndexOf(end, StringComparison.Ordinal);
        Assert.True(from >= begin.Length && to >= from, $"docs/model.md has no place for {name}");
        string wanted = generated + "\n";
        if (Environment.GetEnvironmentVariable("LAUNCHSIM_WRITE_GENERATED") == "1")
        {
            File.WriteAllText(path, page[..from] + wanted + page[to..]);
            return;
        }

        Assert.Equal(wanted, page[from..to]);
    }

    [GeneratedRegex("`([a-z-]+)`")]
    private static partial Regex Code();

    [GeneratedRegex("```text\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex TextBlock();

    [GeneratedRegex("```yaml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex YamlBlock();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[^\p{L}\p{N} _-]")]
    private static partial Regex NotInAnchor();
}
