using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Advising;

/// <summary>
/// What a picture at hand is worth: how sharp its sharpest edges are and how much of it is burnt out. Looked up in patches over the
/// frame, in the picture's own pixels; rounded, since it is an opinion and no measurement.
/// </summary>
/// <param name="EdgePx">Width of a sharp edge from 10 to 90 %, px, to a tenth; null where there is no edge worth the name.</param>
/// <param name="Burnt">Share of pixels at the end of the scale, to a thousandth.</param>
public sealed record PictureWorth(double? EdgePx, double Burnt)
{
    /// <summary>An edge as narrow as a sensor's filter lets through: up to here pixels count in full. A judgement, no source.</summary>
    public const double SharpPx = 2.5;

    // How much of the picture is looked at, px and patches a side: a judgement, no source.
    private const int Patch = 192;
    private const int PatchesAlong = 5;

    // An edge must rise by a good part of the scale over noise; the sharpest tenth tells the lens, the rest tells round bodies and shadows.
    // Steps of 255, share, number and px: judgements, no source.
    private const int LeastRise = 60;
    private const double Sharpest = 0.1;
    private const int LeastEdges = 40;
    private const int LongestEdge = 40;

    // A sharpened or compressed white ends a step or two below 255. A judgement, no source.
    private const int White = 253;

    /// <summary>Height of the smallest letters that can be read at a scale, mm.</summary>
    /// <param name="pxPerMm">Scale, px/mm.</param>
    public double LetterMm(double pxPerMm) => ShotPlan.LetterPx / Guard.Positive(pxPerMm) * Math.Max(1, (EdgePx ?? SharpPx) / SharpPx);

    /// <summary>Looks at a picture.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="name">Its name as people know it; hostile text.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<PictureWorth> Of(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        return PictureFile.Whole<PictureWorth>(name, header, () =>
        {
            using var stored = PictureFile.Stored(path, header);
            using var streamed = stored.Bands >= 3 ? stored.Colourspace(Enums.Interpretation.Bw) : stored[0];
            var (width, height) = (Math.Min(Patch, streamed.Width), Math.Min(Patch, streamed.Height));
            // One thread from top to bottom, a band of patches at a time: memory grows with the picture's width alone. Where bands would lie
            // over one another the picture is so low that all of it is no more.
            using var grey = streamed.Height < PatchesAlong * Patch ? streamed.CopyMemory() : streamed.Copy();
            using var region = Region.New(grey);
            var edges = new List<double>();
            var (burnt, pixels) = (0L, 0L);
            for (var row = 0; row < PatchesAlong; row++)
            {
                var band = region.Fetch(0, (grey.Height - height) * row / (PatchesAlong - 1), grey.Width, height);
                for (var column = 0; column < PatchesAlong; column++)
                {
                    var left = (grey.Width - width) * column / (PatchesAlong - 1);
                    var bytes = new byte[width * height];
                    for (var y = 0; y < height; y++) Array.Copy(band, (y * grey.Width) + left, bytes, y * width, width);
                    burnt += bytes.Count(value => value >= White);
                    pixels += bytes.Length;
                    Edges(bytes, height, width, width, 1, edges);
                    Edges(bytes, width, height, 1, width, edges);
                }
            }

            return new PictureWorth(edges.Count < LeastEdges ? null : Math.Round(Narrow(edges), 1), Math.Round(burnt / (double)pixels, 3));
        });
    }

    private static double Narrow(List<double> edges)
    {
        edges.Sort();
        return edges[(int)(edges.Count * Sharpest / 2)];
    }

    // Every run along a line that only rises or only falls is an edge; its width from 10 to 90 % is measured between pixels.
    private static void Edges(byte[] at, int lines, int length, int lineStep, int step, List<double> found)
    {
        for (var line = 0; line < lines; line++)
        {
            var start = line * lineStep;
            for (var from = 0; from < length - 1;)
            {
                var sign = Math.Sign(at[start + ((from + 1) * step)] - at[start + (from * step)]);
                var to = from + 1;
                while (sign != 0 && to < length - 1 && Math.Sign(at[start + ((to + 1) * step)] - at[start + (to * step)]) == sign) to++;
                var (low, high) = (at[start + (from * step)], at[start + (to * step)]);
                // What touches the end of the scale was cut off there and would look sharper than it is.
                if (sign != 0 && Math.Abs(high - low) >= LeastRise && to - from <= LongestEdge && Math.Max(low, high) < White && Math.Min(low, high) > byte.MaxValue - White)
                    found.Add(Cross(at, start, step, from, to, 0.9) - Cross(at, start, step, from, to, 0.1));
                from = to;
            }
        }
    }

    private static double Cross(byte[] at, int start, int step, int from, int to, double share)
    {
        double first = at[start + (from * step)], level = first + (share * (at[start + (to * step)] - first));
        for (var i = from; i < to; i++)
        {
            double a = at[start + (i * step)], b = at[start + ((i + 1) * step)];
            if ((a - level) * (b - level) <= 0) return i + ((level - a) / (b - a));
        }

        return to;
    }
}
