using Lidoff.Catalogue.Searching;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Benchmarks;

/// <summary>How one crop was read.</summary>
/// <param name="Length">Characters of the truth.</param>
/// <param name="Cost">Edit distance of what was read to it, over all lines.</param>
/// <param name="Lines">Lines of the truth.</param>
/// <param name="Right">How many of them were read right.</param>
/// <param name="Number">The line with the product number is right.</param>
/// <param name="InFive">It is among the first five readings.</param>
/// <param name="TurnRight">The turn that makes it upright was told.</param>
/// <param name="Seconds">What it took.</param>
/// <param name="Glyphs">Probabilities told of characters, and whether they came true.</param>
/// <param name="Whole">The same of lines.</param>
internal sealed record CropScore(
    int Length, int Cost, int Lines, int Right, bool Number, bool InFive, bool TurnRight, double Seconds,
    IReadOnlyList<(double Said, bool Right)> Glyphs, IReadOnlyList<(double Said, bool Right)> Whole)
{
    /// <summary>Character error, at most one.</summary>
    public double Error => Math.Min(1, (double)Cost / Length);

    /// <summary>Scores lines with their alternatives.</summary>
    public static CropScore Of(MarkTruth truth, IReadOnlyList<LineReading> read, double seconds, bool turnRight, bool inOrder = false)
    {
        List<string> texts = [.. read.Select(line => line.Readings[0].Text)];
        var plain = Of(truth, texts, seconds, inOrder, out var pairs);
        var number = pairs[truth.Number];
        var glyphs = new List<(double, bool)>();
        var whole = new List<(double, bool)>();
        for (var i = 0; i < read.Count; i++)
        {
            var k = Array.IndexOf(pairs, i);
            var line = k < 0 ? "" : truth.Lines[k];
            whole.Add((read[i].P, texts[i] == line));
            var right = MarkScore.Right(texts[i], line);
            var places = read[i].Places.Where(each => !each.Extra).ToList();
            for (var j = 0; j < Math.Min(right.Length, places.Count); j++)
            {
                var symbol = texts[i][j].ToString();
                glyphs.Add((places[j].Top.Where(each => each.Symbol == symbol).Select(each => each.P).FirstOrDefault(), right[j]));
            }
        }

        var inFive = number >= 0 && read[number].Readings.Take(5).Any(each => each.Text == truth.Lines[truth.Number]);
        return plain with { InFive = inFive, TurnRight = turnRight, Glyphs = glyphs, Whole = whole };
    }

    /// <summary>Scores bare lines.</summary>
    public static CropScore Of(MarkTruth truth, IReadOnlyList<string> texts, double seconds, bool inOrder = false) => Of(truth, texts, seconds, inOrder, out _);

    private static CropScore Of(MarkTruth truth, IReadOnlyList<string> texts, double seconds, bool inOrder, out int[] pairs)
    {
        (var of, var cost) = inOrder
            ? ([.. Enumerable.Range(0, truth.Lines.Count)], texts.Zip(truth.Lines, (one, other) => EditDistance.Of(one, other)).Sum())
            : MarkScore.Pair(texts, truth.Lines);
        pairs = of;
        bool[] right = [.. truth.Lines.Select((line, k) => of[k] >= 0 && texts[of[k]] == line)];
        return new(truth.Lines.Sum(line => line.Length), cost, right.Length, right.Count(each => each), right[truth.Number], right[truth.Number], true, seconds, [], []);
    }
}
