using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Text → tree of nodes. Refuses what the format does not use: tags, anchors, aliases, more than one document.</summary>
internal sealed class NodeReader
{
    /// <summary>The format itself is seven deep.</summary>
    private const int Deepest = 24;

    private readonly string _text;
    private readonly string _origin;
    private readonly Findings _findings;
    private readonly Parser _parser;
    private readonly string _wanted;

    private NodeReader(string text, string origin, Findings findings, string wanted)
    {
        _wanted = wanted;
        _text = text;
        _origin = origin;
        _findings = findings;
        _parser = new Parser(new StringReader(text));
    }

    /// <summary>The tree, or null when there is none; what is wrong goes into the findings.</summary>
    /// <param name="text">The text.</param>
    /// <param name="origin">What errors are to call it.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <param name="wanted">What an empty file should have held.</param>
    public static Node? Read(string text, string origin, Findings findings, string wanted = "a scenario: a name, then the car")
    {
        var reader = new NodeReader(text, origin, findings, wanted);
        try
        {
            return reader.ReadDocument();
        }
        catch (TooDeep)
        {
            return null;
        }
        catch (YamlException exception)
        {
            reader.Syntax(exception.Start, exception.Message);
            return null;
        }
        catch (Exception exception) when (exception is ArgumentException or InvalidOperationException or IndexOutOfRangeException or FormatException or OverflowException or NullReferenceException or InvalidCastException)
        {
            // The parser below is not ours, and some texts trip it in ways that it does not name.
            reader.Syntax(reader._parser.Current?.End ?? Mark.Empty, "it is not YAML");
            return null;
        }
    }

    private Node? ReadDocument()
    {
        _ = _parser.MoveNext();
        _ = _parser.MoveNext();
        if (_parser.Current is StreamEnd or null)
        {
            _findings.Error(new Place(_origin, 1, 1), "", "an empty file", _wanted, "begin from a shipped one");
            return null;
        }

        _ = _parser.MoveNext();
        Node root = ReadNode(0);
        _ = _parser.MoveNext();
        if (_parser.MoveNext() && _parser.Current is DocumentStart second)
        {
            _findings.Error(At(second.Start), "", "a second document", "one scenario a file", "put what follows `---` into a file of its own");
        }

        return root;
    }

    private Node ReadNode(int depth)
    {
        ParsingEvent here = _parser.Current!;
        Place place = At(here.Start);
        if (depth > Deepest)
        {
            _findings.Error(place, "", $"more than {Deepest} levels of nesting", "the levels of the format", "look for a bracket that was not closed");
            throw new TooDeep();
        }

        switch (here)
        {
            case AnchorAlias alias:
                _findings.Error(place, "", $"the alias `*{alias.Value}`", "values written out", "write the value itself here");
                return new ScalarNode(place, "", -1);
            case Scalar scalar:
                Refuse(scalar, place);
                return ReadScalar(scalar, place);
            case MappingStart mapping:
                Refuse(mapping, place);
                return ReadMap(mapping, place, depth);
            case SequenceStart sequence:
                Refuse(sequence, place);
                var items = new List<Node>();
                while (_parser.MoveNext() && _parser.Current is not SequenceEnd)
                {
                    items.Add(ReadNode(depth + 1));
                }

                return new ListNode(place, items);
            default:
                throw new YamlException(here.Start, here.End, "it ends where a value was due");
        }
    }

    private MapNode ReadMap(MappingStart mapping, Place place, int depth)
    {
        var entries = new List<KeyValuePair<ScalarNode, Node>>();
        var seen = new Dictionary<string, Place>(StringComparer.Ordinal);
        while (_parser.MoveNext() && _parser.Current is not MappingEnd)
        {
            Node key = ReadNode(depth + 1);
            _ = _parser.MoveNext();
            Node value = ReadNode(depth + 1);
            if (key is not ScalarNode name)
            {
                _findings.Error(key.Place, "", "a key that is not a word", "one word before the colon", "write the key as one word");
            }
            else if (!seen.TryAdd(name.Text, name.Place))
            {
                _findings.Error(name.Place, "", $"{Shown.Quoted(name.Text)} a second time", "each key once", $"keep one; the first is on line {seen[name.Text].Line}");
            }
            else
            {
                entries.Add(new(name, value));
            }
        }

        return new MapNode(place, entries, mapping.Style == MappingStyle.Flow);
    }

