using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Drawing.Diagrams;
using Lidoff.Weighing.Blocks;

namespace Lidoff.Telling.Tests.Drawing.Diagrams;

public sealed class DiagramDrawingTests
{
    private static readonly EntryId Entry = new(new string('a', 64));

    private static readonly SupplyTree Chain = new(
        [new("BT1", SupplySort.Source, "pouch cell", null), new("U2", SupplySort.Converter, "buck", null), new("U1", SupplySort.Load, "radio", 1.802), new("U3", SupplySort.Load, "<script>alert(1)</script>", null)],
        [new("BT1", "U2", "VBAT", 3.7, "", false, Entry), new("U2", "U1", "V18", 1.8, "", false, Entry), new("U2", "U3", "V18", 1.8, "", true, Entry)],
        []);

    private static readonly Gen<(List<DiagramBox> Boxes, List<DiagramLink> Links)> Diagrams =
        from count in Gen.Int[1, 14]
        from words in Gen.String[Gen.Char["aMW%1 .…µ電"], 0, 40].List[count]
        from ends in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1], Gen.Int[0, 3]).List[0, 24]
        select (
            words.Select((text, i) => new DiagramBox("U" + (i + 1).ToString(CultureInfo.InvariantCulture), ["U" + (i + 1).ToString(CultureInfo.InvariantCulture), text], "diagram-box part")).ToList(),
            ends.Select(end => new DiagramLink($"U{end.Item1 + 1}", $"U{end.Item2 + 1}", end.Item3 == 0 ? "" : $"V{end.Item3}", "diagram-line supply", true)).ToList());

    [Fact]
    public void A_box_of_the_supply_bears_the_part_that_sits_there_as_a_block_does()
    {
        Assert.Contains(">ZX52832<", DiagramDrawing.Supply(Chain, spot => spot == "U1" ? "ZX52832" : "")!.Drawing.Body, StringComparison.Ordinal);
        Assert.DoesNotContain("ZX52832", DiagramDrawing.Supply(Chain)!.Drawing.Body, StringComparison.Ordinal);
    }

    [Fact]
    public void Boxes_never_overlap_and_every_one_is_placed_inside_the_drawing() => Diagrams.Sample(
        diagram =>
        {
            var placed = LayeredLayout.Place(diagram.Boxes, diagram.Links);
            Assert.Equal(diagram.Boxes.Select(box => box.Name).Order(StringComparer.Ordinal), placed.Boxes.Select(box => box.Box.Name).Order(StringComparer.Ordinal));
            foreach (var box in placed.Boxes)
            {
                Assert.True(box.X >= 0 && box.Y >= 0 && box.X + box.Width <= placed.Width && box.Y + box.Height <= placed.Height);
                Assert.DoesNotContain(placed.Boxes, other => other != box && box.X < other.X + other.Width && other.X < box.X + box.Width && box.Y < other.Y + other.Height && other.Y < box.Y + box.Height);
            }
        },
        iter: 300);

    [Fact]
    public void Lines_are_straight_end_at_their_boxes_and_cross_none() => Diagrams.Sample(
        diagram =>
        {
            var placed = LayeredLayout.Place(diagram.Boxes, diagram.Links);
            Assert.Equal(diagram.Links.Where(link => link.From != link.To).Distinct().Count(), placed.Links.Count);
            foreach (var line in placed.Links)
            {
                var (left, right) = line.Reversed ? (line.Link.To, line.Link.From) : (line.Link.From, line.Link.To);
                Assert.True(OnSide(placed.Boxes.Single(box => box.Box.Name == left), line.Corners[0], right: true));
                Assert.True(OnSide(placed.Boxes.Single(box => box.Box.Name == right), line.Corners[^1], right: false));
                foreach (var (a, b) in line.Corners.Zip(line.Corners.Skip(1)))
                {
                    Assert.True(a.X == b.X || a.Y == b.Y);
                    Assert.DoesNotContain(placed.Boxes, box =>
                        Math.Max(a.X, b.X) > box.X + 1e-9 && Math.Min(a.X, b.X) < box.X + box.Width - 1e-9 && Math.Max(a.Y, b.Y) > box.Y + 1e-9 && Math.Min(a.Y, b.Y) < box.Y + box.Height - 1e-9);
                }
            }
        },
        iter: 300);

    [Fact]
    public void Words_on_lines_lie_over_no_box_and_over_no_other_words() => Diagrams.Sample(
        diagram =>
        {
            var placed = LayeredLayout.Place(diagram.Boxes, [.. diagram.Links.Select(link => link with { Label = link.Label.Length > 0 ? link.Label + " 3.87 V" : "" })]);
            var words = placed.Links.DistinctBy(link => (link.Corners[0], link.Link.Label)).SelectMany(link => link.Label.Where(label => label.Length > 0).Select((label, i) => (
                X: link.Corners[0].X + 4, Y: link.Corners[0].Y + (i == 0 ? -3 - LayeredLayout.LabelSize : 1), Width: WordsWidth.Of(label, LayeredLayout.LabelSize)))).ToList();
            foreach (var (x, y, width) in words)
            {
                Assert.DoesNotContain(placed.Boxes, box => x < box.X + box.Width && box.X < x + width && y < box.Y + box.Height && box.Y < y + LayeredLayout.LabelSize);
                Assert.Single(words, other => x < other.X + other.Width && other.X < x + width && y < other.Y + LayeredLayout.LabelSize && other.Y < y + LayeredLayout.LabelSize);
            }
        },
        iter: 300);

    // A card at a window of 1440 px is 962 px wide; letters under 9.5 px are hard to read (common practice, no source).
    [Fact]
    public void A_long_chain_is_narrowed_until_it_can_be_read_on_a_card_and_no_number_of_a_part_is_cut()
    {
        const double Card = 962, Readable = 9.5;
        string[] parts = ["magnetic charging contact, plus", "BQ24040DSQR", "pouch cell under the main board", "TPS62740DSSR", "nRF52832", "memory for what was heard"];
        var boxes = parts.Select((part, i) => new DiagramBox($"U{i + 1}", [$"U{i + 1}", part, "what it is there for, in words"], "diagram-box part")).ToList();
        var links = Enumerable.Range(1, 5).Select(i => new DiagramLink($"U{i}", $"U{i + 1}", "VSYS 4.18 V", "diagram-line supply", true)).ToList();
        var placed = LayeredLayout.Place(boxes, links);
        Assert.True(LayeredLayout.LabelSize * Card / placed.Width >= Readable, $"{placed.Width} wide");
        Assert.All(placed.Boxes, box => Assert.Equal(box.Box.Words[1], string.Join(' ', box.Lines).Substring(3, box.Box.Words[1].Length)));
        Assert.All(placed.Links, link => Assert.Equal("VSYS 4.18 V", string.Join(' ', link.Label)));
        // A short one keeps its words on one line.
        Assert.All(LayeredLayout.Place(boxes[..2], links[..1]).Links, link => Assert.Single(link.Label));
    }

    [Fact]
    public void Boxes_that_nothing_joins_stand_in_rows_under_the_others()
    {
        var boxes = Enumerable.Range(1, 12).Select(i => new DiagramBox($"U{i}", [$"U{i}", "some part"], "diagram-box part")).ToList();
        var placed = LayeredLayout.Place(boxes, [new("U1", "U2", "", "diagram-line net", false)]);
        var (joined, alone) = (placed.Boxes.Where(box => box.Box.Name is "U1" or "U2").ToList(), placed.Boxes.Where(box => box.Box.Name is not ("U1" or "U2")).ToList());
        Assert.All(alone, box => Assert.True(box.Y > joined.Max(each => each.Y + each.Height)));
        Assert.Equal(2, alone.Select(box => box.Y).Distinct().Count());
        Assert.True(placed.Width <= LayeredLayout.Wanted);
        // In reading order.
        Assert.Equal(alone.Select(box => box.Box.Name), alone.OrderBy(box => box.Y).ThenBy(box => box.X).Select(box => box.Box.Name));
    }

    [Fact]
    public void The_order_in_which_boxes_and_lines_come_changes_nothing() => Diagrams.Sample(
        diagram =>
        {
            var placed = LayeredLayout.Place(diagram.Boxes, diagram.Links);
            diagram.Boxes.Reverse();
            diagram.Links.Reverse();
            Assert.Equal(placed, LayeredLayout.Place(diagram.Boxes, diagram.Links));
        },
        iter: 200);

    // Advance widths of DejaVu Sans in units of 2048 to the em, read from the table hmtx of the font file.
    [Theory]
    [InlineData("i", 569)]
    [InlineData("a", 1255)]
    [InlineData("m", 1995)]
    [InlineData("M", 1767)]
    [InlineData("W", 2025)]
    [InlineData("0", 1303)]
    [InlineData(" ", 651)]
    [InlineData("Ω", 1565)]
    [InlineData("µ", 1303)]
    [InlineData("%", 1946)]
    [InlineData("Q", 1612)]
    [InlineData("w", 1675)]
    [InlineData("…", 2048)]
    public void Words_are_never_taken_for_narrower_than_a_wide_face_sets_them(string text, int units) => Assert.True(WordsWidth.Of(text, 14) >= 14.0 * units / 2048);

    [Fact]
    public void A_long_role_goes_on_on_the_next_line_and_is_cut_only_at_the_last()
    {
        Assert.Equal(["short"], WordsWidth.Lines("short", 14, 200, 3));
        var lines = WordsWidth.Lines("magnetic charging contact, plus", 14, 200, 3);
        Assert.Equal("magnetic charging contact, plus", string.Join(' ', lines));
        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.True(WordsWidth.Of(line, 14) <= 200));
        var long20 = WordsWidth.Lines(string.Join(' ', Enumerable.Repeat("charging", 20)), 14, 200, 3);
        Assert.Equal(3, long20.Count);
        Assert.EndsWith("…", long20[2], StringComparison.Ordinal);
        Assert.EndsWith("…", Assert.Single(WordsWidth.Lines(new string('x', 500), 14, 200, 3)), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_are_too_wide_are_cut_and_say_so()
    {
        Assert.Equal("short", WordsWidth.Cut("short", 14, 200));
        var cut = WordsWidth.Cut(new string('x', 500), 14, 200);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.True(WordsWidth.Of(cut, 14) <= 200);
    }

    [Fact]
    public void The_supply_is_drawn_with_its_words_escaped_its_guess_marked_and_a_sentence_beside_it()
    {
        var drawn = DiagramDrawing.Supply(Chain)!;
        var svg = XDocument.Parse($"<svg>{drawn.Drawing.Body}</svg>").Root!;
        Assert.Equal(4, svg.Elements("rect").Count());
        Assert.Contains(svg.Elements("text"), text => text.Value.StartsWith("<script>alert", StringComparison.Ordinal));
        Assert.DoesNotContain("<script", drawn.Drawing.Body, StringComparison.Ordinal);
        Assert.Single(svg.Elements("text"), text => text.Value == "VBAT 3.7 V");
        Assert.Contains(svg.Elements("line"), line => line.Attribute("class")!.Value == "diagram-line supply guess");
        Assert.Equal("Supply: BT1 feeds U2 over VBAT 3.7 V; U2 feeds U1 over V18 1.8 V; U2 feeds U3 over V18 1.8 V, a guess.", drawn.Alternative);
        var x = drawn.Placed.Boxes.ToDictionary(box => box.Box.Name, box => box.X);
        Assert.True(x["BT1"] < x["U2"] && x["U2"] < x["U1"] && x["U1"] == x["U3"]);
        Assert.Equal(drawn.Drawing, DiagramDrawing.Supply(Chain)!.Drawing);
    }

    [Fact]
    public void Blocks_are_drawn_and_nothing_is_drawn_of_nothing()
    {
        BlockDiagram diagram = new(
            [new("I2C bus", BlockSort.Bus, "", ""), new("U1", BlockSort.Part, "radio", "nRF52832"), new("U3", BlockSort.Part, "clock", "")],
            [new("I2C bus", "U3", LineSort.Bus, ["I2C bus"], "0x52", false, [Entry]), new("U1", "I2C bus", LineSort.Bus, ["I2C bus"], "", true, [])]);
        Assert.Equal("Blocks: I2C bus is joined with U3 (0x52); U1 is joined with I2C bus, a guess.", DiagramDrawing.Blocks(diagram)!.Alternative);
        Assert.Null(DiagramDrawing.Blocks(new([], [])));
        Assert.Null(DiagramDrawing.Supply(new([], [], [])));
        Assert.Equal("Blocks: U1, nothing joined yet.", DiagramDrawing.Blocks(new([new("U1", BlockSort.Part, "", "")], []))!.Alternative);
    }

    private static bool OnSide(PlacedBox box, (double X, double Y) at, bool right) =>
        Math.Abs(at.X - (box.X + (right ? box.Width : 0))) < 1e-9 && at.Y > box.Y && at.Y < box.Y + box.Height;
}
