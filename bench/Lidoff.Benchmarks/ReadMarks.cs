using System.Diagnostics;
using System.Globalization;
using Lidoff.Catalogue.Searching;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Benchmarks;

/// <summary>
/// Marks on made-up package tops in faces that no training line was drawn in (bench/marks, by training/validation.py): whole crops, known
/// outlines, turn, what probabilities are worth, and time on one thread. Made-up pictures: real ones are harder in their own ways.
/// </summary>
public sealed class ReadMarks : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "read-marks";

    // A table of crops of one's own pictures, to be read as well: see MarkTruth.OfTable.
    private const string OwnTable = "LIDOFF_BENCH_MARKS";

    // Another folder of made-up tops (training/validation.py FOLDER): what is fitted is fitted there, so that bench/marks stays what nothing was chosen on.
    private const string OtherTops = "LIDOFF_BENCH_TOPS";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        using var networks = new OnnxNetworks(OnnxNetworks.FolderOf(AppContext.BaseDirectory));
        if (networks.Troubles.Count > 0) throw new InvalidOperationException(networks.Troubles[0].Say);
        using var packaged = PackagedReader.Of(place.Root);
        var folder = Environment.GetEnvironmentVariable(OtherTops) is { Length: > 0 } other ? other : Path.Combine(place.Root, "bench", "marks");
        var set = new Set(networks, packaged);
        foreach (var truth in MarkTruth.Of(folder)) set.Read(folder, truth);
        List<Row> rows = [.. set.Rows("")];
        if (Environment.GetEnvironmentVariable(OwnTable) is not { Length: > 0 } table) return rows;
        var own = new Set(networks, packaged);
        foreach (var truth in MarkTruth.OfTable(table)) own.Read(Path.GetDirectoryName(Path.GetFullPath(table))!, truth);
        return [.. rows, .. own.Rows("own pictures, ")];
    }

    /// <summary>One set of pictures.</summary>
    private sealed class Set(OnnxNetworks networks, PackagedReader? packaged)
    {
        private readonly MarkReader reader = new(networks);
        private readonly List<CropScore> upright = [], turned = [], known = [], both = [];
        private readonly List<CropScore> otherUpright = [], otherKnown = [];
        private readonly SortedDictionary<string, List<CropScore>> byHard = new(StringComparer.Ordinal);
        private bool warm;

        public void Read(string folder, MarkTruth truth)
        {
            var path = Path.Combine(folder, truth.Image);
            var header = PictureFile.Read(path, truth.Image).Value;
            var region = truth.Box ?? PictureRegion.Box(0, 0, header.Width, header.Height);
            var picture = GreyPyramidFile.Read(path, truth.Image, header, region).Value;
            if (!warm) reader.Weigh(reader.Scan(picture, region));
            warm = true;
            var watch = Stopwatch.StartNew();
            var read = reader.Weigh(reader.Scan(picture, region, truth.Upright), truth.Upright);
            var seconds = watch.Elapsed.TotalSeconds;
            IReadOnlyList<LineReading> lines = [.. read.Lines.Select(line => line.Reading)];
            // Boards are photographed as they lie: a table's turns are told to a few degrees only.
            var near = truth.Box is null ? 10 : 20;
            var score = CropScore.Of(truth, lines, seconds, truth.Upright || Math.Abs(Math.IEEERemainder(read.TurnDeg - truth.TurnDeg, 360)) < near);
            (truth.Upright ? upright : turned).Add(score);
            if (truth.Hard.Length > 0)
            {
                if (!byHard.TryGetValue(truth.Hard, out var kind)) byHard[truth.Hard] = kind = [];
                kind.Add(score);
            }

            if (truth.Outlines.Count > 0)
            {
                var lattices = networks.Score([.. truth.Outlines.Select(outline => LineStrip.Of(picture, outline))]);
                known.Add(Known(truth, lattices.Select(lattice => (CtcLattice[])[lattice])));
                if (packaged is not null) both.Add(Known(truth, lattices.Zip(truth.Outlines, (lattice, outline) => (CtcLattice[])[lattice, packaged.Lattice(picture, outline.Grown(0.05 * outline.Height), lattice.Alphabet)])));
            }

            if (packaged is not null) Beside(packaged, picture, region, truth);
        }

        public IEnumerable<Row> Rows(string what)
        {
            if (upright.Count > 0)
            {
                foreach (var row in Rows(what + "upright", upright, 0.15, otherUpright)) yield return row;
            }

            if (turned.Count > 0)
            {
                foreach (var row in Rows(what + "turn unknown", turned, 0.3, null)) yield return row;
                yield return MarkFigures.Row($"{what}turn unknown: turn right, of {turned.Count}", turned, crops => MarkFigures.Share(crops, crop => crop.TurnRight), 0.99, false);
            }

            if (known.Count > 0)
            {
                yield return MarkFigures.Row($"{what}outlines known: character error, {known.Count} crops", known, MarkFigures.Error, 0.035, true, otherKnown);
                yield return MarkFigures.Row($"{what}outlines known: lines right, of {known.Sum(crop => crop.Lines)}", known, MarkFigures.Lines, 0.86, false, otherKnown);
            }

            if (both.Count > 0)
            {
                yield return MarkFigures.Row($"{what}outlines known, both readers: character error", both, MarkFigures.Error, 0.035, true, otherKnown);
                yield return MarkFigures.Row($"{what}outlines known, both readers: lines right", both, MarkFigures.Lines, 0.86, false, otherKnown);
            }

            foreach (var (hard, crops) in byHard) yield return MarkFigures.Row($"{what}{hard}: lines right, of {crops.Sum(crop => crop.Lines)}", crops, MarkFigures.Lines, null, false);
        }

        private static IEnumerable<Row> Rows(string what, List<CropScore> crops, double seconds, List<CropScore>? other)
        {
            yield return MarkFigures.Row($"{what}: character error, {crops.Count} crops", crops, MarkFigures.Error, 0.06, true, other);
            yield return MarkFigures.Row($"{what}: lines right, of {crops.Sum(crop => crop.Lines)}", crops, MarkFigures.Lines, 0.82, false, other);
            yield return MarkFigures.Row($"{what}: whole crops right", crops, MarkFigures.Whole, 0.60, false, other);
            yield return MarkFigures.Row($"{what}: product number right", crops, each => MarkFigures.Share(each, crop => crop.Number), 0.85, false);
            yield return MarkFigures.Row($"{what}: product number in first five", crops, each => MarkFigures.Share(each, crop => crop.InFive), 0.96, false);
            yield return MarkFigures.Row($"{what}: calibration error of {crops.Sum(crop => crop.Glyphs.Count)} characters", crops, MarkFigures.Glyphs, 0.03, true);
            yield return MarkFigures.Row($"{what}: calibration error of {crops.Sum(crop => crop.Whole.Count)} lines", crops, MarkFigures.WholeLines, 0.06, true);
            yield return MarkFigures.Row($"{what}: median seconds a crop", crops, MarkFigures.Seconds, seconds, true, other);
        }

        private CropScore Known(MarkTruth truth, IEnumerable<CtcLattice[]> lines) =>
            CropScore.Of(truth, [.. lines.Select(lattices => LineReading.Of(lattices, networks.LineTemperature))], 0, true, inOrder: true);

        private void Beside(PackagedReader other, GreyPyramid picture, PictureRegion region, MarkTruth truth)
        {
            if (truth.Upright)
            {
                var watch = Stopwatch.StartNew();
                var lines = other.Read(picture, region);
                otherUpright.Add(CropScore.Of(truth, lines, watch.Elapsed.TotalSeconds));
            }

            if (truth.Outlines.Count == 0) return;
            // With the margin our own reader gets and with the one it is trained for, whichever it is surer of.
            otherKnown.Add(CropScore.Of(truth, [.. truth.Outlines.Select(outline => ((double[])[0.05, 0.15]).Select(grow => other.Line(picture, outline.Grown(grow * outline.Height))).MaxBy(each => each.Sure).Text)], 0, inOrder: true));
        }
    }
}
