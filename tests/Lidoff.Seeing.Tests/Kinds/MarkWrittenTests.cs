using Lidoff.Seeing.Kinds;

namespace Lidoff.Seeing.Tests.Kinds;

/// <summary>A mark in the notation it is typed in. How likely an alternative must be to be shown is a choice of ours: 5 %.</summary>
public sealed class MarkWrittenTests
{
    [Fact]
    public void Alternatives_stay_visible_where_none_of_them_is_the_reading()
    {
        var line = new MarkLine("A?0", [Place(("A", 0.95)), Place(("E", 0.475), ("B", 0.475)), Place(("0", 0.95))]);
        Assert.Equal("AE|B0", line.Written);
        Assert.Equal("AE|B0/W7", new MarkSighting("U1", [line, new MarkLine("W7", [])]).Written);
    }

    [Fact]
    public void A_sure_place_is_its_character_without_what_a_reader_hardly_believes() =>
        Assert.Equal("N", Place(("N", 0.98), ("H", 0.01), ("M", 0.004)).Written);

    [Fact]
    public void The_likeliest_comes_first() => Assert.Equal("8|B|3", Place(("B", 0.27), ("8", 0.54), ("3", 0.14)).Written);

    [Fact]
    public void What_is_less_likely_than_not_is_unread() => Assert.Equal(["?", "?"], new[] { Place(("8", 0.3), ("B", 0.1)), Place() }.Select(place => place.Written));

    [Fact]
    public void Nothing_printed_has_a_sign_beside_others_and_none_when_it_is_sure() =>
        Assert.Equal(["8|_", "_", ""], new[] { Place(("8", 0.475), ("", 0.475)), Place(("", 0.5)), Place(("", 0.95)) }.Select(place => place.Written));

    private static MarkPlace Place(params (string Character, double P)[] top) => new([.. top.Select(each => new MarkGlyph(each.Character, each.P))]);
}
