using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Tests.Reading.Lattices;

/// <summary>One symbol another, one less, one more: each against all paths written out.</summary>
public sealed class SingleEditsTests
{
    private static readonly ReadingAlphabet Three = new("08B");

    [Theory]
    [InlineData(21, "08")]
    [InlineData(22, "00")]
    [InlineData(23, "8B8")]
    [InlineData(24, "")]
    [InlineData(25, "0")]
    [InlineData(26, "88B")]
    public void Every_edit_has_the_sum_of_its_paths(int seed, string text)
    {
        var made = EveryPath.Made(seed, 6, Three.Classes);
        var (lattice, truth) = (CtcLattice.OfProbabilities(made, Three), EveryPath.Of(made, Three));
        var edits = SingleEdits.Of(new(lattice, Three.ClassesOf(text)!));
        Assert.Equal(truth[text], Math.Exp(edits.Whole), 12);
        for (var c = 1; c < Three.Classes; c++)
        {
            var symbol = Three.Symbol(c).ToString();
            for (var i = 0; i < text.Length; i++) Assert.Equal(truth[text[..i] + symbol + text[(i + 1)..]], Math.Exp(edits.Another[i][c]), 12);
            for (var i = 0; i <= text.Length; i++)
            {
                // Beside its like the same text comes of two gaps; it counts in the first.
                var told = i > 0 && text[i - 1] == symbol[0] ? 0 : truth[text.Insert(i, symbol)];
                Assert.Equal(told, Math.Exp(edits.Extra[i][c]), 12);
            }
        }

        for (var i = 0; i < text.Length; i++) Assert.Equal(truth[text.Remove(i, 1)], Math.Exp(edits.Missing[i]), 12);
    }
}
