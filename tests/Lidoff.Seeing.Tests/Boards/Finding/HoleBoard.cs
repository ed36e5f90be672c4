using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;
using NetVips;

namespace Lidoff.Seeing.Tests.Boards.Finding;

/// <summary>
/// An invented board 40 × 27 mm with holes through it, photographed by the renderer's pinhole camera and then by a lens, a sensor and a JPEG
/// of this test's own. The finder knows nothing of any of them.
/// </summary>
internal sealed class HoleBoard
{
    public const double WidthMm = 40;
    public const double HeightMm = 27;
    private const int Width = 1800;
    private const int Height = 1350;

    private readonly Random random;

    public HoleBoard(int seed, bool symmetric = false)
    {
        random = new(seed);
        Seed = seed;
        var holes = new List<ScenePart>();
        // Two mounting holes, not at mirrored places; sixteen plated holes; twelve vias under mask.
        foreach (var (count, size) in new[] { (2, 2.2), (16, 0.9), (12, 0.35) })
        {
            for (var i = 0; i < count;)
            {
                var (x, y) = (1.6 + ((WidthMm - 3.2) * random.NextDouble()), 1.6 + ((HeightMm - 3.2) * random.NextDouble()));
                if (holes.Any(hole => Math.Abs(hole.X - x) < 1.8 + (hole.LengthMm / 2) && Math.Abs(hole.Y - y) < 1.8 + (hole.LengthMm / 2))) continue;
                if (symmetric && Math.Abs(x - (WidthMm / 2)) < 2 && Math.Abs(y - (HeightMm / 2)) < 2) continue;
                holes.Add(Hole(holes.Count, x, y, size));
                i++;
                if (!symmetric) continue;
                holes.Add(Hole(holes.Count, WidthMm - x, HeightMm - y, size));
                i++;
            }
        }

        Holes = holes;
    }

    public int Seed { get; }

    public IReadOnlyList<ScenePart> Holes { get; }

    /// <summary>A number from 0 to 1.</summary>
    public double Even() => random.NextDouble();

    /// <summary>A picture of one side with parts of its own, some of which cover holes: slant to 15°, any turn, light from one side, blur, grain, a bent lens, JPEG.</summary>
    public Shot Take(bool bottom, double tilt = 15, double bend = 0.003, double? turn = null, string title = "")
    {
        var parts = Parts(new(Seed + (bottom ? 5000 : 9000)));
        var scene = new Scene
        {
            Title = title, Seed = Seed + (bottom ? 1 : 2), BoardWidthMm = WidthMm, BoardHeightMm = HeightMm, Width = Width, Height = Height, PxPerMm = 36 * (0.88 + (0.12 * Even())),
            CameraDistanceMm = 100 + (80 * Even()), TiltDegrees = tilt * Even(), TurnDegrees = turn ?? ((50 * Even()) - 25 + (Even() < 0.5 ? 0 : 180)), LookAt = (18.5 + (3 * Even()), 12 + (3 * Even())),
            Mask = Even() < 0.5 ? MaskColour.Green : MaskColour.Blue, BlurPx = 0.6 + (0.7 * Even()), Grain = 2 + (3 * Even()), Uneven = 0.4 * Even(),
            // A part that lies over a hole hides it: the renderer draws by height.
            Parts = [.. Holes.Select(hole => hole with { X = bottom ? WidthMm - hole.X : hole.X }), .. parts],
        };
        var k = bend * ((2 * Even()) - 1);
        var rendered = SceneRenderer.Render(scene);
        return new(scene, bottom, k, Photographed(rendered.Pixels, k));
    }

    private static ScenePart Hole(int number, double x, double y, double size) => size > 0.5
        ? new($"H{number}", PartShape.Hole, x, y, size, size, 0)
        : new($"V{number}", PartShape.Box, x, y, size, size, 0) { Tint = PartTint.Gap, RoundMm = size / 2 };

