using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>A picture that is to be laid on the board.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Frame">Its size.</param>
/// <param name="Side">The side it was said to show.</param>
/// <param name="Landmarks">What it shows, each name once.</param>
/// <param name="References">Known lengths in it. Those that stand above the board are not used.</param>
public sealed record PictureToLay(string Sha256, string Name, PictureFrame Frame, PictureSide Side, ValueList<SeenLandmark> Landmarks, ValueList<ReferenceLength> References)
{
    /// <summary>Known lengths on the board itself.</summary>
    internal IEnumerable<ReferenceLength> OnBoard => References.Where(reference => reference.HeightMm == 0);

    /// <summary>True where the side says that left and right swap against the board seen from its top.</summary>
    internal bool SaidMirrored => Side == PictureSide.Bottom;

    /// <summary>True where it was said to show one of the board's two sides.</summary>
    internal bool SideSaid => Side is PictureSide.Top or PictureSide.Bottom;
}
