using System.Diagnostics;
using System.Globalization;
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

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = Path.Combine(place.Root, "bench", "marks");
        using var networks = new OnnxNetworks(OnnxNetworks.FolderOf(AppContext.BaseDirectory));
        if (networks.Troubles.Count > 0) throw new InvalidOperationException(networks.Troubles[0].Say);
        var reader = new MarkReader(networks);
        var (upright, turned, known) = (new Tally(), new Tally(), new Tally());
        var byHard = new SortedDictionary<string, Tally>(StringComparer.Ordinal);
        foreach (var truth in MarkTruth.Of(folder))
        {
            var path = Path.Combine(folder, truth.Image);
            var header = PictureFile.Read(path, truth.Image).Value;
            var region = PictureRegion.Box(0, 0, header.Width, header.Height);
            var picture = GreyPictureFile.Read(path, truth.Image, header, region).Value;
            if (upright.Crops + turned.Crops == 0) reader.Weigh(reader.Scan(picture, region));
            var watch = Stopwatch.StartNew();
            var read = reader.Weigh(reader.Scan(picture, region, truth.Upright), truth.Upright);
            var seconds = watch.Elapsed.TotalSeconds;
            var tally = truth.Upright ? upright : turned;
            tally.Add(truth, [.. read.Lines.Select(line => line.Reading)], seconds, truth.Upright || Math.Abs(Math.IEEERemainder(read.TurnDeg - truth.TurnDeg, 360)) < 10);
            if (!byHard.TryGetValue(truth.Hard, out var kind)) byHard[truth.Hard] = kind = new();
            kind.Add(truth, [.. read.Lines.Select(line => line.Reading)], seconds, true);
            var lattices = networks.Score([.. truth.Outlines.Select(outline => LineStrip.Of(picture, outline))]);
            known.Add(truth, [.. lattices.Select(lattice => LineReading.Of([lattice], networks.LineTemperature))], 0, true, inOrder: true);
        }

        return
        [
            .. upright.Rows("upright", 0.06, 0.82, 0.60, 0.15),
            .. turned.Rows("turn unknown", 0.06, 0.82, 0.60, 0.3),
            Row($"turn unknown: turn right, of {turned.Crops}", turned.TurnRight, ">= 0.99", turned.TurnRight >= 0.99),
            Row($"outlines known: character error, {known.Crops} crops", known.CharacterError, "<= 0.035", known.CharacterError <= 0.035),
            Row($"outlines known: lines right, of {known.Lines}", known.LinesRight, ">= 0.86", known.LinesRight >= 0.86),
            .. byHard.Select(each => Row($"  {each.Key}: lines right, of {each.Value.Lines}", each.Value.LinesRight, "", true)),
        ];
    }

    internal static Row Row(string what, double value, string target, bool met) => new(what, value.ToString("0.000", CultureInfo.InvariantCulture), "none", "", target, met);

    private sealed class Tally
    {
        private readonly List<double> errors = [], seconds = [];
        private readonly List<(double Said, bool Right)> glyphs = [], whole = [];
        private int lines, right, crops, cropsRight, numbers, numberRight, numberFive, turns;

        public int Crops => crops;

        public int Lines => lines;

        public double CharacterError => errors.Average();

        public double LinesRight => (double)right / lines;

        public double TurnRight => (double)turns / crops;

        public void Add(MarkTruth truth, IReadOnlyList<LineReading> read, double time, bool turnRight, bool inOrder = false)
        {
            var texts = read.Select(line => line.Readings[0].Text).ToList();
            var (pairs, cost) = inOrder
                ? ([.. Enumerable.Range(0, truth.Lines.Count)], texts.Zip(truth.Lines, MarkScore.Distance).Sum())
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

        public IEnumerable<Row> Rows(string what, double error, double line, double crop, double time)
        {
            var (number, five) = ((double)numberRight / numbers, (double)numberFive / numbers);
            yield return Row($"{what}: character error, {crops} crops", CharacterError, $"<= {error}", CharacterError <= error);
            yield return Row($"{what}: lines right, of {lines}", LinesRight, $">= {line}", LinesRight >= line);
            yield return Row($"{what}: whole crops right", (double)cropsRight / crops, $">= {crop}", (double)cropsRight / crops >= crop);
            yield return Row($"{what}: product number right", number, ">= 0.85", number >= 0.85);
            yield return Row($"{what}: product number in first five", five, ">= 0.96", five >= 0.96);
            yield return Row($"{what}: calibration error of {glyphs.Count} characters", MarkScore.Calibration(glyphs), "<= 0.03", MarkScore.Calibration(glyphs) <= 0.03);
            yield return Row($"{what}: calibration error of {whole.Count} lines", MarkScore.Calibration(whole), "<= 0.06", MarkScore.Calibration(whole) <= 0.06);
            seconds.Sort();
            yield return Row($"{what}: median seconds a crop", seconds[seconds.Count / 2], $"<= {time}", seconds[seconds.Count / 2] <= time);
        }
    }
}
