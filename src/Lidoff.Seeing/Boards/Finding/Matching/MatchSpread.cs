using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>Picks the agreeing marks that hold a board best: far apart from one another, those that stand by themselves first.</summary>
public static class MatchSpread
{
    /// <summary>At most so many, the first ones farthest apart.</summary>
    public static ValueList<MatchedMark> Of(BoardMatch match, int most)
    {
        Guard.NotNull(match);
        var rest = match.Pairs.ToList();
        var chosen = new List<MatchedMark>();
        while (chosen.Count < most && rest.Count > 0)
        {
            // The first is the farthest from the middle of all; ties go to the one that stands out more, which comes first.
            var next = chosen.Count == 0
                ? rest.MaxBy(mark => mark.First.At.DistanceTo(new(match.Pairs.Average(each => each.First.At.X), match.Pairs.Average(each => each.First.At.Y))))!
                : rest.MaxBy(mark => chosen.Min(other => other.First.At.DistanceTo(mark.First.At)) * (0.5 + Math.Min(mark.First.Even, mark.Second.Even)))!;
            chosen.Add(next);
            rest.Remove(next);
        }

        return [.. chosen];
    }
}
