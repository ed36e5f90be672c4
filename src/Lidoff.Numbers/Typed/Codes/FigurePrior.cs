using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// How often a part carries certain figures and lies in a certain decade. Values are made by the series of IEC 60063; how many parts follow which
/// series, how many follow none and which decades are used are judgements of ours, without a source.
/// </summary>
internal static class FigurePrior
{
    // Shares of parts by the series their value was chosen from; what is left is chosen from none.
    private static readonly (int Size, double Share)[] TwoFigureResistors = [(3, 0.2), (6, 0.25), (12, 0.3), (24, 0.23)];
    private static readonly (int Size, double Share)[] ThreeFigureResistors = [(3, 0.15), (6, 0.1), (12, 0.1), (24, 0.1), (48, 0.1), (96, 0.4), (192, 0.03)];
    private static readonly (int Size, double Share)[] Capacitors = [(3, 0.35), (6, 0.35), (12, 0.2), (24, 0.07)];
    private static readonly (int Size, double Share)[] Inductors = [(3, 0.2), (6, 0.4), (12, 0.25), (24, 0.1)];

    /// <summary>Share of parts with the figures of a value among all that are printed with so many figures; above 0.</summary>
    /// <param name="sort">What the value stands on.</param>
    /// <param name="si">The value, above zero.</param>
    /// <param name="figures">Figures printed, 1 to 5; fewer than two count as two.</param>
    public static double OfFigures(PassiveSort sort, double si, int figures)
    {
        Guard.Positive(si);
        var series = sort switch
        {
            PassiveSort.Capacitor => Capacitors,
            PassiveSort.Inductor => Inductors,
            _ => figures > 2 ? ThreeFigureResistors : TwoFigureResistors,
        };
        var places = 90.0;
        for (var i = 2; i < figures; i++) places *= 10;
        return ((1 - series.Sum(each => each.Share)) / places) + series.Sum(each => ESeries.Contains(each.Size, si) ? each.Share / each.Size : 0);
    }

    /// <summary>Share of marked parts of a sort whose value lies in the decade of a value; above 0.</summary>
    public static double OfDecade(PassiveSort sort, double si)
    {
        // 4.7 µF may lie a last digit below itself; a millionth does not change a decade.
        var decade = (int)Math.Floor(Elementary.Log10(Guard.Positive(si)) + 1e-6);
        return sort switch
        {
            PassiveSort.Resistor => decade switch { >= 0 and <= 6 => 0.13, -1 or -2 => 0.025, 7 => 0.02, -3 or 8 => 0.005, _ => 1e-4 },
            PassiveSort.Capacitor => decade switch { -12 => 0.06, >= -11 and <= -7 => 0.13, >= -6 and <= -5 => 0.11, -4 => 0.05, -3 => 0.01, _ => 1e-4 },
            PassiveSort.Inductor => decade switch { >= -9 and <= -7 => 0.08, >= -6 and <= -4 => 0.22, -3 => 0.08, -2 => 0.01, _ => 1e-4 },
            _ => decade switch { -1 or 0 => 0.4, -2 or 1 => 0.1, _ => 1e-4 },
        };
    }
}
