using System.Text.Json;
using Lidoff.Telling.Documents;

namespace Lidoff.Telling.Writing;

/// <summary>A document as JSON for other programs: the same tree, every node with its <c>"is"</c>, keys in fixed order.</summary>
public static class JsonDocumentWriter
{
    /// <summary>Writes the document as one value.</summary>
    public static void Write(Utf8JsonWriter json, Document document)
    {
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("title", document.Title);
        json.WriteString("notice", document.Notice);
        json.WriteStartArray("sections");
        foreach (var section in document.Sections)
        {
            json.WriteStartObject();
            json.WriteString("anchor", section.Anchor);
            json.WriteString("heading", section.Heading);
            Blocks(json, "blocks", section.Blocks);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Blocks(Utf8JsonWriter json, string key, IReadOnlyList<Block> blocks)
    {
        json.WriteStartArray(key);
        foreach (var block in blocks) Block(json, block);
        json.WriteEndArray();
    }

    private static void Block(Utf8JsonWriter json, Block block)
    {
        json.WriteStartObject();
        switch (block)
        {
            case Paragraph paragraph:
                json.WriteString("is", "paragraph");
                Inlines(json, "text", paragraph.Inlines);
                break;
            case Caution caution:
                json.WriteString("is", "caution");
                json.WriteString("text", caution.Text);
                break;
            case Listing listing:
                json.WriteString("is", "list");
                json.WriteStartArray("items");
                foreach (var item in listing.Items) Inlines(json, null, item);
                json.WriteEndArray();
                break;
            case Table table:
                json.WriteString("is", "table");
                json.WriteString("caption", table.Caption);
                json.WriteStartArray("headings");
                foreach (var heading in table.Headings) json.WriteStringValue(heading);
                json.WriteEndArray();
                json.WriteStartArray("rows");
                foreach (var row in table.Rows)
                {
                    json.WriteStartArray();
                    foreach (var cell in row) Inlines(json, null, cell);
                    json.WriteEndArray();
                }

                json.WriteEndArray();
                break;
            case Figure figure:
                json.WriteString("is", "figure");
                json.WriteString("anchor", figure.Anchor);
                json.WriteString("alternative", figure.Alternative);
                Inlines(json, "caption", figure.Caption);
                break;
            case Anchored anchored:
                json.WriteString("is", "because");
                json.WriteString("anchor", anchored.Anchor);
                json.WriteString("heading", anchored.Heading);
                Blocks(json, "blocks", anchored.Blocks);
                break;
            default:
                throw new InvalidOperationException("a block without a way to be written: " + block.GetType().Name);
        }

        json.WriteEndObject();
    }

    private static void Inlines(Utf8JsonWriter json, string? key, IReadOnlyList<Inline> inlines)
    {
        if (key is null) json.WriteStartArray();
        else json.WriteStartArray(key);
        foreach (var inline in inlines)
        {
            json.WriteStartObject();
            switch (inline)
            {
                case TextRun run:
                    json.WriteString("text", run.Text);
                    break;
                case MarkRun mark:
                    json.WriteString("mark", mark.Text);
                    break;
                case ValueRun value:
                    json.WriteString("value", value.Printed);
                    json.WriteString("grade", value.Grade.ToString());
                    json.WriteString("because", value.BecauseAnchor);
                    break;
                case LinkRun link:
                    json.WriteString("text", link.Text);
                    json.WriteString(link.Kind == LinkKind.Anchor ? "anchor" : "file", link.Target);
                    break;
                default:
                    throw new InvalidOperationException("an inline without a way to be written: " + inline.GetType().Name);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
