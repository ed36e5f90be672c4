using System.Text;
using System.Text.Json;
using Lidoff.Bench.Rooms.See;
using Lidoff.Bench.Rooms.See.Typed;
using Lidoff.Bench.Working;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class MarkTypedTests
{
    [Theory]
    [InlineData("N52832/QFAA?0", "N52832", "QFAA?0")]
    [InlineData("N5 832", "N5?832")]
    [InlineData("A//B", "A/B")]
    [InlineData("A||B", "A|B")]
    [InlineData("MAX*/?", "MAX*", "?")]
    [InlineData("/A/", "A")]
    [InlineData("A??B", "A??B")]
    [InlineData("A__B", "A_B")]
    public void A_line_without_alternatives_is_stored_as_it_was_typed(string typed, params string[] lines) =>
        Assert.Equal(lines, Stored(typed).Lines.Select(line => line.Text));

    [Fact]
    public void Alternatives_are_kept_place_by_place()
    {
        var mark = Stored("N5|S2/LOT");
        Assert.Equal(["N?2", "LOT"], mark.Lines.Select(line => line.Text));
        Assert.Equal([new MarkGlyph("5", 0.475), new MarkGlyph("S", 0.475)], mark.Lines[0].Places[1].Top);
        Assert.Equal([new MarkGlyph("N", 0.95)], mark.Lines[0].Places[0].Top);
        Assert.False(mark.Lines[1].IsLattice);
    }

    [Theory]
    [InlineData("N5|S2/LOT")]
    [InlineData("CIAAE|B0")]
    [InlineData("8|_2_")]
    [InlineData("8|B|6?")]
    [InlineData("A|||B0")]
    [InlineData("8|BX//Y")]
    public void What_was_typed_is_shown_again_as_it_was_typed(string typed) => Assert.Equal(typed, Stored(typed).Written);

    [Fact]
    public void By_order_each_next_is_half_as_likely_as_the_one_before()
    {
        var places = Stored("8|B|6?", byOrder: true).Lines[0].Places;
        Assert.Equal(["8", "B", "6"], places[0].Top.Select(glyph => glyph.Character));
        // 0.95 shared as 4 : 2 : 1, worked by hand: 0.542857, 0.271429, 0.135714.
        Assert.Equal([0.5429, 0.2714, 0.1357], places[0].Top.Select(glyph => glyph.P));
        Assert.Empty(places[1].Top);
    }

    [Fact]
    public void Maybe_nothing_is_one_of_the_alternatives_of_a_place()
    {
        var places = Stored("8|_2_").Lines[0].Places;
        Assert.Equal([new MarkGlyph("8", 0.475), new MarkGlyph("", 0.475)], places[0].Top);
        // Alone: as likely nothing as something nobody could read.
        Assert.Equal([new MarkGlyph("", 0.5)], places[2].Top);
        Assert.Equal(places[2], Stored("8|_2?|_").Lines[0].Places[2]);
        Assert.Equal("?2?", Stored("8|_2_").Text);
    }

    [Fact]
    public void What_cannot_be_a_mark_is_said()
    {
        Assert.Equal(["Type what stands there, with ? for what cannot be read."], MarkTyped.Read("  ").Faults.Select(fault => fault.Say));
        Assert.Equal(["Type what stands there, with ? for what cannot be read."], MarkTyped.Read("/").Faults.Select(fault => fault.Say));
        Assert.Equal(["A | stands between two characters that may be meant, as in 8|B; write || for the sign itself."], MarkTyped.Read("|A").Faults.Select(fault => fault.Say));
        Assert.Equal(["A | stands between two characters that may be meant, as in 8|B; write || for the sign itself."], MarkTyped.Read("A|").Faults.Select(fault => fault.Say));
        Assert.Equal(["A | stands between two characters that may be meant, as in 8|B; write || for the sign itself."], MarkTyped.Read("A|/B").Faults.Select(fault => fault.Say));
        Assert.Equal(["A line with alternatives is stored place by place and cannot hold a *. Write one ? for each unread place instead."], MarkTyped.Read("A|B*").Faults.Select(fault => fault.Say));
    }

    [Fact]
    public void Hostile_marks_are_text() => Assert.Equal("<script>alert('x')<", Stored("<script>alert('x')<").Lines[0].Text);

    private static MarkSighting Stored(string typed, bool byOrder = false)
    {
        var line = MarkTyped.Read(typed).Value.Line("U1", "", byOrder);
        using var json = JsonDocument.Parse(Encoding.UTF8.GetString(Line.Written([line]).Span));
        return new MarkKind().Read(json.RootElement, 1).Value;
    }
}
