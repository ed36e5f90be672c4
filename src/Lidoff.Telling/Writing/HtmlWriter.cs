using System.Globalization;
using System.Text;
using Lidoff.Evidence.Grading;
using Lidoff.Telling.Documents;

namespace Lidoff.Telling.Writing;

/// <summary>
/// A document as one HTML file that fetches nothing from outside its own folder: style inside, no script, a policy that says
/// so. Same document, same bytes.
/// </summary>
public static class HtmlWriter
{
    /// <summary>The whole file.</summary>
    public static string Write(Document document)
    {
        var html = new StringBuilder();
        html.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src 'self' data:; style-src 'unsafe-inline'\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<meta name=\"referrer\" content=\"no-referrer\">\n")
            .Append("<title>").Append(Escaping.Html(document.Title)).Append("</title>\n<style>\n").Append(ReportStyle.Css).Append("</style>\n</head>\n<body>\n")
            .Append("<header><h1>").Append(Escaping.Html(document.Title)).Append("</h1>");
        if (document.Notice.Length > 0) html.Append("<p class=\"notice\">").Append(Escaping.Html(document.Notice)).Append("</p>");
        html.Append("</header>\n<nav aria-label=\"Sections\"><ul>\n");
        foreach (var section in document.Sections)
        {
            html.Append("<li><a href=\"#").Append(section.Anchor).Append("\">").Append(Escaping.Html(section.Heading)).Append("</a></li>\n");
        }

        html.Append("</ul></nav>\n<main>\n");
        foreach (var section in document.Sections)
        {
            html.Append("<section id=\"").Append(section.Anchor).Append("\"><h2>").Append(Escaping.Html(section.Heading)).Append("</h2>\n");
            foreach (var block in section.Blocks) Write(html, block);
            html.Append("</section>\n");
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static void Write(StringBuilder html, Block block)
    {
        switch (block)
        {
            case Paragraph paragraph:
                html.Append("<p>");
                Write(html, paragraph.Inlines);
                html.Append("</p>\n");
                break;
            case Caution caution:
                html.Append("<p class=\"caution\"><strong>Caution.</strong> ").Append(Escaping.Html(caution.Text)).Append("</p>\n");
                break;
            case Listing listing:
                html.Append("<ul>\n");
                foreach (var item in listing.Items)
                {
                    html.Append("<li>");
                    Write(html, item);
                    html.Append("</li>\n");
                }

                html.Append("</ul>\n");
                break;
            case Table table:
                Write(html, table);
                break;
            case Figure figure:
                html.Append("<figure id=\"").Append(figure.Anchor).Append("\"><svg role=\"img\" aria-label=\"").Append(Escaping.Html(figure.Alternative))
                    .Append(CultureInfo.InvariantCulture, $"\" viewBox=\"0 0 {figure.Drawing.Width:0.###} {figure.Drawing.Height:0.###}\" width=\"{figure.Drawing.Width:0.###}\">").Append(figure.Drawing.Body).Append("</svg>\n<figcaption>");
                Write(html, figure.Caption);
                html.Append("</figcaption></figure>\n");
                break;
            case Anchored anchored:
                html.Append("<div class=\"because\" id=\"").Append(anchored.Anchor).Append("\"><h3>").Append(Escaping.Html(anchored.Heading)).Append("</h3>\n");
                foreach (var inner in anchored.Blocks) Write(html, inner);
                html.Append("</div>\n");
                break;
            default:
                throw new InvalidOperationException("a block without a way to be written: " + block.GetType().Name);
        }
    }

    private static void Write(StringBuilder html, Table table)
    {
        html.Append("<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"").Append(Escaping.Html(table.Caption)).Append("\"><table><caption>")
            .Append(Escaping.Html(table.Caption)).Append("</caption><thead><tr>");
        for (var column = 0; column < table.Headings.Count; column++)
        {
            html.Append("<th scope=\"col\"").Append(NumberClass(table, column)).Append('>').Append(Escaping.Html(table.Headings[column])).Append("</th>");
        }

        html.Append("</tr></thead><tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var column = 0; column < row.Count; column++)
            {
                // On a narrow page a row stands as a list, each cell under its heading.
                html.Append("<td").Append(NumberClass(table, column)).Append(" data-h=\"").Append(Escaping.Html(table.Headings[column])).Append("\">");
                Write(html, row[column]);
                html.Append("</td>");
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody></table></div>\n");
    }

    private static string NumberClass(Table table, int column) => table.NumberColumns.Contains(column) ? " class=\"n\"" : "";

    private static void Write(StringBuilder html, IReadOnlyList<Inline> inlines)
    {
        foreach (var inline in inlines)
        {
            switch (inline)
            {
                case TextRun run:
                    html.Append(Escaping.Html(run.Text));
                    break;
                case MarkRun mark:
                    html.Append("<bdi class=\"mark\">").Append(Escaping.Html(mark.Text)).Append("</bdi>");
                    break;
                case ValueRun value:
                    html.Append("<a class=\"value\" href=\"#").Append(value.BecauseAnchor).Append("\">").Append(Escaping.Html(value.Printed))
                        .Append("</a> <abbr class=\"grade\" title=\"").Append(Grades.Says(value.Grade)).Append("\">").Append(value.Grade.ToString()).Append("</abbr>");
                    break;
                case LinkRun link:
                    html.Append("<a href=\"").Append(link.Kind == LinkKind.Anchor ? "#" + Escaping.Html(link.Target) : Escaping.RelativeFile(link.Target)).Append("\">")
                        .Append(Escaping.Html(link.Text)).Append("</a>");
                    break;
                default:
                    throw new InvalidOperationException("an inline without a way to be written: " + inline.GetType().Name);
            }
        }
    }
}
