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
    private const double Grain = 1.5;

    /// <summary>How many blocks are for the one place and how many for the other.</summary>
    public static (int One, int Other) Between(Tile first, Tile second, Similarity one, Similarity other)
    {
        using var atOneAll = Overlap.Of(first, second, one);
        if (atOneAll is null) return (0, 0);
        using var atOtherAll = Overlap.Of(first, second, other, atOneAll.Box);
        if (atOtherAll is null) return (0, 0);
        // The same part of the first sheet for both.
        using var a = new Part(atOneAll, atOtherAll.Box);
        var (ones, others) = (0, 0);
        var (width, height) = (atOtherAll.Box.Width, atOtherAll.Box.Height);
        for (var y = Play; y + Side + Play <= height; y += Side)
        {
            for (var x = Play; x + Side + Play <= width; x += Side)
            {
                var around = new Rect(x - Play, y - Play, Side + (2 * Play), Side + (2 * Play));
                if (!Covered(a.Mask, around) || !Covered(atOtherAll.Mask, around)) continue;
                var box = new Rect(x, y, Side, Side);
                var (atOne, atOther) = (Score(atOtherAll.First, a.Second, box, Play), Score(atOtherAll.First, atOtherAll.Second, box, Play));
                if (atOne > Alike && atOne - atOther > Clearly) ones++;
                else if (atOther > Alike && atOther - atOne > Clearly) others++;
            }
        }

        return (ones, others);
    }

    /// <summary>Whether most of what the two tiles would share at a place looks alike there; what stands up may have moved by some pixels.</summary>
    public static bool Holds(Tile first, Tile second, Similarity map)
    {
        using var shared = Overlap.Of(first, second, map);
        if (shared is null) return false;
        // Grain is unlike everywhere: on a dark board it stands out of a bare block more than a track does.
        using var here = Soft(shared.First);
        using var there = Soft(shared.Second);
        var (alike, unlike) = (0, 0);
        var (width, height) = (shared.Box.Width, shared.Box.Height);
        for (var y = Moved; y + Side + Moved <= height; y += Side)
        {
            for (var x = Moved; x + Side + Moved <= width; x += Side)
            {
                if (!Covered(shared.Mask, new(x - Moved, y - Moved, Side + (2 * Moved), Side + (2 * Moved)))) continue;
                var score = Score(here, there, new(x, y, Side, Side), Moved);
                if (score > Alike) alike++;
                else if (score < Alike - Clearly) unlike++;
            }
        }

        return unlike <= MostUnlike * alike;
    }

    /// <summary>How alike a block is to its like with a little play; a bare block is like any other bare one, and unlike one that is not.</summary>
    private static double Score(Mat sheet, Mat laid, Rect box, int play)
    {
        using var block = sheet[box];
        using var like = laid[box];
        Cv2.MeanStdDev(block, out _, out var here);
        Cv2.MeanStdDev(like, out _, out var there);
        if (here.Val0 < Bare && there.Val0 < Bare) return 0.5;
        // Not a hair's breadth apart: noise must not make the one bare and the other not.
        if (Math.Min(here.Val0, there.Val0) < Bare && Math.Max(here.Val0, there.Val0) > 2 * Bare) return 0;
        using var around = laid[new Rect(box.X - play, box.Y - play, box.Width + (2 * play), box.Height + (2 * play))];
        using var scores = new Mat();
        Cv2.MatchTemplate(around, block, scores, TemplateMatchModes.CCoeffNormed);
        Cv2.MinMaxLoc(scores, out _, out double best);
        return best;
    }

    // A Gaussian of this width leaves a fifth of white grain's standard deviation (1/(2σ√π)).
    private static Mat Soft(Mat sheet)
    {
        var soft = new Mat();
        Cv2.GaussianBlur(sheet, soft, default, Grain);
        return soft;
    }

    private static bool Covered(Mat mask, Rect box)
    {
        using var part = mask[box];
        return Cv2.CountNonZero(part) == box.Width * box.Height;
    }

    /// <summary>An overlap as it stands in a smaller part of the first sheet.</summary>
    private sealed class Part(Overlap whole, Rect box) : IDisposable
    {
        private readonly Rect at = new(box.X - whole.Box.X, box.Y - whole.Box.Y, box.Width, box.Height);

        public Mat Second => field ??= whole.Second[at];

        public Mat Mask => field ??= whole.Mask[at];

        public void Dispose()
        {
            Second.Dispose();
            Mask.Dispose();
        }
    }
}
