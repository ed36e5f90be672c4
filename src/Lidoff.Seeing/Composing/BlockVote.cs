using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Which of two places a tile lies at: blocks of the overlap that look alike at one place and not at the other are for that one. A repeat
/// pattern looks alike at both and has no vote; the end of a row, a mark or a via beside it has.
/// </summary>
internal static class BlockVote
{
    /// <summary>Votes from which one place is believed.</summary>
    public const int Enough = 3;

    private const int Side = 32;
    private const int Play = 2;
    private const int Moved = 8;
    private const double MostUnlike = 0.6;
    private const double Alike = 0.7;
    private const double Clearly = 0.35;
    private const double Bare = 4;

    /// <summary>How many blocks are for the one place and how many for the other.</summary>
    public static (int One, int Other) Between(Tile first, Tile second, Similarity one, Similarity other)
    {
        var size = first.Grey.Size();
        using var a = Warps.Warp(second.Grey, one, size, InterpolationFlags.Linear);
        using var b = Warps.Warp(second.Grey, other, size, InterpolationFlags.Linear);
        using var inOne = Overlap.Of(second, one, size);
        using var inOther = Overlap.Of(second, other, size);
        using var both = new Mat();
        Cv2.BitwiseAnd(inOne, inOther, both);
        var (ones, others) = (0, 0);
        var (width, height) = (size.Width, size.Height);
        for (var y = Play; y + Side + Play <= height; y += Side)
        {
            for (var x = Play; x + Side + Play <= width; x += Side)
            {
                var box = new Rect(x, y, Side, Side);
                var around = new Rect(x - Play, y - Play, Side + (2 * Play), Side + (2 * Play));
                if (Cv2.CountNonZero(both[around]) < around.Width * around.Height) continue;
                var (atOne, atOther) = (Score(first.Grey[box], a[around], a[box]), Score(first.Grey[box], b[around], b[box]));
                if (atOne > Alike && atOne - atOther > Clearly) ones++;
                else if (atOther > Alike && atOther - atOne > Clearly) others++;
            }
        }

        return (ones, others);
    }

    /// <summary>Whether most of what the two tiles would share at a place looks alike there; what stands up may have moved by some pixels.</summary>
    public static bool Holds(Tile first, Tile second, Similarity map)
    {
        var size = first.Grey.Size();
        using var laid = Warps.Warp(second.Grey, map, size, InterpolationFlags.Linear);
        using var covered = Overlap.Of(second, map, size);
        var (alike, unlike) = (0, 0);
        var (width, height) = (size.Width, size.Height);
        for (var y = Moved; y + Side + Moved <= height; y += Side)
        {
            for (var x = Moved; x + Side + Moved <= width; x += Side)
            {
                var around = new Rect(x - Moved, y - Moved, Side + (2 * Moved), Side + (2 * Moved));
                if (Cv2.CountNonZero(covered[around]) < around.Width * around.Height) continue;
                var score = Score(first.Grey[new Rect(x, y, Side, Side)], laid[around], laid[new Rect(x, y, Side, Side)]);
                if (score > Alike) alike++;
                else if (score < Alike - Clearly) unlike++;
            }
        }

        return unlike <= MostUnlike * alike;
    }

    /// <summary>How alike a block is to its like with a little play; a bare block is like any other bare one, and unlike one that is not.</summary>
    private static double Score(Mat block, Mat around, Mat like)
    {
        Cv2.MeanStdDev(block, out _, out var here);
        Cv2.MeanStdDev(like, out _, out var there);
        if (here.Val0 < Bare && there.Val0 < Bare) return 0.5;
        // Not a hair's breadth apart: noise must not make the one bare and the other not.
        if (Math.Min(here.Val0, there.Val0) < Bare && Math.Max(here.Val0, there.Val0) > 2 * Bare) return 0;
        using var scores = new Mat();
        Cv2.MatchTemplate(around, block, scores, TemplateMatchModes.CCoeffNormed);
        Cv2.MinMaxLoc(scores, out _, out double best);
        return best;
    }
}
