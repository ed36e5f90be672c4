using Lidoff.Bench.Showing;

namespace Lidoff.Bench.Tests.Showing;

public sealed class ShowingTests
{
    [Theory]
    [InlineData("N52832 µΩ 語 ½", "N52832 µΩ 語 ½")]
    [InlineData("a\u202Eb", "a⟨U+202E⟩b")]
    [InlineData("a\u2066b\u2069", "a⟨U+2066⟩b⟨U+2069⟩")]
    [InlineData("\u0000\u001B[31m\r\n", "⟨U+0000⟩⟨U+001B⟩[31m⟨U+000D⟩⟨U+000A⟩")]
    [InlineData("zero\u200Bwidth\uFEFF", "zero⟨U+200B⟩width⟨U+FEFF⟩")]
    [InlineData("line\u2028sep", "line⟨U+2028⟩sep")]
    [InlineData("\U000E0041tag", "⟨U+E0041⟩tag")]
    [InlineData("<b>&", "<b>&")]
    [InlineData("", "")]
    [InlineData(null, "")]
    public void What_would_not_be_seen_is_shown(string? text, string shown) => Assert.Equal(shown, Shown.Of(text));

    [Fact]
    public void Half_a_character_is_shown_as_broken() => Assert.Equal("half⟨U+FFFD⟩", Shown.Of("half\uD800"));

    [Fact]
    public void What_has_no_end_is_cut_and_its_length_said()
    {
        Assert.Equal(new string('A', 400), Shown.Of(new string('A', 400)));
        Assert.Equal(new string('A', 400) + "… (10,000 characters)", Shown.Of(new string('A', 10_000)));
    }

    [Fact]
    public void A_sentence_quotes_no_more_than_its_beginning()
    {
        Assert.Equal("\"U1 beep\"", Shown.Quoted("U1 beep"));
        Assert.Equal("\"" + new string('A', 60) + "… (10,000 characters)\"", Shown.Quoted(new string('A', 10_000)));
        Assert.Equal("\"⟨U+202E⟩gpj\"", Shown.Quoted("\u202Egpj"));
    }

    [Theory]
    [InlineData(0, "0 bytes")]
    [InlineData(999, "999 bytes")]
    [InlineData(1000, "1.00 kB")]
    [InlineData(8_421_377, "8.42 MB")]
    [InlineData(12_340_000, "12.3 MB")]
    [InlineData(999_600, "1.00 MB")]
    [InlineData(2L << 30, "2.15 GB")]
    public void Lengths_count_in_thousands(long bytes, string words) => Assert.Equal(words, Sizes.Bytes(bytes));

    [Theory]
    [InlineData(0, "< 0.01")]
    [InlineData(0.0049, "< 0.01")]
    [InlineData(0.962, "0.96")]
    [InlineData(0.9999, "> 0.99")]
    [InlineData(1, "> 0.99")]
    public void No_probability_is_printed_as_certain(double p, string printed) => Assert.Equal(printed, Odds.P(p));

    [Fact]
    public void Decibans_carry_their_sign() => Assert.Equal(["+31.2", "−0.4", "+0.0"], new[] { 31.2, -0.4, 0 }.Select(Odds.Decibans));

    [Theory]
    [InlineData("board.jpg", "board.jpg")]
    [InlineData("../../board.jpg", "board.jpg")]
    [InlineData("C:\\x\\..\\b.jpg", "b.jpg")]
    [InlineData("..", null)]
    [InlineData("a/.", null)]
    [InlineData("  ", null)]
    [InlineData(null, null)]
    public void A_name_keeps_nothing_of_its_folders(string? sent, string? kept) => Assert.Equal(kept, SafeName.Of(sent));
}
