using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

/// <summary>What lies beside a board in its picture.</summary>
public enum Beside
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>A caption strip along the picture's lower edge, as microscope programs burn it in.</summary>
    Caption,

    /// <summary>A ruler along the upper or lower edge, laid by hand up to 4° askew to the board.</summary>
    Ruler,
}

/// <summary>A rendered board, turned by up to 6° in its picture, with one known length and one asked for anywhere on it, clicked to half a pixel; the pose is the renderer's.</summary>
/// <param name="Scene">What is rendered.</param>
/// <param name="Known">The known length.</param>
/// <param name="Asked">The length asked for.</param>
/// <param name="TruthMm">Its true length.</param>
internal sealed record AskewScene(Scene Scene, ReferenceLength Known, TargetLength Asked, double TruthMm)
{
    private const double Click = 0.5;

    /// <summary>Makes one.</summary>
    public static AskewScene Of(int seed, int tilt, Beside beside)
    {
        var random = new Random((seed * 1000) + tilt + (100 * (int)beside));
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        var board = (seed % 4) switch { 0 => Brindle.MainTop(), 1 => Brindle.MainBottom(), 2 => Brindle.LampTop(), _ => Brindle.LampBottom() };
        var zoom = random.Next(3) == 0 ? Between(45, 90) : Between(20, 45);
        var (width, height, turn) = (800 / zoom, 600 / zoom, Between(-6, 6));
        (double X, double Y) look = (Between(0.3, 0.7) * board.BoardWidthMm, Between(0.3, 0.7) * board.BoardHeightMm);
        var parts = board.Parts;
        if (beside == Beside.Ruler)
        {
            var (sin, cos) = (Math.Sin(turn * Math.PI / 180), Math.Cos(turn * Math.PI / 180));
            var down = ((random.Next(2) * 2) - 1) * 0.36 * height;
            var ruler = new ScenePart("SCALE", PartShape.Graticule, look.X + (down * sin), look.Y + (down * cos), Math.Max(1, Math.Floor(width * 0.8)), height * 0.12, 0) { Tint = PartTint.White, TurnDegrees = Between(-4, 4) };
            parts = [.. parts.Where(part => Math.Abs(((part.X - ruler.X) * sin) + ((part.Y - ruler.Y) * cos)) > (Math.Max(part.LengthMm, part.WidthMm) / 2) + (ruler.WidthMm * 0.8)), ruler];
        }

        var scene = board with
        {
            Parts = parts, Seed = seed + 1, Width = 800, Height = 600, PxPerMm = zoom, CameraDistanceMm = Between(0.8, 3) * width, LookAt = look, RulerMm = 0, TiltDegrees = tilt, TurnDegrees = turn,
            BlurPx = Between(0.7, 1.4), Grain = Between(1, 3), Uneven = Between(0, 0.4), Legend = beside == Beside.Caption ? "INVENTED - A CAPTION STRIP" : "",
        };
        var camera = new SceneCamera(scene);
        (PicturePoint From, PicturePoint To, double Mm) Chord(double least, double most)
        {
            while (true)
            {
                PicturePoint a = new(Between(24, 776), Between(18, 558)), b = new(Between(24, 776), Between(18, 558));
                if (a.DistanceTo(b) < least || a.DistanceTo(b) > most) continue;
                var ((x1, y1), (x2, y2)) = (camera.See(a.X, a.Y, 0), camera.See(b.X, b.Y, 0));
                return (BenchScene.Clicked(random, a, Click), BenchScene.Clicked(random, b, Click), Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2))));
            }
        }

        var (known, asked) = (Chord(250, 600), Chord(150, 500));
        return new(scene, new(known.From, known.To, known.Mm, 0.001 * known.Mm), new("t", asked.From, asked.To), asked.Mm);
    }

    /// <summary>The length asked for, measured with what the rendered picture says.</summary>
    public MeasuredLength Measured()
    {
        var pixels = SceneRenderer.Render(Scene).Pixels;
        var grey = new GreyPicture(Scene.Width, Scene.Height, [.. Enumerable.Range(0, Scene.Width * Scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
        var job = new MeasureJob { Image = "x", References = [Known], Targets = [], ClickPx = Click };
        return ScaledPicture.Of(job, new(Scene.Width, Scene.Height), PictureLook.Of(grey).Kept()).Value.Length(Asked).Value;
    }
}
