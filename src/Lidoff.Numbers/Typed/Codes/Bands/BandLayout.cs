namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>
/// How so many bands are laid out: digits, multiplier, then what stands behind. IEC 60062 has 3 bands (two digits, no tolerance: ± 20 %), 4, 5 (three
/// digits) and 6 (with temperature coefficient); a fifth band behind four was a temperature coefficient on older parts, and inductors have three or
/// four in microhenry.
/// </summary>
/// <param name="Sort">What carries them.</param>
/// <param name="Digits">How many digits.</param>
/// <param name="Tolerance">Whether a tolerance stands behind the multiplier.</param>
/// <param name="Drift">Whether a temperature coefficient stands last.</param>
/// <param name="Share">How often, among parts with as many bands. Judgements of ours, no source.</param>
internal sealed record BandLayout(PassiveSort Sort, int Digits, bool Tolerance, bool Drift, double Share)
{
    /// <summary>Layouts with so many bands; none where there are none.</summary>
    public static IReadOnlyList<BandLayout> Of(int bands) => bands switch
    {
        3 => [new(PassiveSort.Resistor, 2, false, false, 0.8), new(PassiveSort.Inductor, 2, false, false, 0.2)],
        4 => [new(PassiveSort.Resistor, 2, true, false, 0.85), new(PassiveSort.Inductor, 2, true, false, 0.15)],
        5 => [new(PassiveSort.Resistor, 3, true, false, 0.97), new(PassiveSort.Resistor, 2, true, true, 0.03)],
        6 => [new(PassiveSort.Resistor, 3, true, true, 1)],
        _ => [],
    };

    /// <summary>Bands of it.</summary>
    public int Bands => Digits + 1 + (Tolerance ? 1 : 0) + (Drift ? 1 : 0);

    /// <summary>Name of the rule.</summary>
    public string Rule => Sort == PassiveSort.Inductor
        ? $"inductor, {Bands} bands, microhenry"
        : Digits == 2 && Drift ? "4 bands and a temperature coefficient" : $"{Bands} bands, IEC 60062";
}
