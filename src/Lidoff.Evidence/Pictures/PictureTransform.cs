using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>
/// An invertible map between two named frames: a stored file, the upright picture, a crop, a board. Frames carry names so
/// that a crop's points cannot be used as the picture's by mistake. Immutable.
/// </summary>
public abstract class PictureTransform
{
    private protected PictureTransform(string from, string to) => (From, To) = (from, to);

    /// <summary>Name of the frame it takes points of.</summary>
    public string From { get; }

    /// <summary>Name of the frame it gives points of.</summary>
    public string To { get; }

    /// <summary>The point in <see cref="To"/>. Points on a homography's horizon have none: NaN.</summary>
    public abstract PicturePoint Map(PicturePoint point);

    /// <summary>How it stretches around a point of <see cref="From"/>.</summary>
    public abstract Jacobian JacobianAt(PicturePoint point);

    /// <summary>The map back.</summary>
    public abstract PictureTransform Inverse();

    /// <summary>This map, then <paramref name="next"/>, which must start in the frame this one ends in.</summary>
    public PictureTransform Then(PictureTransform next)
    {
        Guard.That(next.From == To, "a map from frame '" + To + "', got one from '" + next.From + "'");
        return this is Projective a && next is Projective b ? a.Joined(b) : new Chained(this, next);
    }

    /// <summary>Whether it shows things mirrored around a point.</summary>
    public bool MirrorsAt(PicturePoint point) => JacobianAt(point).Determinant < 0;

    /// <summary>Carries a point's spread along, to first order.</summary>
    public PictureSpread Carry(PicturePoint point, PictureSpread spread) => JacobianAt(point).Carry(spread);
}
