namespace Lidoff.Seeing.Kinds;

/// <summary>
/// Standard uncertainty of one reading by what it was read from, where nobody says it: the limit of error as a rectangle, limit/√3, the
/// last digit or line as one of half its step, step/√12 (GUM 4.3.7), and repeatability, in quadrature.
/// </summary>
public static class InstrumentErrors
{
    // DIN 862: a digital calliper with ±0.02 mm outside, read to 0.01 mm, repeating to 0.01 mm.
    // DIN 863: an outside micrometer to 25 mm with ±0.004 mm, read to 0.001 mm; a hand repeats to 0.002 mm (common practice).
    // A steel rule is read to half of its millimetre lines at either end: two rectangles of 0.5 mm; a loupe with a scale to 0.1 mm.
    private static readonly (string Word, double UMm)[] Known =
    [
        ("micromet", Of(0.004, 0.001, 0.002)),
        ("mikromet", Of(0.004, 0.001, 0.002)),
        ("loupe", Of(0.02, 0.1, 0)),
        ("graticule", Of(0.02, 0.1, 0)),
        ("tape", Of(0.3, 1, 0.2)),
        ("ruler", Of(0.1, 0.5, 0.145)),
        ("rule", Of(0.1, 0.5, 0.145)),
    ];

    /// <summary>Standard uncertainty, mm, for an instrument's name; that of a calliper for any other.</summary>
    public static double For(string instrument)
    {
        foreach (var (word, u) in Known) if (instrument.Contains(word, StringComparison.OrdinalIgnoreCase)) return u;
        return InstrumentLength.DefaultUMm;
    }

    private static double Of(double limit, double step, double repeats) => Math.Round(Math.Sqrt((limit * limit / 3) + (step * step / 12) + (repeats * repeats)), 4);
}
