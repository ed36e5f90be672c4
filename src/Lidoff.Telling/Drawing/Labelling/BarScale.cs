namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>
/// How large things are in a picture: px of the upright picture per mm, and the relative standard uncertainty of that (0.02 is 2 %).
/// <paramref name="ByBoard"/>: it is the scale of the board that the picture lies on by its landmarks.
/// </summary>
public sealed record BarScale(double PxPerMm, double RelativeU, bool ByBoard = false)
{
    // One per cent is what the eye can tell along a bar; less doubt needs no words.
    private const double Told = 0.01;

    /// <summary>True where the doubt is told beside the bar.</summary>
    public bool Doubtful => RelativeU > Told;
}
