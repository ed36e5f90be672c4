using System.Text;
using Lidoff.Telling.Documents;

namespace Lidoff.Telling.Writing;

/// <summary>A document as Markdown for a notebook or a repository: no raw HTML, every foreign character escaped, figures by their captions.</summary>
public static class MarkdownWriter
{
    /// <summary>The whole file.</summary>
    public static string Write(Document document)
    {
        var text = new StringBuilder("# ").Append(Escaping.Markdown(document.Title)).Append("\n\n");
        if (document.Notice.Length > 0) text.Append("> ").Append(Escaping.Markdown(document.Notice)).Append("\n\n");
        foreach (var section in document.Sections)
        {
            text.Append("## ").Append(Escaping.Markdown(section.Heading)).Append("\n\n");
            foreach (var block in section.Blocks) Write(text, block);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, Block block)
    {
        switch (block)
        {
            case Paragraph paragraph:
                text.Append(Line(paragraph.Inlines)).Append("\n\n");
                break;
            case Caution caution:
                text.Append("> **Caution.** ").Append(Escaping.Markdown(caution.Text)).Append("\n\n");
                break;
            case Listing listing:
                foreach (var item in listing.Items) text.Append("- ").Append(Line(item)).Append('\n');
                text.Append('\n');
                break;
            case Table table:
                text.Append(Escaping.Markdown(table.Caption)).Append("\n\n| ").AppendJoin(" | ", table.Headings.Select(Escaping.Markdown)).Append(" |\n|")
                    .AppendJoin('|', table.Headings.Select((_, column) => table.NumberColumns.Contains(column) ? "--:" : "---")).Append("|\n");
                foreach (var row in table.Rows) text.Append("| ").AppendJoin(" | ", row.Select(cell => Line(cell).Replace('\n', ' '))).Append(" |\n");
                text.Append('\n');
                break;
            case Figure figure:
                text.Append("*Figure:* ").Append(Line(figure.Caption)).Append("\n\n");
                break;
            case Anchored anchored:
                text.Append("### ").Append(Escaping.Markdown(anchored.Heading)).Append("\n\n");
                foreach (var inner in anchored.Blocks) Write(text, inner);
                break;
            default:
                throw new InvalidOperationException("a block without a way to be written: " + block.GetType().Name);
        }
    }

    private static string Line(IReadOnlyList<Inline> inlines)
    {
        var text = new StringBuilder();
        foreach (var inline in inlines)
        {
            text.Append(inline switch
            {
                TextRun run => Escaping.Markdown(run.Text),
                MarkRun mark => "**" + Escaping.Markdown(mark.Text) + "**",
                ValueRun value => $"**{Escaping.Markdown(value.Printed)}** ({value.Grade})",
                LinkRun { Kind: LinkKind.File } link => $"[{Escaping.Markdown(link.Text)}]({Escaping.RelativeFile(link.Target)})",
                LinkRun link => Escaping.Markdown(link.Text),
                _ => throw new InvalidOperationException("an inline without a way to be written: " + inline.GetType().Name),
            });
        }

        return text.ToString();
    }
}
