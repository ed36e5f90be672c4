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

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        using var networks = new OnnxNetworks(OnnxNetworks.FolderOf(AppContext.BaseDirectory));
        if (networks.Troubles.Count > 0) throw new InvalidOperationException(networks.Troubles[0].Say);
        using var packaged = PackagedReader.Of(place.Root);
        var folder = Path.Combine(place.Root, "bench", "marks");
        var set = new Set(networks, packaged);
        foreach (var truth in MarkTruth.Of(folder)) set.Read(folder, truth);
        List<Row> rows = [.. set.Rows("")];
        if (Environment.GetEnvironmentVariable(OwnTable) is not { Length: > 0 } table) return rows;
        var own = new Set(networks, packaged);
        foreach (var truth in MarkTruth.OfTable(table)) own.Read(Path.GetDirectoryName(Path.GetFullPath(table))!, truth);
        return [.. rows, .. own.Rows("own pictures, ")];
    }

    private static Row Row(string what, double value, string target, bool met, double? packaged = null) => new(
        what, Text(value), packaged is { } other ? $"packaged reader {Text(other)}" : "none", packaged is > 0 ? Text(value / packaged.Value) : "", target, met);

    private static string Text(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);

    /// <summary>One set of pictures.</summary>
    private sealed class Set(OnnxNetworks networks, PackagedReader? packaged)
    {
        private readonly MarkReader reader = new(networks);
        private readonly Tally upright = new(), turned = new(), known = new();
        private readonly SortedDictionary<string, Tally> byHard = new(StringComparer.Ordinal);
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
            (truth.Upright ? upright : turned).Add(truth, lines, seconds, truth.Upright || Math.Abs(Math.IEEERemainder(read.TurnDeg - truth.TurnDeg, 360)) < near);
            if (truth.Hard.Length > 0)
            {
                if (!byHard.TryGetValue(truth.Hard, out var kind)) byHard[truth.Hard] = kind = new();
                kind.Add(truth, lines, seconds, true);
            }

            if (truth.Outlines.Count > 0)
            {
                var lattices = networks.Score([.. truth.Outlines.Select(outline => LineStrip.Of(picture, outline))]);
                known.Add(truth, [.. lattices.Select(lattice => LineReading.Of([lattice], networks.LineTemperature))], 0, true, inOrder: true);
            }

            if (packaged is not null) Beside(packaged, picture, region, truth);
        }

        public IEnumerable<Row> Rows(string what)
        {
            if (upright.Crops > 0)
            {
                foreach (var row in upright.Rows(what + "upright", 0.06, 0.82, 0.60, 0.15)) yield return row;
            }

            if (turned.Crops > 0)
            {
                foreach (var row in turned.Rows(what + "turn unknown", 0.06, 0.82, 0.60, 0.3)) yield return row;
                yield return Row($"{what}turn unknown: turn right, of {turned.Crops}", turned.TurnRight, ">= 0.99", turned.TurnRight >= 0.99);
            }

            if (known.Crops > 0)
            {
                yield return Row($"{what}outlines known: character error, {known.Crops} crops", known.CharacterError, "<= 0.035", known.CharacterError <= 0.035, known.Packaged(0));
                yield return Row($"{what}outlines known: lines right, of {known.Lines}", known.LinesRight, ">= 0.86", known.LinesRight >= 0.86, known.Packaged(1));
            }

            foreach (var (hard, tally) in byHard) yield return Row($"{what}{hard}: lines right, of {tally.Lines}", tally.LinesRight, "", true);
        }

        private void Beside(PackagedReader other, GreyPyramid picture, PictureRegion region, MarkTruth truth)
        {
            if (truth.Upright)
            {
                var watch = Stopwatch.StartNew();
                var lines = other.Read(picture, region);
                upright.AddPackaged(truth, lines, watch.Elapsed.TotalSeconds);
            }

            if (truth.Outlines.Count == 0) return;
            // With the margin our own reader gets and with the one it is trained for, whichever it is surer of.
            known.AddPackaged(truth, [.. truth.Outlines.Select(outline => ((double[])[0.05, 0.15]).Select(grow => other.Line(picture, outline.Grown(grow * outline.Height))).MaxBy(each => each.Sure).Text)], 0, inOrder: true);
        }
    }

    private sealed class Tally
    {
        private readonly List<double> errors = [], seconds = [];
        private readonly List<(double Said, bool Right)> glyphs = [], whole = [];
        private int lines, right, crops, cropsRight, numbers, numberRight, numberFive, turns;

        private readonly List<double> otherErrors = [], otherSeconds = [];
        private int otherLines, otherRight, otherCrops;

        public int Crops => crops;

        public int Lines => lines;

        public double CharacterError => errors.Average();

        public double LinesRight => (double)right / lines;

        public double TurnRight => (double)turns / crops;

        public void Add(MarkTruth truth, IReadOnlyList<LineReading> read, double time, bool turnRight, bool inOrder = false)
        {
            var texts = read.Select(line => line.Readings[0].Text).ToList();
            var (pairs, cost) = inOrder
                ? ([.. Enumerable.Range(0, truth.Lines.Count)], texts.Zip(truth.Lines, (one, other) => EditDistance.Of(one, other)).Sum())
                : MarkScore.Pair(texts, truth.Lines);
            crops++;
            turns += turnRight ? 1 : 0;
            errors.Add(Math.Min(1, (double)cost / truth.Lines.Sum(line => line.Length)));
            cropsRight += cost == 0 ? 1 : 0;
            seconds.Add(time);
            for (var k = 0; k < truth.Lines.Count; k++)
            {
                lines++;
                var same = pairs[k] >= 0 && texts[pairs[k]] == truth.Lines[k];
                right += same ? 1 : 0;
                if (k == truth.Number)
                {
                    numbers++;
                    numberRight += same ? 1 : 0;
                    numberFive += pairs[k] >= 0 && read[pairs[k]].Readings.Take(5).Any(each => each.Text == truth.Lines[k]) ? 1 : 0;
                }
            }

            for (var i = 0; i < read.Count; i++)
            {
                var k = Array.IndexOf(pairs, i);
                var line = k < 0 ? "" : truth.Lines[k];
                whole.Add((read[i].P, texts[i] == line));
                var marks = MarkScore.Right(texts[i], line);
                var places = read[i].Places.Where(each => !each.Extra).ToList();
                for (var j = 0; j < Math.Min(marks.Length, places.Count); j++) glyphs.Add((places[j].Top.Where(each => each.Symbol == texts[i][j].ToString()).Select(each => each.P).FirstOrDefault(), marks[j]));
            }
        }

        public void AddPackaged(MarkTruth truth, IReadOnlyList<string> texts, double time, bool inOrder = false)
        {
            var (pairs, cost) = inOrder
                ? ([.. Enumerable.Range(0, truth.Lines.Count)], texts.Zip(truth.Lines, (one, other) => EditDistance.Of(one, other)).Sum())
                : MarkScore.Pair(texts, truth.Lines);
            otherErrors.Add(Math.Min(1, (double)cost / truth.Lines.Sum(line => line.Length)));
            otherCrops += cost == 0 ? 1 : 0;
            otherLines += truth.Lines.Count;
            otherRight += truth.Lines.Where((line, k) => pairs[k] >= 0 && texts[pairs[k]] == line).Count();
            otherSeconds.Add(time);
        }

        /// <summary>The packaged reader's figure: 0 character error, 1 lines right, 2 whole crops right, 3 median seconds; null where it did not run.</summary>
        public double? Packaged(int figure) => otherErrors.Count == 0 ? null : figure switch
        {
            0 => otherErrors.Average(),
            1 => (double)otherRight / otherLines,
            2 => (double)otherCrops / otherErrors.Count,
            _ => otherSeconds.Order().ElementAt(otherSeconds.Count / 2),
        };

        public IEnumerable<Row> Rows(string what, double error, double line, double crop, double time)
        {
            var (number, five) = ((double)numberRight / numbers, (double)numberFive / numbers);
            yield return Row($"{what}: character error, {crops} crops", CharacterError, $"<= {error}", CharacterError <= error, Packaged(0));
            yield return Row($"{what}: lines right, of {lines}", LinesRight, $">= {line}", LinesRight >= line, Packaged(1));
            yield return Row($"{what}: whole crops right", (double)cropsRight / crops, $">= {crop}", (double)cropsRight / crops >= crop, Packaged(2));
            yield return Row($"{what}: product number right", number, ">= 0.85", number >= 0.85);
            yield return Row($"{what}: product number in first five", five, ">= 0.96", five >= 0.96);
            yield return Row($"{what}: calibration error of {glyphs.Count} characters", MarkScore.Calibration(glyphs), "<= 0.03", MarkScore.Calibration(glyphs) <= 0.03);
            yield return Row($"{what}: calibration error of {whole.Count} lines", MarkScore.Calibration(whole), "<= 0.06", MarkScore.Calibration(whole) <= 0.06);
            seconds.Sort();
            yield return Row($"{what}: median seconds a crop", seconds[seconds.Count / 2], $"<= {time}", seconds[seconds.Count / 2] <= time, Packaged(3));
        }
    }
}
