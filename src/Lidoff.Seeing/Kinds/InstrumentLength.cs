namespace Lidoff.Seeing.Kinds;

/// <summary>A length read from an instrument: value and standard uncertainty, mm; the instrument's name, empty when unknown.</summary>
public sealed record InstrumentLength(double Mm, double UMm, string Instrument)
{
    /// <summary>
    /// Standard uncertainty when none is given: a calliper good to ±0.02 mm outside is a rectangle of that half-width, 0.02/√3 = 0.0115,
    /// with 0.01 for repeatability (common practice after DIN 862; f-m-s.dk).
    /// </summary>
    public const double DefaultUMm = 0.015;
}
