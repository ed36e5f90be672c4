namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>Turns a board placed as seen from above into what is seen from below.</summary>
internal static class Mirrors
{
    /// <summary>The scene turned about its upright axis: places are mirrored; parts and their marks are not, they are looked at from their own side.</summary>
    public static Scene Of(Scene scene) => scene with
    {
        Parts = [.. scene.Parts.Select(part => part with { X = scene.BoardWidthMm - part.X, TurnDegrees = -part.TurnDegrees })],
    };
}
