using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// Photographed boards with two or three precise known lengths anywhere in them (clicks of 0.3 to 0.7 px, lengths to 0.05 %), by a camera whose slant is known
/// (<see cref="BenchScene"/>): how often a person is told of the slant, how often of one that is not there, and whether the intervals of what is measured hold.
/// </summary>
public sealed class SlantWarningTests(ITestOutputHelper output)
{
    // Of forty scenes each so many are told today (measured 5, 21, 23, 34, 27, 39, 32 and 38), by tilt, by unequal axes or beside a disagreement that one wrong length
    // would explain as well; more is wanted. Two lengths side by side, and two whose slants make up for one another, show none at all: these are what is missing.
    [Theory]
    [InlineData(5, 2, 3)]
    [InlineData(5, 3, 20)]
    [InlineData(10, 2, 21)]
    [InlineData(10, 3, 32)]
    [InlineData(15, 2, 24)]
    [InlineData(15, 3, 37)]
    [InlineData(20, 2, 28)]
    [InlineData(20, 3, 35)]
    public void A_slant_that_known_lengths_show_is_told_with_its_size_and_the_interval_holds(int slant, int references, int least)
    {
        var rows = Rows(40, slant, references);
        var told = rows.Where(row => Told(row) || row.Named).ToList();
        var (held, size) = (told.Average(row => row.Held ? 1.0 : 0), told.Average(row => row.Size ? 1.0 : 0));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{slant}°, {references} lengths: told {rows.Count(Told)}, beside a disagreement {told.Count(row => !Told(row))}, of 40; of these the length held {held:0.00}, the slant {size:0.00}, half of the interval {100 * told.Select(row => row.Half).Order().ElementAt(told.Count / 2):0.0} %; of {rows.Count(row => row.Codes == "none")} untold held {rows.Where(row => row.Codes == "none").Select(row => row.Held ? 1.0 : 0).DefaultIfEmpty(1).Average():0.00}"));
        Assert.True(told.Count >= least);
        // Binomial, n = 24 to 40, p = 0.9: three standard deviations are 0.14 to 0.18 (measured 0.83 to 1.00).
        Assert.InRange(held, 0.75, 1);
        if (told.Count >= 20) Assert.InRange(size, 0.75, 1);
    }

    [Theory]
    // Measured: none of 160 with two lengths, three with three: 0.9 % of 320, 95 % between 0.2 and 2.7 % (Clopper and Pearson).
    [InlineData(2, 0)]
    [InlineData(3, 3)]
    public void Of_a_camera_square_to_the_board_hardly_ever_a_slant_is_told(int references, int most)
    {
        var rows = Rows(160, 0, references);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"square, {references} lengths: told {rows.Count(Told)}, disagreements {rows.Count(row => row.Codes.Contains("disagrees", StringComparison.Ordinal))} of 160; held {rows.Average(row => row.Held ? 1.0 : 0):0.000}"));
        Assert.InRange(rows.Count(Told), 0, most);
        Assert.InRange(rows.Average(row => row.Held ? 1.0 : 0), 0.87, 1);
    }

    private static bool Told((string Codes, bool Named, bool Held, bool Size, double Half) row) => row.Codes.Contains("tilt", StringComparison.Ordinal) || row.Codes.Contains("unequal-axes", StringComparison.Ordinal);

    private static (string Codes, bool Named, bool Held, bool Size, double Half)[] Rows(int count, int slant, int references)
    {
        var rows = new (string Codes, bool Named, bool Held, bool Size, double Half)[count];
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => rows[i] = One(i, slant, references));
        return rows;
    }

    private static (string Codes, bool Named, bool Held, bool Size, double Half) One(int i, int slant, int references)
    {
        var random = new Random((i * 1000) + slant + (references * 100));
        var degrees = slant == 0 ? 1.5 * random.NextDouble() : slant;
        var lens = (random.Next(8) == 0 ? 0.03 : 0.003) * BenchScene.Normal(random);
        var scene = new BenchScene(degrees, random.NextDouble() * 360, random.NextDouble() * 360, 0.7 * Math.Pow(4 / 0.7, random.NextDouble()), 20 + (random.NextDouble() * 80), lens);
        var click = 0.3 + (0.4 * random.NextDouble());
        (PicturePoint From, PicturePoint To, double Mm) Chord(double least, double most)
        {
            var (x1, y1, x2, y2) = scene.Chord(random, least, most, 0);
            return (BenchScene.Clicked(random, scene.Show(x1, y1, 0), click), BenchScene.Clicked(random, scene.Show(x2, y2, 0), click), Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2))));
        }

        var known = new List<ReferenceLength>();
        while (known.Count < references)
        {
            var (from, to, mm) = Chord(800, 2500);
            known.Add(new(from, to, mm * (1 + (0.0005 * BenchScene.Normal(random))), 0.0005 * mm));
        }

        var (a, b, truth) = Chord(400, 2000);
        var scaled = ScaledPicture.Of(new() { Image = "x", References = known, Targets = [], ClickPx = click }, Measured.Frame).Value;
        var length = scaled.Length(new("t", a, b)).Value;
        var (low, high) = scaled.Fit.SlantRange;
        return (string.Join('+', length.Warnings.Select(warning => warning.Code).DefaultIfEmpty("none")), length.Warnings.Any(warning => warning.Say.Contains("by a camera at a slant, of about ", StringComparison.Ordinal)), truth >= length.LowMm && truth <= length.HighMm, degrees >= low && degrees <= high, (length.HighMm - length.LowMm) / 2 / truth);
    }
}
