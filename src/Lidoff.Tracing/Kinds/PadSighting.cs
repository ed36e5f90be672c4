using Lidoff.Evidence.Pictures;

namespace Lidoff.Tracing.Kinds;

/// <summary>A pad, pin or test pad, and where it lies in a picture. The newest entry of a point counts.</summary>
/// <param name="Spot">The part it belongs to; empty for a pad of its own.</param>
/// <param name="Pad">Number or name of the pad, such as 13, A4 or TP5.</param>
/// <param name="Name">What it is called in a pin-out, such as VDD; empty when not known.</param>
/// <param name="Role">Electrical role, one of <see cref="PadRoles.Words"/>; empty when not known.</param>
/// <param name="Side">Side of the board.</param>
/// <param name="Picture">File name, entry id or the first digits of a file's hash; empty when not pointed at.</param>
/// <param name="At">Where it lies, px; null when not pointed at.</param>
public sealed record PadSighting(string Spot, string Pad, string Name, string Role, PadSide Side, string Picture, PicturePoint? At)
{
    /// <summary>The point as touches write it: U3.13, or the pad's own name.</summary>
    public TouchPoint Point => new(Spot.Length > 0 ? Spot + "." + Pad : Pad);
}
