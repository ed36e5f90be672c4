using Lidoff.Seeing.Lettering;

namespace Lidoff.Seeing.Tests.Lettering;

public sealed class LetterShapesTests
{
    [Fact]
    public void Every_printable_letter_of_ascii_and_the_signs_of_the_trade_have_a_shape()
    {
        // ISO/IEC 646: the printable characters are 0x20 to 0x7E.
        Assert.True(LetterShapes.Knows(new string([.. Enumerable.Range(0x20, 0x5F).Select(i => (char)i)])));
        Assert.True(LetterShapes.Knows("µΩ°±×–…äöüßéèçñÅØ©€"));
        Assert.False(LetterShapes.Knows("漢"));
        Assert.False(LetterShapes.Knows("\U0001F600"));
    }

    [Fact]
    public void Letters_stay_between_their_marks_and_their_descenders()
    {
        var points = LetterShapes.Line("ÄÉgjpqy|", 10, 20, 6).SelectMany(stroke => stroke.Points).ToList();
        // On the grid of six rows a capital, 6 px high: marks stand two rows above it, descenders two rows below the base line at 26.
        Assert.Equal(18, points.Min(point => point.Y));
        Assert.Equal(28, points.Max(point => point.Y), 9);
        Assert.Equal(10, points.Min(point => point.X), 9);
        Assert.Equal(10 + (6 * LetterShapes.Width("ÄÉgjpqy|")), points.Max(point => point.X), 9);
    }

    [Fact]
    public void A_letter_without_shape_is_a_box_and_counts_once()
    {
        Assert.Equal(LetterShapes.Width("漢"), LetterShapes.Width("\U0001F600"));
        Assert.Single(LetterShapes.Line("漢", 0, 0, 1));
        Assert.Equal(0, LetterShapes.Width(""));
        // Two letters of four columns of a sixth each, and 0.3 between them, by hand.
        Assert.Equal(1.6333, LetterShapes.Width("HH"), 4);
    }
}
