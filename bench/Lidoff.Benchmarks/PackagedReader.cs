using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Microsoft.ML.OnnxRuntime;

namespace Lidoff.Benchmarks;

/// <summary>
/// A packaged general text reader (two networks of an npm package, see bench/packaged), as its makers run it: text found at one of four
/// sizes, the one it is surest of, each line cut out with the margin its finder is trained for and read by the best class of each step.
/// What it reads is folded to our symbols, so that it loses nothing by its larger alphabet.
/// </summary>
internal sealed class PackagedReader : IDisposable
{
    // The package's own figures (from memory): map above 0.3, a box's mean above 0.6, grown by 1.5 times area over circumference.
    private const float Map = 0.3f;
    private const double Box = 0.6;
    private const double Grow = 1.5;
    private const double LeastSure = 0.5;

    private static readonly int[] Sizes = [320, 480, 640, 960];

    private readonly InferenceSession finder, reader;
    private readonly string[] keys;

    private PackagedReader(string folder)
    {
        using var options = new SessionOptions { IntraOpNumThreads = 1, InterOpNumThreads = 1 };
        finder = new(Path.Combine(folder, "ch_PP-OCRv4_det_infer.onnx"), options);
        reader = new(Path.Combine(folder, "ch_PP-OCRv4_rec_infer.onnx"), options);
        keys = File.ReadAllLines(Path.Combine(folder, "ppocr_keys_v1.txt"));
    }

    /// <summary>The reader where its package is installed (<c>npm ci</c> in bench/packaged); null where not.</summary>
    public static PackagedReader? Of(string root)
    {
        var folder = Path.Combine(root, "bench", "packaged", "node_modules", "@gutenye", "ocr-models", "assets");
        return Directory.Exists(folder) ? new(folder) : null;
    }

    /// <summary>Lines from the top down.</summary>
    public IReadOnlyList<string> Read(GreyPyramid picture, PictureRegion region)
    {
        IReadOnlyList<(string Text, double Sure, double Y)> best = [];
        var most = -1.0;
        foreach (var size in Sizes)
        {
            var lines = Find(picture, region, size).Select(outline => (Read: Line(picture, outline), region.Inside(outline.Middle).Y))
                .Where(line => line.Read.Sure >= LeastSure && line.Read.Text.Length > 0).Select(line => (line.Read.Text, line.Read.Sure, line.Y)).ToList();
            var sure = lines.Count == 0 ? 0 : lines.Average(line => line.Sure);
            if (sure > most) (best, most) = (lines, sure);
        }

        return [.. best.OrderBy(line => line.Y).Select(line => line.Text)];
    }

    /// <summary>One line whose outline is known, and how sure it is of it.</summary>
    public (string Text, double Sure) Line(GreyPyramid picture, PictureRegion outline)
    {
        var p = Steps(picture, outline);
        var (text, sure, before, classes) = ("", new List<double>(), 0, keys.Length + 2);
        for (var t = 0; t < p.Length; t += classes)
        {
            var step = p.AsSpan(t, classes);
            var top = 0;
            for (var c = 1; c < classes; c++) top = step[c] > step[top] ? c : top;
            if (top != 0 && top != before)
            {
                sure.Add(step[top]);
                if (top <= keys.Length) text += keys[top - 1];
            }

            before = top;
        }

        return (string.Concat(text.ToUpperInvariant().Where(c => "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-./+".Contains(c, StringComparison.Ordinal))), sure.Count == 0 ? 0 : sure.Average());
    }

