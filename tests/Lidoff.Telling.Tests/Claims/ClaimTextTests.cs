using Lidoff.Telling.Claims;

namespace Lidoff.Telling.Tests.Claims;

public sealed class ClaimTextTests
{
    [Theory]
    [InlineData("The chip is {length:U1:long side} long.", "The chip is |<length:U1:long side>| long.")]
    [InlineData("{part:U1}", "<part:U1>")]
    [InlineData("no reference", "no reference")]
    [InlineData("a set {{1, 2}} stays", "a set {1, 2} stays")]
    [InlineData("{a}{b}", "<a>|<b>")]
    public void A_sentence_is_cut_into_words_and_references(string text, string expected)
    {
        var pieces = ClaimText.Parse(text).Value.Pieces.Select(piece => piece.IsReference ? $"<{piece.Text}>" : piece.Text);
        Assert.Equal(expected, string.Join('|', pieces));
    }

    [Theory]
    [InlineData("open {a", "The brace at character 6 of the claim has no partner; double it ({{ or }}) if you mean the sign itself.")]
    [InlineData("a} closed", "The brace at character 2 of the claim has no partner; double it ({{ or }}) if you mean the sign itself.")]
    [InlineData("x {} y", "The braces at character 3 of the claim hold no reference; write one such as {length:U1:long side} or {part:U1}.")]
    public void A_broken_sentence_says_where(string text, string sentence)
    {
        Assert.Equal(sentence, ClaimText.Parse(text).Faults.Single().Say);
    }
}
