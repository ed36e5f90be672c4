using Lidoff.Numbers;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Words;

/// <summary>
/// Whether the words in a picture read mirrored. Rows of letter-sized patches are compared with capitals and digits as they lie, turned
/// by half a turn, and mirrored either way; a row's letters all lie alike, so what one letter leaves open the others settle.
/// </summary>
internal static class MirroredWords
{
    // A row of fewer letters, or one that does not look like letters any way, is no word.
    private const int LeastLetters = 3;
    private const double LeastLikeness = 0.55;

    private static readonly float[] Contrasts = [18, 40, 70];

    private const double LeastHeight = 9;
    private const double MostHeight = 90;

    /// <summary>
    /// By how much the words read better mirrored than not: the likeness gained, summed over letters. Below zero: they read straight.
    /// </summary>
    /// <param name="grey">The picture.</param>
    /// <param name="turn">Direction of the board in it, radians: words lie along it or across.</param>
    public static (double Gain, int Letters) Weigh(GreyPicture grey, double turn)
    {
        // Faint marks need a low step, crowded silk print a high one to part its letters: the step at which most reads as letters is used.
        var best = (Read: 0.0, Gain: 0.0, Letters: 0);
        foreach (var contrast in Contrasts)
        {
            var sum = (Read: 0.0, Gain: 0.0, Letters: 0);
            foreach (var bright in new[] { true, false })
            {
                var patches = InkPatches.Find(grey, bright, contrast);
                foreach (var direction in new[] { turn, turn + (Math.PI / 2) })
                {
                    foreach (var row in Rows(patches, grey.Width, direction))
                    {
                        var (straight, mirrored) = Likeness(row, grey.Width, direction);
                        if (Math.Max(straight, mirrored) < LeastLikeness * row.Count) continue;
                        sum = (sum.Read + Math.Max(straight, mirrored), sum.Gain + mirrored - straight, sum.Letters + row.Count);
                    }
                }
            }

            if (sum.Read > best.Read) best = sum;
        }

        return (best.Gain, best.Letters);
    }

    private static (double Straight, double Mirrored) Likeness(List<WordBlob> row, int width, double direction)
    {
        var sums = new double[LetterLikeness.Ways];
        foreach (var blob in row)
        {
            var likeness = LetterLikeness.Of(Raster(blob, width, direction));
            for (var way = 0; way < sums.Length; way++) sums[way] += likeness[way];
        }

        return (Math.Max(sums[0], sums[1]), Math.Max(sums[2], sums[3]));
    }

    /// <summary>Rows of patches of like height, side by side along a direction.</summary>
    private static List<List<WordBlob>> Rows(List<List<int>> patches, int width, double direction)
    {
        var (sin, cos) = (Elementary.Sin(direction), Elementary.Cos(direction));
        var blobs = new List<WordBlob>();
        foreach (var patch in patches)
        {
            var (left, top, right, bottom) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
            foreach (var at in patch)
            {
                var (x, y) = (at % width, at / width);
                var (u, v) = ((x * cos) + (y * sin), (y * cos) - (x * sin));
                (left, right, top, bottom) = (Math.Min(left, u), Math.Max(right, u), Math.Min(top, v), Math.Max(bottom, v));
            }

            var blob = new WordBlob(patch, left - 0.5, top - 0.5, right + 0.5, bottom + 0.5);
            var filled = patch.Count / (blob.Width * blob.Height);
            if (blob.Height is >= LeastHeight and <= MostHeight && blob.Width > 0.35 * blob.Height && blob.Width < 1.3 * blob.Height && filled is > 0.15 and < 0.7) blobs.Add(blob);
        }

        blobs.Sort((a, b) => a.X.CompareTo(b.X));
        var taken = new bool[blobs.Count];
        var rows = new List<List<WordBlob>>();
        for (var first = 0; first < blobs.Count; first++)
        {
            if (taken[first]) continue;
            List<WordBlob> row = [blobs[first]];
            for (var next = first + 1; next < blobs.Count; next++)
            {
                var last = row[^1];
                var blob = blobs[next];
                if (blob.Left - last.Right > 2 * last.Height) break;
                if (taken[next] || blob.Left < last.Right - (0.2 * last.Width)) continue;
                if (Math.Abs(blob.Y - last.Y) > 0.2 * last.Height || blob.Height > 1.25 * last.Height || last.Height > 1.25 * blob.Height || blob.Left - last.Right > 1.2 * last.Height) continue;
                row.Add(blob);
                taken[next] = true;
            }

            if (row.Count >= LeastLetters) rows.Add(row);
        }

        return rows;
    }

    private static double[] Raster(WordBlob blob, int width, double direction)
    {
        var (sin, cos) = (Elementary.Sin(direction), Elementary.Cos(direction));
        var (raster, counts) = (new double[LetterLikeness.Columns * LetterLikeness.Rows], new HashSet<int>(blob.Pixels));
        const int fine = 3;
        for (var row = 0; row < LetterLikeness.Rows * fine; row++)
        {
            for (var column = 0; column < LetterLikeness.Columns * fine; column++)
            {
                var u = blob.Left + ((column + 0.5) / (LetterLikeness.Columns * fine) * blob.Width);
                var v = blob.Top + ((row + 0.5) / (LetterLikeness.Rows * fine) * blob.Height);
                var (x, y) = ((int)Math.Round((u * cos) - (v * sin)), (int)Math.Round((u * sin) + (v * cos)));
                if (x >= 0 && x < width && counts.Contains((y * width) + x)) raster[(row / fine * LetterLikeness.Columns) + (column / fine)] += 1.0 / (fine * fine);
            }
        }

        return raster;
    }
}
