namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Strips along the sides of a picture that are no part of what was photographed: captions, information bars of microscopes, frames. Their border follows one row or column of pixels
/// across the picture, and one even colour begins there. Their lines lie along the picture and not along the board, at its very edge where they turn most.
/// </summary>
internal static class CaptionStrips
{
    // A strip is at most this share of the picture.
    private const double Widest = 0.22;

    // A border may be hidden where what lies beside it is as bright as the strip is; no edge of a board follows a row of pixels so far.
    private const double LeastBorder = 0.75;
    private const float LeastStep = 6;

    // A strip's own colour, in steps of 255, and how much of its first row it fills.
    private const float Even = 10;
    private const double LeastEven = 0.95;

    // A border blurred by compression still shows this far from it, px.
    private const double Beside = 3;

    /// <summary>Without the pieces that lie in strips or on their borders.</summary>
    public static IReadOnlyList<EdgeSegment> Without(IReadOnlyList<EdgeSegment> pieces, GreyPicture grey)
    {
        var (left, top, right, bottom) = (Depth(grey, 0), Depth(grey, 1), Depth(grey, 2), Depth(grey, 3));
        if (left + top + right + bottom == 0) return pieces;
        return [.. pieces.Where(piece => piece.X > Inside(left) && piece.Y > Inside(top) && piece.X < grey.Width - Inside(right) && piece.Y < grey.Height - Inside(bottom))];

        static double Inside(int depth) => depth == 0 ? 0 : depth + Beside;
    }

    /// <summary>How deep the strip along one side is, px: 0 left, 1 upper, 2 right, 3 lower side; 0 for none. The innermost border counts.</summary>
    private static int Depth(GreyPicture grey, int side)
    {
        var (deep, wide) = side % 2 == 0 ? (grey.Width, grey.Height) : (grey.Height, grey.Width);
        float At(int depth, int along) => side switch
        {
            0 => grey.At(depth, along),
            1 => grey.At(along, depth),
            2 => grey.At(grey.Width - 1 - depth, along),
            _ => grey.At(along, grey.Height - 1 - depth),
        };

        for (var depth = (int)(Widest * deep); depth > 2; depth--)
        {
            var (up, down) = (0, 0);
            for (var along = 0; along < wide; along++)
            {
                var step = At(depth - 1, along) - At(depth, along);
                if (step >= LeastStep) up++;
                else if (step <= -LeastStep) down++;
            }

            if (Math.Max(up, down) >= LeastBorder * wide && IsEven(depth - 2)) return depth;
        }

        return 0;

        bool IsEven(int depth)
        {
            var row = new float[wide];
            for (var along = 0; along < wide; along++) row[along] = At(depth, along);
            var sorted = (float[])row.Clone();
            Array.Sort(sorted);
            var middle = sorted[wide / 2];
            return row.Count(value => Math.Abs(value - middle) <= Even) >= LeastEven * wide;
        }
    }
}
