namespace Lidoff.Seeing.Kinds;

/// <summary>
/// Standard uncertainty of one length by what it was read from, where nobody says it: the limit of error as a rectangle, limit/√3, each
/// reading of a line or digit as one of half its step, step/√12 (GUM 4.3.7), and repeatability, in quadrature.
/// </summary>
public static class InstrumentErrors
{
    // A word of an instrument's name, and mm; the first that fits counts, so that a tape rule is a tape.
    private static readonly (string Word, double UMm)[] Known =
    [
        // Outside micrometer to 25 mm: ±0.004 mm (DIN 863-1; ISO 3611 leaves the limit to its maker), one digit of 0.001 mm; a hand repeats to
        // 0.002 mm (a judgement, no source).
        ("micromet", Of(0.004, 0.001, 1, 0.002)),
        ("mikromet", Of(0.004, 0.001, 1, 0.002)),
        // A loupe with a scale in tenths, whose nought is laid on one end and read at the other; ±0.02 mm (both judgements, no source).
        ("loupe", Of(0.02, 0.1, 1, 0)),
        ("graticule", Of(0.02, 0.1, 1, 0)),
        // A tape of class II in its first metre, from its hook: a + b·L + c = 0.3 + 0.2 + 0.2 mm (Directive 2014/32/EU, annex X, table 1), read
        // to a millimetre.
        ("tape", Of(0.7, 1, 1, 0)),
        // A steel rule of class I in its first metre: a + b·L = 0.1 + 0.1 mm (the same table), read to half of its millimetres at either end.
        ("rule", Of(0.2, 0.5, 2, 0)),
    ];

    /// <summary>Standard uncertainty, mm, for an instrument's name; that of a calliper for any other.</summary>
    public static double For(string instrument)
    {
        foreach (var (word, u) in Known) if (instrument.Contains(word, StringComparison.OrdinalIgnoreCase)) return u;
        return InstrumentLength.DefaultUMm;
    }

    private static double Of(double limit, double step, int readings, double repeats) => Math.Round(Math.Sqrt((limit * limit / 3) + (readings * step * step / 12) + (repeats * repeats)), 4);
}
