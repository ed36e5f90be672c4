using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>A picture that lies on the board.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Mirrored">True when left and right swap against the board seen from its top.</param>
/// <param name="ToPicture">From board millimetres to its pixels.</param>
/// <param name="Rests">What is left at each of its landmarks, by name.</param>
/// <param name="Remarks">What to know about it; empty for a clean one.</param>
/// <param name="Warnings">What every length measured in it must be told with: known lengths that the board contradicts.</param>
public sealed record LaidPicture(
    string Sha256, string Name, bool Mirrored, Projective ToPicture, ValueList<LandmarkRest> Rests, ValueList<string> Remarks, ValueList<MeasureWarning> Warnings)
{
    /// <summary>Landmarks that hold it.</summary>
    public int Used => Rests.Count(rest => rest.Used && rest.Tested);
}
