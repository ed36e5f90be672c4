using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>
/// Where a pin-1 dot lies on the body with the mark upright, and whether it says the same as the text of which way up that is. On most packages pin 1
/// is at the lower left of the upright mark: two public notes for builders and a maker's engineer say so ("almost all package markings"), no standard.
/// </summary>
/// <param name="At">The dot in the picture, px.</param>
/// <param name="P">Probability that it is one.</param>
/// <param name="IsLower">True where it lies below the middle of the upright body.</param>
/// <param name="IsLeft">True where it lies left of it.</param>
/// <param name="CornerP">Probability that this is its corner and not the next one: a dot half way along a side stands for either.</param>
public sealed record PinOne(PicturePoint At, double P, bool IsLower, bool IsLeft, double CornerP)
{
    // A dot this share of half a side off the middle is likelier in its corner than in the next one by e to one. A choice of ours.
    private const double Soft = 0.12;

    // What it is called where the corner is clear.
    private const double Clear = 0.8;

    /// <summary>The corner's name: lower left.</summary>
    public string Corner => $"{(IsLower ? "lower" : "upper")} {(IsLeft ? "left" : "right")}";

    /// <summary>True where the corner is clear.</summary>
    public bool IsClear => CornerP >= Clear;

    /// <summary>Where a dot lies.</summary>
    /// <param name="at">The dot, px of the picture.</param>
    /// <param name="p">Probability that it is one.</param>
    /// <param name="body">The body, px of the picture, at any turn.</param>
    /// <param name="turnDeg">Clockwise turn that makes the mark upright, degrees.</param>
    public static PinOne Of(PicturePoint at, double p, PictureRegion body, double turnDeg)
    {
        // The body's extent along and across the text: its own sides, or where the text runs along a diagonal of it, their projection.
        var upright = new PictureRegion(body.Middle, 1, 1, -turnDeg * Math.PI / 180);
        var (x, y) = upright.Inside(at);
        var corners = body.Corners.Select(upright.Inside).ToList();
        var (across, down) = (corners.Max(corner => corner.X), corners.Max(corner => corner.Y));
        var left = Share(-x / across);
        var lower = Share(y / down);
        return new(at, p, lower >= 0.5, left >= 0.5, Math.Max(left, 1 - left) * Math.Max(lower, 1 - lower));
    }

    /// <summary>What is to be said of it.</summary>
    public string Says => !IsClear ? ReadingSentences.DotBetween(Corner)
        : IsLower && IsLeft ? ReadingSentences.DotAgrees
        : !IsLower && IsLeft ? ReadingSentences.DotAtUpperLeft
        : !IsLower ? ReadingSentences.DotOpposite
        : ReadingSentences.DotAtLowerRight;

    private static double Share(double off) => 1 / (1 + Elementary.Exp(-Math.Clamp(off / Soft, -40, 40)));
}
