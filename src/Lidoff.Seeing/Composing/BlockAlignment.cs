using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Lays one sheet on another that shows nearly the same, from a guess on: warp, find blocks again, fit, and once more from there. What is
/// found first is kept where a later round fails.
/// </summary>
/// <param name="Side">Side of a block, px.</param>
/// <param name="MostBlocks">How many blocks are looked for.</param>
/// <param name="Reach">How far around its place a block is looked for in the first round, px.</param>
/// <param name="NextReach">The same in later rounds.</param>
/// <param name="Rounds">How many rounds.</param>
/// <param name="Alike">How alike a block must be.</param>
/// <param name="Soft">What matches scatter by, px.</param>
internal sealed record BlockAlignment(int Side, int MostBlocks, int Reach, int NextReach, int Rounds, double Alike, double Soft)
{
    private const int Fewest = 8;

    /// <summary>The map from <paramref name="now"/> to <paramref name="onto"/>; null where they do not show the same.</summary>
    /// <param name="onto">The sheet it is laid on.</param>
    /// <param name="now">The sheet.</param>
    /// <param name="guess">About where it lies.</param>
    /// <param name="leastKept">How many matches must fit, by how many places were looked for and how many of them were found.</param>
    public (Similarity Map, double Rms)? Of(Mat onto, Mat now, Similarity guess, Func<int, int, int> leastKept)
    {
        var map = guess;
        (Similarity Map, double Rms)? found = null;
        for (var round = 0; round < Rounds; round++)
        {
            using var laid = Warps.Warp(now, map, onto.Size(), InterpolationFlags.Linear, BorderTypes.Replicate);
            var places = Blocks.Places(laid, Side, MostBlocks);
            var matches = Blocks.Match(laid, onto, places, Side, round == 0 ? Reach : NextReach, Alike);
            if (matches.Count < Fewest || SimilarityFit.To(matches, Soft) is not { } fit || fit.Kept < leastKept(places.Count, matches.Count)) return found;
            map = fit.Map.After(map);
            found = (map, fit.Rms);
        }

        return found;
    }
}
