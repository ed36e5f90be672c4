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

    /// <summary>A glyph that a person read without naming alternatives.</summary>
    public static MarkPosition Read(char glyph) => new([new(glyph, 1)], 0, false);
}
