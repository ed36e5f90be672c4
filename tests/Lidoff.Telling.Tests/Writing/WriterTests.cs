using System.Text;
using System.Text.Json;
using Lidoff.Evidence.Grading;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Drawing;
using Lidoff.Telling.Drawing.Labelling;
using Lidoff.Telling.Writing;

namespace Lidoff.Telling.Tests.Writing;

public sealed class WriterTests
{
    private const string Hostile = "<script>alert(1)</script> \"x\" & \u202Egnp.exe";

    private static readonly Document Everything = new(
        "Report " + Hostile,
        "All of this is invented.",
        [
            new Section("one", "First " + Hostile,
            [
                Paragraph.Of(Hostile),
                new Caution("Cells burn."),
                new Listing([[new TextRun("item")], [new MarkRun("N5\u06602<b>")]]),
                new Table("Lengths", ["what", "value"], [[[new TextRun("side")], [new ValueRun("3.2 mm", Grade.E3, "because-1")]]], new HashSet<int> { 1 }),
                new Figure("figure-1", new SvgPen(200, 50).Picture("pictures/../../etc/pass wd.jpg").Labels(LabelLayout.Of(100, 50, [new(Hostile, new(10, 10), 20, 8)], 5), 5).ScaleBar(20, "1 mm", 5).Drawing, "A board " + Hostile, [new TextRun("The board")]),
                new Anchored("because-1", "Why 3.2 mm", [new Paragraph([new LinkRun("the picture", "pictures/a b.jpg", LinkKind.File), new LinkRun("up", "one", LinkKind.Anchor)])]),
            ]),
        ]);

    [Fact]
    public void Html_escapes_all_foreign_text_and_shows_what_would_reorder_it()
    {
        var html = HtmlWriter.Write(Everything);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\u202E', html);
        Assert.Contains("[U+202E]", html, StringComparison.Ordinal);
        Assert.Contains("<bdi class=\"mark\">N5", html, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"http", html, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_value_leads_to_an_anchor_that_is_there_once()
    {
        var html = HtmlWriter.Write(Everything);
        Assert.Equal(2, html.Split("id=\"because-1\"").Length);
        Assert.Contains("href=\"#because-1\"", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pictures/a b.jpg", "pictures/a%20b.jpg")]
    [InlineData("../../etc/passwd", "etc/passwd")]
    [InlineData("/etc/passwd", "etc/passwd")]
    [InlineData("a/./b?c#d", "a/b%3Fc%23d")]
    [InlineData("javascript:alert(1)", "javascript%3Aalert%281%29")]
    public void No_file_name_leads_out_of_the_folder(string name, string expected) => Assert.Equal(expected, Escaping.RelativeFile(name));

    [Fact]
    public void Markdown_keeps_no_live_markup_of_foreign_text()
    {
        var text = MarkdownWriter.Write(Everything);
        Assert.DoesNotContain("<script", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("**3.2 mm** (E3)", text, StringComparison.Ordinal);
        Assert.Contains("| what | value |\n|---|--:|", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_holds_the_same_tree()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream)) JsonDocumentWriter.Write(json, Everything);
        using var read = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));
        var kinds = read.RootElement.GetProperty("sections")[0].GetProperty("blocks").EnumerateArray().Select(block => block.GetProperty("is").GetString());
        Assert.Equal(["paragraph", "caution", "list", "table", "figure", "because"], kinds);
        Assert.Equal("because-1", read.RootElement.GetProperty("sections")[0].GetProperty("blocks")[3].GetProperty("rows")[0][1][0].GetProperty("because").GetString());
    }

    [Fact]
    public void The_same_document_has_the_same_bytes()
    {
        Assert.Equal(HtmlWriter.Write(Everything), HtmlWriter.Write(Everything with { }));
        Assert.Equal(MarkdownWriter.Write(Everything), MarkdownWriter.Write(Everything with { }));
    }
}
