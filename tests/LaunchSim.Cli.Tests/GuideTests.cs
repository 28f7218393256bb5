using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using SkiaSharp;

namespace LaunchSim.Cli.Tests;

/// <summary>
/// The guide is one session at a terminal, from the first page to the last: every command in it is run, what it shows of
/// the output is what is printed, and every picture is the one that a command drew. After a change of what is printed or
/// drawn, run this test once with LAUNCHSIM_WRITE_GENERATED=1, look at the pages, and commit them.
/// </summary>
public sealed partial class GuideTests
{
    // Another processor may round a curve's edge to the neighbouring shade.
    private const int SameShade = 48;
    private const double FewPixels = 0.002;

    private static readonly bool Writes = Environment.GetEnvironmentVariable("LAUNCHSIM_WRITE_GENERATED") == "1";
    private static readonly string Guide = Path.Combine(Files.Root, "docs", "guide");

    [Fact]
    public void Guide_FromFirstPageToLast_IsWhatTheProgramDoes()
    {
        using var folder = new Folder();
        string[] pages = [.. Directory.EnumerateFiles(Guide, "*.md").OrderBy(Number)];
        Assert.True(pages.Length > 6);
        int commands = 0;
        foreach (string page in pages)
        {
            commands += Walk(page, folder);
        }

        Assert.True(commands > 10, $"{commands} commands in the guide");
    }

    private static int Number(string page) => int.Parse(Path.GetFileName(page).Split('-')[0], CultureInfo.InvariantCulture);

    private static int Walk(string page, Folder folder)
    {
        string[] lines = File.ReadAllLines(page);
        var rewritten = new List<string>();
        string[] output = [];
        string? file = null, shows = null;
        int commands = 0;
        for (int i = 0; i < lines.Length; i++)
        {
            rewritten.Add(lines[i]);
            if (Marker().Match(lines[i]) is { Success: true } marker)
            {
                string what = marker.Groups[2].Value;
                (file, shows) = marker.Groups[1].Value == "file" ? (what, default(string)) : (default(string), what);
            }
            else if (lines[i].StartsWith("```", StringComparison.Ordinal))
            {
                int end = Array.FindIndex(lines, i + 1, line => line == "```");
                Assert.True(end > i, $"{page}:{i + 1}: a block that does not end");
                string[] block = lines[(i + 1)..end];
                string where = $"{Path.GetFileName(page)}:{i + 1}";
                if (lines[i] == "```sh")
                {
                    foreach (string command in Commands(block))
                    {
                        output = Run(command, folder, where);
                        commands++;
                    }
                }
                else if (file is not null)
                {
                    _ = folder.Write(file, string.Join('\n', block) + "\n");
                }
                else if (shows is not null)
                {
                    block = Shown(output, shows, block, where);
                }

                rewritten.AddRange(block);
                rewritten.Add("```");
                (i, file, shows) = (end, null, null);
            }

            foreach (Match picture in Picture().Matches(lines[i]))
            {
                Compare(folder.Path(picture.Groups[1].Value), Path.Combine(Guide, "pictures", picture.Groups[1].Value), page);
            }
        }

        if (Writes)
        {
            File.WriteAllText(page, string.Join('\n', rewritten) + "\n");
        }

        return commands;
    }

    private static IEnumerable<string> Commands(string[] block) =>
        string.Join('\n', block).Replace("\\\n", " ", StringComparison.Ordinal).Split('\n').Where(line => line.StartsWith("launchsim ", StringComparison.Ordinal));

    private static string[] Run(string command, Folder folder, string where)
    {
        string[] words = [.. Word().Matches(command).Skip(1).Select(match => match.Value.Trim('"'))];
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [typeof(App).Assembly.Location, .. words])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder.At,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        })!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{where}: {command}: exit {process.ExitCode.ToString(CultureInfo.InvariantCulture)}: {error.Result}");

        return (output + error.Result).TrimEnd('\n').Split('\n');
    }

    private static string[] Shown(string[] output, string shows, string[] block, string where)
    {
        var wanted = new List<string>();
        foreach (string part in shows == "all" ? ["1-" + output.Length.ToString(CultureInfo.InvariantCulture)] : shows.Split(", "))
        {
            int[] ends = [.. part.Split('-').Select(number => int.Parse(number, CultureInfo.InvariantCulture))];
            if (wanted.Count > 0)
            {
                wanted.Add("…");
            }

            Assert.True(ends[0] >= 1 && ends[^1] <= output.Length, $"{where}: the output has {output.Length} lines:\n{string.Join('\n', output)}");
            wanted.AddRange(output[(ends[0] - 1)..ends[^1]]);
        }

        // A sentence that is too long for a page is broken between words; a table's row stays whole.
        string[] broken = [.. wanted.SelectMany(Broken)];
        if (!Writes)
        {
            Assert.Equal(string.Join('\n', broken), string.Join('\n', block));
        }

        return broken;
    }

    private static IEnumerable<string> Broken(string line)
    {
        const int Width = 110;
        string indent = new(' ', line.Length - line.TrimStart().Length + 2);
        while (!line.TrimStart().Contains("  ", StringComparison.Ordinal) && line.Length > Width && line.LastIndexOf(' ', Width) is var at && at > indent.Length)
        {
            yield return line[..at];
            line = indent + line[(at + 1)..];
        }

        yield return line;
    }

    private static void Compare(string drawn, string committed, string page)
    {
        Assert.True(File.Exists(drawn), $"{page}: no command drew {Path.GetFileName(drawn)}");
        if (Writes)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(committed)!);
            File.Copy(drawn, committed, overwrite: true);
            return;
        }

        Assert.True(File.Exists(committed), $"{committed} is not there: write it with LAUNCHSIM_WRITE_GENERATED=1");
        using var one = SKBitmap.Decode(drawn);
        using var other = SKBitmap.Decode(committed);
        Assert.Equal((one.Width, one.Height), (other.Width, other.Height));
        ReadOnlySpan<byte> a = one.GetPixelSpan(), b = other.GetPixelSpan();
        int different = 0;
        for (int i = 0; i < a.Length; i++)
        {
            different += Math.Abs(a[i] - b[i]) > SameShade ? 1 : 0;
        }

        Assert.True(different < FewPixels * a.Length, $"{Path.GetFileName(committed)} is no longer what is drawn: {different} of {a.Length} samples differ");
    }

    [GeneratedRegex("^<!-- (file|shows): (.+) -->$")]
    private static partial Regex Marker();

    [GeneratedRegex(@"\]\(pictures/([^)/]+)\)")]
    private static partial Regex Picture();

    [GeneratedRegex("\"[^\"]*\"|[^\\s\"]+")]
    private static partial Regex Word();
}
