using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Tests.Measuring.Targets;

/// <summary>
/// Rendered targets with known pose, lens, blur, grain and compression, drawn otherwise than the program's priors: the printed 90 % must be
/// 90 % (0.87 to 0.93 over two hundred scenes and more, as the project's issues ask), for lengths clicked anywhere in the target's plane and for the lens.
/// </summary>
public sealed class TargetCoverageTests(ITestOutputHelper output)
{
    [Fact]
    public void On_240_targets_ninety_per_cent_means_ninety_per_cent()
    {
        const int count = 240;
        var tallies = new (int Held, int Asked, double Error, double Half, bool Lens, bool LensKnown, string Note)[count];
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => tallies[i] = One(i));
        var found = tallies.Where(each => each.Asked > 0).ToList();
        var held = found.Sum(each => each.Held) / (double)found.Sum(each => each.Asked);
        var lens = found.Count(each => each.Lens) / (double)found.Count;
        foreach (var (name, part) in new[] { ("printed", 0), ("glass", 1) })
        {
            var some = tallies.Where((each, i) => i % 2 == part && each.Asked > 0).ToList();
            var worst = some.Select(each => each.Error).Order().ToList();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: held {some.Sum(each => each.Held) / (double)some.Sum(each => each.Asked):0.000}, median of the larger errors {100 * worst[worst.Count / 2]:0.000} %, median half width {100 * some.Select(each => each.Half).Order().ElementAt(some.Count / 2):0.000} %"));
        }

        var errors = found.Select(each => each.Error).Order().ToList();
        var halves = found.Select(each => each.Half).Order().ToList();
        foreach (var note in tallies.Where(each => each.Note.Length > 0)) output.WriteLine(note.Note);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"found {found.Count} of {count}; lengths held {held:0.000} of {found.Sum(each => each.Asked)}; lens held {lens:0.000}, known in {found.Count(each => each.LensKnown)}; median error {100 * errors[errors.Count / 2]:0.000} %, worst {100 * errors[^1]:0.00} %, median half width {100 * halves[halves.Count / 2]:0.000} %"));
        Assert.True(found.Count >= 0.97 * count);
        Assert.InRange(held, 0.87, 0.93);
        // One a scene, n = 240, p = 0.9: standard deviation 0.019.
        Assert.InRange(lens, 0.85, 0.97);
    }

    private static (int Held, int Asked, double Error, double Half, bool Lens, bool LensKnown, string Note) One(int i)
    {
        var random = new Random(1000 + i);
        double Even(double low, double high) => low + ((high - low) * random.NextDouble());
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var (columns, rows) = (random.Next(6, 15), random.Next(5, 11));
        var pitch = new[] { 0.5, 1, 2, 2.54, 5 }[random.Next(5)];
        // The typed pitch is off by what a print is off, or a glass target, whose lengths are clicked on fine lines: there slant and lens count.
        var (pitchU, click) = i % 2 == 0 ? (KnownTarget.PrintedU, 0.7) : (KnownTarget.GlassU, 0.1);
        var real = pitch * (1 + (pitchU * Normal()));
        var scene = new TargetScene(random.Next(2) == 0 ? TargetPattern.Checker : TargetPattern.Dots, columns, rows, real)
        {
            Width = 640,
            Height = 480,
            PxPerMm = Even(0.4, 0.85) * 640 / (columns * real),
            Focal = Even(1.5, 6),
            SlantDegrees = random.Next(3) == 0 ? Even(0, 1.5) : Even(0, 20),
            TowardsDegrees = Even(0, 360),
            TurnDegrees = Even(0, 360),
            Bend = random.Next(8) == 0 ? Even(-0.05, 0.05) : Even(-0.006, 0.006),
            BlurPx = Even(0.5, 2),
            Grain = Even(1, 5),
            Jpeg = random.Next(75, 96),
            Dot = Even(0.35, 0.65),
            Tones = random.Next(4) == 0 ? (200, 40) : (Even(20, 80), Even(150, 230)),
            Seed = i,
        };
        scene = scene with { Off = (Even(-0.1, 0.1) * 640 / scene.PxPerMm, Even(-0.1, 0.1) * 480 / scene.PxPerMm) };
        var looked = TargetSearch.Find(scene.Grey(), scene.Frame);
        if (!looked.TryValue(out var found)) return (0, 0, 0, 0, false, false, $"{scene}: {looked.Faults[0].Say}");
        if (found.Pattern != scene.Pattern) return (0, 0, 0, 0, false, false, $"{scene}: taken for {found.Pattern}");
        var target = KnownTarget.Of(found, pitch, pitchU * pitch);
        var picture = ScaledPicture.Of(new() { Image = "x", References = [target.Longest(0)], Targets = [] }, scene.Frame).Value;
        var (held, asked, error, half) = (0, 0, 0.0, 0.0);
        while (asked < 4)
        {
            PicturePoint a = new(Even(20, 620), Even(20, 460)), b = new(Even(20, 620), Even(20, 460));
            if (a.DistanceTo(b) < 100) continue;
            var (one, two) = (scene.Under(a.X, a.Y), scene.Under(b.X, b.Y));
            var truth = Math.Sqrt(((one.X - two.X) * (one.X - two.X)) + ((one.Y - two.Y) * (one.Y - two.Y)));
            PicturePoint Clicked(PicturePoint at) => new(at.X + (click * Normal()), at.Y + (click * Normal()));
            var length = picture.Length(new("t", Clicked(a), Clicked(b), ClickPx: click)).Value;
            asked++;
            if (truth >= length.LowMm && truth <= length.HighMm) held++;
            error = Math.Max(error, Math.Abs((length.ValueMm / truth) - 1));
            half = (length.HighMm - length.LowMm) / 2 / truth;
        }

        return (held, asked, error, half, Math.Abs(found.Bend - scene.Bend) < 1.645 * found.BendU, found.LensKnown, "");
    }
}
