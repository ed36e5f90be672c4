namespace Lidoff.Seeing.Reading.Finding;

/// <summary>A text line on the finder's sheet: its outline with the width along the text, how surely it is a line (mean probability, 0 to 1), and how sure its cells together are of its direction (0 to 1).</summary>
/// <param name="Outline">Tight outline, px of the sheet.</param>
/// <param name="Share">Mean probability of the line's core.</param>
/// <param name="Agreement">Length of the mean of its cells' directions, at most 1: short where they differ, and where each is unsure.</param>
public sealed record FoundLine(PictureRegion Outline, double Share, double Agreement)
{
    /// <summary>Far end of the outline's axis, half a width from its middle; -1 for the beginning, 1 for the end.</summary>
    internal (double X, double Y) End(int side)
    {
        var (x, y) = Outline.Along;
        return (Outline.Middle.X + (side * x * Outline.Width / 2), Outline.Middle.Y + (side * y * Outline.Width / 2));
    }
}