    /// <summary>The same line as a lattice of our symbols: small letters count as capitals, what is none of ours as nothing.</summary>
    public CtcLattice Lattice(GreyPyramid picture, PictureRegion outline, ReadingAlphabet alphabet)
    {
        var p = Steps(picture, outline);
        var classes = keys.Length + 2;
        var ours = Enumerable.Range(0, classes).Select(c => c > 0 && c <= keys.Length && keys[c - 1].Length == 1 ? alphabet.ClassesOf(keys[c - 1].ToUpperInvariant())?[0] ?? 0 : 0).ToArray();
        var scores = new float[p.Length / classes * alphabet.Classes];
        for (var t = 0; t < p.Length / classes; t++)
        {
            var step = scores.AsSpan(t * alphabet.Classes, alphabet.Classes);
            for (var c = 0; c < classes; c++) step[ours[c]] += p[(t * classes) + c];
            for (var c = 0; c < step.Length; c++) step[c] = MathF.Log(Math.Max(step[c], 1e-9f));
        }

        return CtcLattice.OfScores(scores, alphabet);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        finder.Dispose();
        reader.Dispose();
    }

    private IEnumerable<PictureRegion> Find(GreyPyramid picture, PictureRegion region, int size)
    {
        var scale = size / Math.Max(region.Width, region.Height);
        var (w, h) = (Up(region.Width * scale), Up(region.Height * scale));
        var (along, down) = (region.Along, region.Down);
        var grey = picture.Sample(region.At(-0.5, -0.5), (along.X * region.Width / w, along.Y * region.Width / w), (down.X * region.Height / h, down.Y * region.Height / h), w, h);
        var input = new float[3 * w * h];
        float[] mean = [0.485f, 0.456f, 0.406f], spread = [0.229f, 0.224f, 0.225f];
        for (var c = 0; c < 3; c++)
        {
            for (var i = 0; i < grey.Length; i++) input[(c * grey.Length) + i] = (grey[i] - mean[c]) / spread[c];
        }

        var map = Run(finder, input, [1, 3, h, w]);
        foreach (var patch in ConnectedPatches.Of([.. map.Select(p => p > Map)], w))
        {
            var around = PictureRegion.Around(patch.ConvertAll(at => ((at % w) + 0.5, (at / w) + 0.5)), 1);
            if (patch.Average(at => map[at]) < Box || Math.Min(around.Width, around.Height) < 3) continue;
            var grown = around.Grown(Grow * around.Width * around.Height / (2 * (around.Width + around.Height)));
            // Text runs along the longer side, to the right.
            if (grown.Height > 1.5 * grown.Width) grown = new(grown.Middle, grown.Height, grown.Width, grown.Turn > 0 ? grown.Turn - (Math.PI / 2) : grown.Turn + (Math.PI / 2));
            var (sx, sy) = (region.Width / w, region.Height / h);
            yield return new(region.At((grown.Middle.X / w) - 0.5, (grown.Middle.Y / h) - 0.5), grown.Width * sx, grown.Height * sy, grown.Turn + region.Turn);
        }
    }

    private float[] Steps(GreyPyramid picture, PictureRegion outline)
    {
        const int rows = 48;
        var columns = Math.Clamp((int)Math.Round(rows * outline.Width / outline.Height), 16, 960);
        var (along, down) = (outline.Along, outline.Down);
        var grey = picture.Sample(outline.At(-0.5, -0.5), (along.X * outline.Width / columns, along.Y * outline.Width / columns), (down.X * outline.Height / rows, down.Y * outline.Height / rows), columns, rows);
        var input = new float[3 * rows * columns];
        for (var i = 0; i < grey.Length; i++) input[i] = input[grey.Length + i] = input[(2 * grey.Length) + i] = (grey[i] - 0.5f) / 0.5f;
        return Run(reader, input, [1, 3, rows, columns]);
    }

    private static int Up(double side) => Math.Max(32, (int)Math.Round(side / 32) * 32);

    private static float[] Run(InferenceSession session, float[] values, long[] shape)
    {
        using var options = new RunOptions();
        using var tensor = OrtValue.CreateTensorValueFromMemory(values, shape);
        using var results = session.Run(options, [session.InputNames[0]], [tensor], [session.OutputNames[0]]);
        return results[0].GetTensorDataAsSpan<float>().ToArray();
    }
}
