using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Marks;

/// <summary>
/// One place of a mark: alternatives with probabilities, the rest being spread over all other glyphs. A place nobody could read has no
/// alternatives; <paramref name="AnyNumber"/> stands for any number of unread glyphs, none included; <paramref name="Nothing"/> is how
/// probable it is that nothing is printed there at all, 0 to 1.
/// </summary>
public sealed record MarkPosition(IReadOnlyList<GlyphChance> Alternatives, double Rest, bool AnyNumber, double Nothing = 0)
{
    /// <summary>One unread glyph.</summary>
    public static MarkPosition Unread { get; } = new([], 1, false);

    /// <summary>Any number of unread glyphs.</summary>
    public static MarkPosition Gap { get; } = new([], 1, true);

    /// <summary>
    /// A place with alternatives. Signs and blanks are not part of a mark's text, so a place that may be a hyphen is one where, as far as
    /// the text goes, nothing may be printed.
    /// </summary>
    /// <param name="chances">Characters with their probabilities.</param>
    /// <param name="nothing">Probability that nothing is printed there.</param>
    public static MarkPosition Of(IReadOnlyList<GlyphChance> chances, double nothing)
    {
        var signs = Guard.NotNull(chances).Where(chance => !char.IsLetterOrDigit(chance.Glyph)).Sum(chance => chance.P);
        return new([.. chances.Where(chance => char.IsLetterOrDigit(chance.Glyph))], Math.Max(0, 1 - nothing - chances.Sum(chance => chance.P)), false, Math.Min(1, nothing + signs));
    }

    /// <summary>A glyph that a person read without naming alternatives.</summary>
    public static MarkPosition Read(char glyph) => new([new(glyph, 1)], 0, false);
}
