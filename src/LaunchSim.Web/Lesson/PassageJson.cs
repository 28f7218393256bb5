using System.Text.Json;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson;

/// <summary>
/// Chapters for the front end. A passage is an array: text stands as it is, a number as <c>{"n": key}</c>, a term as
/// <c>{"t": text}</c>, a source as <c>{"s": text}</c>, what is typed as <c>{"c": text}</c>.
/// </summary>
internal static class PassageJson
{
    /// <summary>Writes a chapter.</summary>
    /// <param name="json">The writer, within an array.</param>
    /// <param name="chapter">The chapter.</param>
    public static void Write(Utf8JsonWriter json, Chapter chapter)
    {
        json.WriteStartObject();
        json.WriteString("id", chapter.Id);
        json.WriteString("title", chapter.Title);
        Write(json, "blocks", chapter.Blocks);
        json.WriteEndObject();
    }

    /// <summary>Writes passages.</summary>
    /// <param name="json">The writer, within an object.</param>
    /// <param name="name">What they are called.</param>
    /// <param name="passages">The passages.</param>
    public static void Write(Utf8JsonWriter json, string name, IEnumerable<Passage> passages)
    {
        json.WriteStartArray(name);
        foreach (Passage passage in passages)
        {
            Write(json, passage);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, string name, IReadOnlyList<Block> blocks)
    {
        json.WriteStartArray(name);
        foreach (Block block in blocks)
        {
            Write(json, block);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Block block)
    {
        json.WriteStartObject();
        switch (block)
        {
            case Paragraph paragraph:
                json.WriteString("kind", "paragraph");
                Write(json, "text", paragraph.Text);
                break;
            case Heading heading:
                json.WriteString("kind", "heading");
                json.WriteString("title", heading.Text);
                break;
            case Points points:
                json.WriteString("kind", "points");
                Write(json, "points", points.Texts);
                break;
            case Note note:
                json.WriteString("kind", "note");
                json.WriteString("title", note.Title);
                Write(json, "texts", note.Texts);
                break;
            case Drawing drawing:
                json.WriteString("kind", "drawing");
                json.WriteString("name", drawing.Name);
                break;
            case Spread spread:
                json.WriteString("kind", "spread");
                Write(json, "blocks", spread.Text);
                json.WritePropertyName("beside");
                Write(json, spread.Beside);
                break;
            case Table table:
                json.WriteString("kind", "table");
                Write(json, "caption", table.Caption);
                Write(json, "columns", table.Columns);
                json.WriteStartArray("rows");
                foreach (Row row in table.Rows)
                {
                    json.WriteStartObject();
                    Write(json, "name", row.Name);
                    Write(json, "cells", row.Cells);
                    json.WriteBoolean("marked", row.IsMarked);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                break;
            case Question question:
                json.WriteString("kind", "question");
                Write(json, "asked", question.Asked);
                Write(json, "answer", question.Answer);
                Write(json, "choices", question.Choices);
                json.WriteNumber("right", question.Right);
                break;
            default:
                throw new InvalidOperationException($"There is no form for {block.GetType().Name}.");
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Passage passage)
    {
        json.WritePropertyName(name);
        Write(json, passage);
    }

    private static void Write(Utf8JsonWriter json, Passage passage)
    {
        json.WriteStartArray();
        foreach (object part in passage.Parts)
        {
            (string key, string text) = part switch
            {
                Shown number => ("n", number.Key),
                Term term => ("t", term.Text),
                Source source => ("s", source.Text),
                Typed typed => ("c", typed.Text),
                _ => ("", (string)part),
            };
            if (key.Length == 0)
            {
                json.WriteStringValue(text);
            }
            else
            {
                json.WriteStartObject();
                json.WriteString(key, text);
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }
}