    private ScalarNode ReadScalar(Scalar scalar, Place place)
    {
        string text = scalar.Value;
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                _findings.Error(place, "", "half a character (a lone surrogate)", "whole characters", "retype the text");
                break;
            }
            else if (char.IsControl(text[i]) && text[i] is not ('\n' or '\r' or '\t'))
            {
                // Escapes in quotes make them out of plain text; names and notes are printed, and terminals obey.
                _findings.Error(place, "", $"the control character U+{(int)text[i]:X4}", "plain text", "take it away");
                break;
            }
        }

        bool asWritten = scalar.Start.Line == scalar.End.Line && scalar.Style is ScalarStyle.Plain or ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        return new ScalarNode(place, text, !asWritten ? -1 : scalar.Style == ScalarStyle.Plain ? 0 : 1);
    }

    private void Refuse(NodeEvent node, Place place)
    {
        if (!node.Tag.IsEmpty)
        {
            _findings.Error(place, "", $"the tag `{node.Tag}`", "plain values", "take the tag away: every value is read as it is written");
        }

        if (!node.Anchor.IsEmpty)
        {
            _findings.Error(place, "", $"the anchor `&{node.Anchor}`", "values written out", "take the anchor away, and write the value wherever it is needed");
        }
    }

    private void Syntax(Mark mark, string message)
    {
        Place place = At(mark);
        string[] lines = _text.Split('\n');
        string line = place.Line <= lines.Length ? lines[place.Line - 1] : "";
        (int At, string Text)? glued = null;
        for (int i = Math.Min(place.Line, lines.Length); i >= Math.Max(1, place.Line - 1) && glued is null; i--)
        {
            glued = GluedColon(lines[i - 1]) ? (i, lines[i - 1].Trim()) : null;
        }

        if (Tab(lines, place.Line, message) is { } tab)
        {
            _findings.Error(place with { Line = tab.Line, Column = tab.Column }, "", "a tab at the start of a line", "spaces there", "indent with spaces");
        }
        else if (glued is { } found)
        {
            _findings.Error(place with { Line = found.At, Column = 1 }, "", $"{Shown.Quoted(found.Text)} without a space after the colon", "`key: value`", "put a space after the colon");
        }
        else
        {
            string found2 = line.Trim().Length > 0 ? $"{Shown.Quoted(line)}, which does not read as YAML" : "a text that does not read as YAML";
            _findings.Error(place, "", $"{found2} ({Sentence(message)})", "`key: value` lines, each section indented below its name", "look at the indentation, and at quotes and braces that were not closed");
        }
    }

    private static (int Line, int Column)? Tab(string[] lines, int from, string message)
    {
        // The parser may name the place where the section began, not the tab's.
        int to = message.Contains("tab", StringComparison.OrdinalIgnoreCase) ? lines.Length : Math.Min(from, lines.Length);
        for (int i = from; i <= to; i++)
        {
            string line = lines[i - 1];
            int tab = line.IndexOf('\t', StringComparison.Ordinal);
            if (tab >= 0 && line.AsSpan(0, tab).Trim().Length == 0)
            {
                return (i, tab + 1);
            }
        }

        return null;
    }

    private static bool GluedColon(string line)
    {
        string text = line.Trim();
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && colon + 1 < text.Length && text[colon + 1] is not (' ' or '\t') && text[..colon].All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '.' or '[' or ']');
    }

    private static string Sentence(string message)
    {
        string text = message.Trim().TrimEnd('.');
        return text.Length == 0 ? "it is not YAML" : char.ToLowerInvariant(text[0]) + text[1..];
    }

    private Place At(Mark mark) => new(_origin, Math.Max(1, (int)Math.Min(int.MaxValue, mark.Line)), Math.Max(1, (int)Math.Min(int.MaxValue, mark.Column)));

    private sealed class TooDeep : Exception;
}
