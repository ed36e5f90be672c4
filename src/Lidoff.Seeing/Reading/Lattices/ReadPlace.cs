using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>
/// One place of a line as a reader sees it, all other places being as in its best reading: what may stand there, likeliest first, and what
/// is left for all that is not named.
/// </summary>
/// <param name="Along">Where it stands along the line, 0 to 1 in reading direction.</param>
/// <param name="Top">Alternatives, likeliest first; never empty.</param>
/// <param name="Rest">Probability of everything not among them.</param>
/// <param name="Extra">True for a gap where the best reading has nothing and one symbol more may stand.</param>
public sealed record ReadPlace(double Along, ValueList<ReadSymbol> Top, double Rest, bool Extra)
{
    /// <summary>What is less likely than this is a guess, and a guess is not dressed up as a reading.</summary>
    public const double Guess = 0.5;

    /// <summary>Its character in the line's text: the symbol, <c>?</c> where none is likely enough, nothing for an extra place that stays empty.</summary>
    public string Character => Top[0] is { P: >= Guess, Symbol: var symbol } && (symbol.Length > 0 || Extra) ? symbol : "?";
}
