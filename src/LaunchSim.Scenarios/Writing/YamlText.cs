using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace LaunchSim.Scenarios.Writing;

/// <summary>A piece of a YAML text with where it stands in it, in characters from 0, for edits that leave all else as it is.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Behind its last character; of a section or list without braces, behind the last one of what is in it.</param>
internal abstract record YamlText(int Start, int End)
{
    /// <summary>The root of a text; null when it is none that edits can be made in.</summary>
    public static YamlText? Read(string text)
    {
        try
        {
            var parser = new Parser(new StringReader(text));
            _ = parser.Consume<StreamStart>();
            _ = parser.Consume<DocumentStart>();
            return Read(parser, text);
        }
        catch (YamlException)
        {
            return null;
        }
    }

    private static YamlText Read(Parser parser, string text)
    {
        switch (parser.Current)
        {
            case Scalar scalar:
                _ = parser.MoveNext();
                int from = (int)scalar.Start.Index;
                return new YamlScalarText(from, Trimmed(text, from, (int)scalar.End.Index), scalar.Value, scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded);
            case MappingStart map:
                return ReadMap(parser, text, map);
            case SequenceStart list:
                return ReadList(parser, text, list);
            default:
                throw new YamlException("not a value");
        }
    }

    private static YamlMapText ReadMap(Parser parser, string text, MappingStart start)
    {
        bool braces = start.Style == MappingStyle.Flow;
        var entries = new List<(YamlScalarText Key, YamlText Value)>();
        int end = (int)start.End.Index;
        _ = parser.MoveNext();
        while (parser.Current is not MappingEnd)
        {
            YamlText key = Read(parser, text), value = Read(parser, text);
            entries.Add((key as YamlScalarText ?? throw new YamlException("a key that is no word"), value));
            end = Math.Max(value.End, key.End);
        }

        end = braces ? Behind(text, end, '}') : end;
        _ = parser.MoveNext();
        return new YamlMapText((int)start.Start.Index, end, braces, entries);
    }

    private static YamlListText ReadList(Parser parser, string text, SequenceStart start)
    {
        bool braces = start.Style == SequenceStyle.Flow;
        var items = new List<YamlText>();
        int end = (int)start.End.Index;
        _ = parser.MoveNext();
        while (parser.Current is not SequenceEnd)
        {
            items.Add(Read(parser, text));
            end = items[^1].End;
        }

        end = braces ? Behind(text, end, ']') : end;
        _ = parser.MoveNext();
        return new YamlListText((int)start.Start.Index, end, braces, items);
    }

    // Between the last value and the closing bracket there is nothing but blanks, a comma and comments, in which brackets do not count.
    private static int Behind(string text, int from, char closing)
    {
        bool comment = false;
        for (int at = from; at < text.Length; at++)
        {
            comment = text[at] == '#' || (comment && text[at] != '\n');
            if (!comment && text[at] == closing)
            {
                return at + 1;
            }
        }

        return text.Length;
    }

    // The end of some values is told as the start of what comes next.
    private static int Trimmed(string text, int from, int to)
    {
        to = Math.Min(to, text.Length);
        while (to > from && char.IsWhiteSpace(text[to - 1]))
        {
            to--;
        }

        return to;
    }
}

/// <summary>A value or a key.</summary>
internal sealed record YamlScalarText(int Start, int End, string Value, bool IsBlock) : YamlText(Start, End);

/// <summary>A section.</summary>
internal sealed record YamlMapText(int Start, int End, bool InBraces, IReadOnlyList<(YamlScalarText Key, YamlText Value)> Entries) : YamlText(Start, End)
{
    public int IndexOf(string key)
    {
        for (int i = 0; i < Entries.Count; i++)
        {
            if (Entries[i].Key.Value == key)
            {
                return i;
            }
        }

        return -1;
    }
}

/// <summary>A list.</summary>
internal sealed record YamlListText(int Start, int End, bool InBraces, IReadOnlyList<YamlText> Items) : YamlText(Start, End);
