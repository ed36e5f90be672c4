using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Lines of a picture without those of one band across it, along either direction of the board: what lies along one side of a picture is one witness.</summary>
/// <param name="Set">Bands of one set share the picture among them.</param>
/// <param name="Part">What the square of a move without this band counts for in the set's jackknife: (n − 1)/n of n bands.</param>
/// <param name="Narrow">Whether enough is left without it to say how far it moves the rest by chance.</param>
/// <param name="Without">The lines outside of the band.</param>
internal sealed record LineBands(int Set, double Part, bool Narrow, List<LinePiece> Without)
{
    private const int Count = 6;

    /// <summary>Bands of a sixth, a third and a half of what the lines span, along both directions.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="turn">Direction of the first family, radians.</param>
    public static List<LineBands> Of(List<LinePiece> lines, double turn)
    {
        var bands = new List<LineBands>();
        var (cos, sin) = (Elementary.Cos(turn), Elementary.Sin(turn));
        for (var across = 0; across < 2; across++)
        {
            var at = new double[lines.Count];
            for (var i = 0; i < at.Length; i++) at[i] = across == 0 ? (lines[i].X * cos) + (lines[i].Y * sin) : (lines[i].Y * cos) - (lines[i].X * sin);
            var (low, high) = (at.Min(), at.Max());
            if (high <= low) continue;
            for (var wide = 1; wide <= 3; wide++)
            {
                for (var first = 0; first <= Count - wide; first += wide)
                {
                    var (from, to) = (low + ((high - low) * first / Count), low + ((high - low) * (first + wide) / Count));
                    List<LinePiece> without = [];
                    for (var i = 0; i < at.Length; i++)
                    {
                        if (at[i] < from || at[i] > to) without.Add(lines[i]);
                    }

                    if (without.Count > 0 && without.Count < lines.Count) bands.Add(new((across * Count) + wide, 1 - ((double)wide / Count), wide < 3, without));
                }
            }
        }

        return bands;
    }
}
