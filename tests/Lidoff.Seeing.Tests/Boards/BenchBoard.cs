using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Boards;

/// <summary>
/// A board 40 mm wide under the renderer's pinhole camera, which knows nothing of homographies: it turns points in space and divides by
/// depth. Landmarks are pointed at with a seeded error.
/// </summary>
internal sealed class BenchBoard(int seed)
{
    public const double WidthMm = 40;
    public const double HeightMm = 26;

    private readonly Random random = new(seed);

    /// <summary>Twelve features spread as holes and vias are.</summary>
    public Dictionary<string, BoardPoint> Features { get; init; } = new()
    {
        ["H1"] = new(2, 2), ["H2"] = new(38, 2.5), ["H3"] = new(37.5, 24), ["H4"] = new(2.5, 23.5),
        ["V1"] = new(11, 6), ["V2"] = new(20, 3), ["V3"] = new(29, 7.5), ["V4"] = new(33, 16),
        ["V5"] = new(24, 21), ["V6"] = new(14, 18), ["V7"] = new(6, 13), ["V8"] = new(19, 12),
    };

    /// <summary>A number from 0 to 1.</summary>
    public double Even() => random.NextDouble();

    /// <summary>A camera at random: slant up to 15°, any turn, a distance of 2.2 to 4 picture widths' worth of board.</summary>
    public Scene Pose(double pxPerMm = 90, int width = 4000, int height = 3000, double? tilt = null) => new()
    {
        BoardWidthMm = WidthMm, BoardHeightMm = HeightMm, Parts = [], Width = width, Height = height, PxPerMm = pxPerMm * (0.85 + (0.15 * Even())),
        CameraDistanceMm = 100 + (80 * Even()), TiltDegrees = tilt ?? (15 * Even()), TurnDegrees = (40 * Even()) - 20 + (Even() < 0.5 ? 0 : 180),
        LookAt = (18 + (4 * Even()), 11 + (4 * Even())),
    };

    /// <summary>Where a board point truly shows.</summary>
    public static PicturePoint Show(Scene pose, BoardPoint at, bool bottom)
    {
        // A mark's upper left corner stands at the place itself, so that the truth of the scene gives it exactly.
        var x = bottom ? WidthMm - at.X : at.X;
        return SceneTruth.Of(pose with { Parts = [new("P", PartShape.Pad, x + 0.5, at.Y + 0.5, 1, 1, 0)] }).Parts[0].Corners[0];
    }

    /// <summary>The same with a pointing error.</summary>
    public PicturePoint Click(Scene pose, BoardPoint at, bool bottom, double u)
    {
        var point = Show(pose, at, bottom);
        return new(point.X + (u * Normal()), point.Y + (u * Normal()));
    }

    /// <summary>A picture with its landmarks pointed at; all of them where none are named.</summary>
    public PictureToLay Picture(string name, Scene pose, bool bottom, double u, IEnumerable<string>? landmarks = null, PictureSide? side = null) => new(
        name,
        name,
        new(pose.Width, pose.Height),
        side ?? (bottom ? PictureSide.Bottom : PictureSide.Top),
        [.. (landmarks ?? Features.Keys).Select(each => new SeenLandmark(each, Click(pose, Features[each], bottom, u), u))],
        []);

    /// <summary>A known length between two board points, as read from a good ruler.</summary>
    public ReferenceLength Ruler(Scene pose, bool bottom, BoardPoint from, BoardPoint to, double u = 1, double uMm = 0.02) => new(
        Click(pose, from, bottom, u), Click(pose, to, bottom, u), from.DistanceTo(to) + (uMm * Normal()), uMm, 0, u);

    /// <summary>A number of mean 0 and standard deviation 1 (Box and Muller).</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
