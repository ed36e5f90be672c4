namespace Lidoff.Seeing.Standards;

/// <summary>
/// The standard lengths that bodies and pitches come in. Bodies: JEDEC MO-220 steps of 0.5 mm to 14 mm; the sides of small-outline
/// and SOT bodies (MS-012, MO-150, MO-153, MO-178, MO-203, TO-236); chip sizes to 1206 (EIA/IEC names).
/// Pitches: the rows in use for leads, balls, headers and flat cables.
/// </summary>
public static class StandardSizes
{
    // Moulded and sawn bodies: drawings allow ±0.1 mm or a 0.1 mm profile; real lots lie well inside. Common practice, no source.
    private const double BodySpread = 0.03;

    // A lead frame is etched or stamped to a few µm; half of one part in a hundred would already show over ten leads.
    private const double PitchSpread = 0.003;

    // Only sides that drawings of common families name; a denser list would make any length look standard.
    private static readonly double[] SmallSides = [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.25, 1.6, 2.9, 3.2, 3.9, 4.4, 4.9, 5.3, 7.2, 7.8, 8.65, 9.7, 9.9];

    /// <summary>Lead and ball pitches, mm.</summary>
    public static IReadOnlyList<double> Pitches { get; } = [0.35, 0.4, 0.5, 0.65, 0.8, 0.95, 1.0, 1.25, 1.27, 2.0, 2.54];

    /// <summary>Body sides, mm, rising.</summary>
    public static IReadOnlyList<double> Bodies { get; } =
        [.. SmallSides.Concat(Enumerable.Range(2, 27).Select(step => step / 2.0)).Distinct().Order()];

    /// <summary>Body sides as sizes.</summary>
    public static IReadOnlyList<StandardSize> BodySizes { get; } = [.. Bodies.Select(mm => new StandardSize(mm, "body", BodySpread))];

    /// <summary>Pitches as sizes.</summary>
    public static IReadOnlyList<StandardSize> PitchSizes { get; } = [.. Pitches.Select(mm => new StandardSize(mm, "pitch", PitchSpread))];

    /// <summary>
    /// What a length may be when only its name is known: a body side or a pitch; a pitch alone when the name says so. Where both
    /// have one length (0.5 mm), it is called a body.
    /// </summary>
    public static IReadOnlyList<StandardSize> For(string name) =>
        name.Contains("pitch", StringComparison.OrdinalIgnoreCase) ? PitchSizes : [.. BodySizes, .. PitchSizes.Where(pitch => !Bodies.Contains(pitch.Mm))];
}
