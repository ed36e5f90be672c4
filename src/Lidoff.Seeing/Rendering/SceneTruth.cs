using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Rendering;

/// <summary>What is true of a scene's picture, known without rendering it: where the board, its parts and its ruler show.</summary>
/// <param name="Outline">Corners of the board in the upright picture, clockwise from its upper left.</param>
/// <param name="Parts">Every part.</param>
/// <param name="Ruler">First and last line of the ruler, <see cref="Scene.RulerMm"/> apart on the board's plane; null without a ruler.</param>
public sealed record SceneTruth(IReadOnlyList<PicturePoint> Outline, IReadOnlyList<TruePart> Parts, (PicturePoint From, PicturePoint To)? Ruler)
{
    /// <summary>How far below the board the ruler lies, mm.</summary>
    internal const double RulerGapMm = 3;

    /// <summary>Works it out from the scene's camera.</summary>
    public static SceneTruth Of(Scene scene)
    {
        Guard.NotNull(scene);
        var camera = new SceneCamera(scene);
        var (w, h) = (scene.BoardWidthMm, scene.BoardHeightMm);
        return new(
            [camera.Show(0, 0, 0), camera.Show(w, 0, 0), camera.Show(w, h, 0), camera.Show(0, h, 0)],
            [.. scene.Parts.Select(part => new TruePart(part, Corners(part, camera)))],
            scene.RulerMm > 0 ? (camera.Show(0, h + RulerGapMm, 0), camera.Show(scene.RulerMm, h + RulerGapMm, 0)) : null);
    }

    private static List<PicturePoint> Corners(ScenePart part, SceneCamera camera)
    {
        var (sin, cos) = (Elementary.Sin(part.TurnDegrees * Math.PI / 180), Elementary.Cos(part.TurnDegrees * Math.PI / 180));
        var (a, b) = (part.LengthMm / 2, part.WidthMm / 2);
        return [.. new[] { (-a, -b), (a, -b), (a, b), (-a, b) }.Select(at => camera.Show(
            part.X + (at.Item1 * cos) - (at.Item2 * sin), part.Y + (at.Item1 * sin) + (at.Item2 * cos), part.HeightMm))];
    }
}
