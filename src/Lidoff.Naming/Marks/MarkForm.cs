namespace Lidoff.Naming.Marks;

/// <summary>
/// One thing that may stand on a part. <paramref name="Glyphs"/> holds glyph numbers, <see cref="One"/> for any glyph, <see cref="Many"/>
/// for any run of them and <see cref="Line"/> for a line end. <paramref name="LogShare"/> is the natural log of how often the part is
/// marked this way. <paramref name="OpenEnd"/>: more glyphs follow as a matter of course; <paramref name="OpenStart"/>: stand in front.
/// </summary>
internal sealed record MarkForm(int Part, MarkFormKind Kind, sbyte[] Glyphs, double LogShare, bool OpenStart, bool OpenEnd)
{
    internal const sbyte One = 36, Many = 37, Line = 38;

    /// <summary>Glyphs that say something.</summary>
    internal int Literals { get; } = Glyphs.Count(g => g < One);
}
