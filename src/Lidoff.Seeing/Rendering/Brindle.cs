using Lidoff.Seeing.Rendering.Invented;

namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Boards of <i>Brindle</i>, a bark counter and night lamp for a working dog's collar by the Ottermill Works. Device and maker are
/// invented; the sizes of bodies are those of standard outlines.
/// </summary>
public static class Brindle
{
    /// <summary>The upper side of the main board: 34 × 22 mm, radio chip, flash, clock with a half-worn mark, accelerometer, converter, charger, antenna.</summary>
    public static Scene MainTop(int seed = 1) => MainBoard.Top(seed);

    /// <summary>The lower side of the main board, as seen when it is turned about its upright axis.</summary>
    public static Scene MainBottom(int seed = 3) => MainBoard.Bottom(seed);

    /// <summary>The upper side of the small board with button and lamp: 22 × 12 mm, blue.</summary>
    public static Scene LampTop(int seed = 2) => LampBoard.Top(seed);

    /// <summary>The lower side of the small board.</summary>
    public static Scene LampBottom(int seed = 4) => LampBoard.Bottom(seed);
}