    // Chips with their dot and mark, round lamps, tantalum bodies with a dot, passives, test points: none of them on the other side.
    private static List<ScenePart> Parts(Random random)
    {
        (double X, double Y) At() => (2 + ((WidthMm - 4) * random.NextDouble()), 2 + ((HeightMm - 4) * random.NextDouble()));
        var parts = new List<ScenePart>();
        for (var i = 0; i < 3; i++)
        {
            var (x, y) = At();
            parts.Add(new($"U{i}", PartShape.Chip, x, y, 4, 3, 0.9) { Marks = ["080Q8", "OB0"], Ways = 16, PitchMm = 0.5, LeadMm = 0.5 });
        }

        for (var i = 0; i < 8; i++)
        {
            var (x, y) = At();
            parts.Add(new($"C{i}", PartShape.Passive, x, y, 1.6, 0.8, 0.8) { TurnDegrees = i % 2 * 90 });
        }

        for (var i = 0; i < 9; i++)
        {
            var (x, y) = At();
            var size = 0.5 + (0.6 * random.NextDouble());
            parts.Add(i < 6
                ? new($"T{i}", PartShape.Pad, x, y, size, size, 0.001) { RoundMm = size / 2 }
                : new($"D{i}", PartShape.Box, x, y, 1.6, 1.6, 0.8) { RoundMm = 0.8, Tint = i == 6 ? PartTint.White : PartTint.Black });
        }

        return parts;
    }

    private byte[] Photographed(byte[] pixels, double k)
    {
        var bent = new byte[pixels.Length];
        var half = Math.Sqrt((Width * Width) + (Height * Height)) / 2;
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                var (dx, dy) = (x + 0.5 - (Width / 2.0), y + 0.5 - (Height / 2.0));
                var grow = 1 + (k * ((dx * dx) + (dy * dy)) / (half * half));
                var (sx, sy) = (Math.Clamp((Width / 2.0) + (dx * grow) - 0.5, 0, Width - 1.001), Math.Clamp((Height / 2.0) + (dy * grow) - 0.5, 0, Height - 1.001));
                var (ix, iy) = ((int)sx, (int)sy);
                var (tx, ty) = (sx - ix, sy - iy);
                for (var band = 0; band < 3; band++)
                {
                    var at = (((iy * Width) + ix) * 3) + band;
                    var (a, b, c, d) = (pixels[at], pixels[at + 3], pixels[at + (Width * 3)], pixels[at + (Width * 3) + 3]);
                    bent[(((y * Width) + x) * 3) + band] = (byte)(((1 - ty) * (((1 - tx) * a) + (tx * b))) + (ty * (((1 - tx) * c) + (tx * d))) + 0.5);
                }
            }
        }

        using var image = Image.NewFromMemory(bent, Width, Height, 3, Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb);
        return image.JpegsaveBuffer(q: 80 + (int)(12 * Even()));
    }

    /// <summary>A picture and where things truly show in it.</summary>
    public sealed record Shot(Scene Scene, bool Bottom, double Bend, byte[] Jpeg)
    {
        /// <summary>Where a board point, seen from the top, shows.</summary>
        public PicturePoint Show(double x, double y)
        {
            var at = BenchBoard.Show(Scene with { Parts = [] }, new(Bottom ? WidthMm - x : x, y), false);
            // The lens takes what is seen here from (1 + k·r²) times as far: undone in a few rounds.
            var half = Math.Sqrt((Width * Width) + (Height * Height)) / 2;
            var (dx, dy) = (at.X - (Width / 2.0), at.Y - (Height / 2.0));
            var (u, v) = (dx, dy);
            for (var i = 0; i < 8; i++)
            {
                var grow = 1 + (Bend * ((u * u) + (v * v)) / (half * half));
                (u, v) = (dx / grow, dy / grow);
            }

            return new((Width / 2.0) + u, (Height / 2.0) + v);
        }

        /// <summary>What the finder finds; flipped about its upright axis where asked for.</summary>
        public PictureMarks Marks(bool flipped = false)
        {
            using var image = Image.NewFromBuffer(Jpeg);
            using var turned = flipped ? image.FlipHor() : image.Copy();
            var bytes = turned.WriteToMemory<byte>();
            var values = new float[Width * Height];
            for (var i = 0; i < values.Length; i++) values[i] = ((299 * bytes[3 * i]) + (587 * bytes[(3 * i) + 1]) + (114 * bytes[(3 * i) + 2])) / 1000f;
            return PictureMarks.Of(new GreyPicture(Width, Height, values, 1), new PictureFrame(Width, Height));
        }
    }
}
