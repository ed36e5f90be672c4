namespace Lidoff.Seeing.Kinds;

/// <summary>A length read from an instrument: value and standard uncertainty, mm; the instrument's name, empty when unknown.</summary>
public sealed record InstrumentLength(double Mm, double UMm, string Instrument)
{
    /// <summary>
    /// Standard uncertainty when none is given: a calliper good to ±0.02 mm outside is a rectangle of that half-width, 0.02/√3 = 0.0115,
    /// with 0.01 for repeatability (DIN 862, digital, to 100 mm; f-m-s.dk): 0.0153, and with half a digit 0.0155. Half a micrometre is
    /// no more than those limits are known to, and 0.015 is what entries that say nothing have meant since the first.
    /// </summary>
    public const double DefaultUMm = 0.015;
}
