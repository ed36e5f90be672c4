using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Renders an invented board as a bench picture with known truth: for each pixel the camera's ray is followed to the board and to the
/// top and flanks of every part, edges covered by their distance. Plain arithmetic in fixed order: the same pixels everywhere.
/// </summary>
public static class SceneRenderer
{
    /// <summary>Renders. The words of the scene must be drawable: capital letters, digits and - . / : + #.</summary>
    public static RenderedScene Render(Scene scene)
    {
        Guard.Positive(scene.BoardWidthMm);
        Guard.Positive(scene.BoardHeightMm);
        Guard.That(scene.Width > 0 && scene.Height > 0 && scene.Orientation is >= 1 and <= 8, "a size above zero and an orientation from 1 to 8");
        Guard.That(
            StrokeFont.Knows(scene.Title) && StrokeFont.Knows(scene.Legend) && scene.Parts.All(part => part.Marks.All(StrokeFont.Knows)),
            "words of capital letters, digits and - . / : + #");
        var camera = new SceneCamera(scene);
        var canvas = new Canvas(scene.Width, scene.Height);
        GroundPainter.Paint(scene, camera, canvas);
        foreach (var part in scene.Parts.OrderBy(part => part.HeightMm).ThenBy(part => part.Spot, StringComparer.Ordinal)) PartPainter.Paint(part, scene, camera, canvas);
        if (scene.Uneven > 0) canvas.Shade(scene.Uneven, scene.Light);
        canvas.Blur(scene.BlurPx, scene.ToneExponent);
        if (scene.Legend.Length > 0) LegendPainter.Paint(scene.Legend, canvas);
        var swaps = scene.Orientation >= 5;
        var truth = SceneTruth.Of(scene);
        return new(
            scene,
            swaps ? scene.Height : scene.Width,
            swaps ? scene.Width : scene.Height,
            canvas.Stored(scene.Orientation, scene.Grain, scene.Seed),
            truth.Outline,
            truth.Parts,
            truth.Ruler);
    }
}
