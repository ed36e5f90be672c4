using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Rendering;

/// <summary>
/// What is true of a rendered part: the part itself and where the corners of its top lie in the upright picture, clockwise from the
/// part's own top left.
/// </summary>
public sealed record TruePart(ScenePart Part, IReadOnlyList<PicturePoint> Corners)
{
    /// <summary>Middle of the left edge of the top: one end of its length.</summary>
    public PicturePoint Left => Middle(Corners[3], Corners[0]);

    /// <summary>Middle of the right edge of the top: the other end of its length.</summary>
    public PicturePoint Right => Middle(Corners[1], Corners[2]);

    /// <summary>Middle of the upper edge of the top: one end of its width.</summary>
    public PicturePoint Top => Middle(Corners[0], Corners[1]);

    /// <summary>Middle of the lower edge of the top: the other end of its width.</summary>
    public PicturePoint Bottom => Middle(Corners[2], Corners[3]);

    /// <summary>Middle of the top.</summary>
    public PicturePoint Centre => Middle(Left, Right);

    private static PicturePoint Middle(PicturePoint a, PicturePoint b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
}
