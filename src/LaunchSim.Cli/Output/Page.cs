using System.Text;
using LaunchSim.Cli.Terminal;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace LaunchSim.Cli.Output;

/// <summary>
/// A report in lines, headings and tables. On a terminal lines are broken between words and headings stand out; elsewhere
/// each line is one line.
/// </summary>
/// <param name="screen">Where it is read.</param>
internal sealed class Page(Screen screen)
{
    // How far tables stand in.
    private const int Indent = 2;

    private readonly StringBuilder _text = new();

    /// <summary>An empty line.</summary>
    public Page Blank() => Raw("");

    /// <summary>A line, or a sentence that may be broken into several.</summary>
    /// <param name="text">The text.</param>
    /// <param name="indent">How far it stands in.</param>
    public Page Line(string text, int indent = 0) => screen.IsTerminal ? Written(new Text(text), indent) : Raw(new string(' ', indent) + text);

    /// <summary>What a report begins with, or the heading of a part.</summary>
    /// <param name="text">The text.</param>
    public Page Heading(string text) => screen.IsTerminal ? Written(new Text(text, new Style(decoration: Decoration.Bold)), 0) : Raw(text);

    /// <summary>A table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="keys">How many columns at the left tell a row from another; they come again where the table has to be parted.</param>
    public Page Table(TextTable table, int keys = 1)
    {
        if (!screen.IsTerminal)
        {
            return Plain(table);
        }

        bool further = false;
        foreach (Table part in table.Rendered(screen.Width - Indent, keys))
        {
            _ = (further ? Blank() : this).Written(part, Indent);
            further = true;
        }

        return this;
    }

    /// <summary>All of it.</summary>
    public override string ToString() => _text.ToString();

    private Page Plain(TextTable table)
    {
        foreach (string line in table.Lines())
        {
            _ = Raw(new string(' ', Indent) + line);
        }

        return this;
    }

    private Page Raw(string line)
    {
        _ = _text.Append(line).Append('\n');
        return this;
    }

    private Page Written(IRenderable content, int indent)
    {
        using var written = new StringWriter { NewLine = "\n" };
        screen.Console(written).Write(indent == 0 ? content : new Padder(content, new Padding(indent, 0, 0, 0)));

        // Some borders are blank lines; how far parts stand from each other is said by the page.
        foreach (string line in written.ToString().Split('\n').SkipWhile(string.IsNullOrWhiteSpace).Reverse().SkipWhile(string.IsNullOrWhiteSpace).Reverse())
        {
            _ = Raw(line.TrimEnd());
        }

        return this;
    }
}
