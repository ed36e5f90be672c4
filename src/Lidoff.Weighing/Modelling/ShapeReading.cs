using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Standards;

namespace Lidoff.Weighing.Modelling;

/// <summary>One shape measured in one picture.</summary>
/// <param name="Value">Median, mm, mm² or degrees.</param>
/// <param name="U">Standard uncertainty.</param>
/// <param name="ScaleShare">The part of the relative standard uncertainty that comes from the scale.</param>
/// <param name="Low">Lower end of the 90 % interval.</param>
/// <param name="High">Upper end of the 90 % interval.</param>
/// <param name="Picture">Hash of the picture.</param>
/// <param name="PictureName">Its name; hostile text.</param>
/// <param name="Sighting">The entry of the clicks.</param>
/// <param name="Scales">What else it rests on: known lengths, the picture, a look at it.</param>
/// <param name="How">How it was measured, in words.</param>
/// <param name="Warnings">What to know about it.</param>
/// <param name="Snap">The standard pitch it must be; null for none.</param>
/// <param name="ScaleOf">Hash of the picture whose scale it has, where its own was made of that one; empty otherwise.</param>
/// <param name="Board">First picture, by hash, of the board that its picture lies on; empty for none.</param>
/// <param name="ByBoard">True when its scale is that board's.</param>
/// <param name="OwnPackage">True when its scale leans on the recognised package of the very spot.</param>
public sealed record ShapeReading(
    double Value, double U, double ScaleShare, double Low, double High, string Picture, string PictureName, EntryId Sighting, ValueList<EntryId> Scales, string How,
    ValueList<MeasureWarning> Warnings, StandardSnap? Snap, string ScaleOf, string Board, bool ByBoard, bool OwnPackage)
{
    /// <summary>A circle's diameter or a pitch as a length among lengths.</summary>
    public LengthReading AsLength() => new(Value, U, ScaleShare, Low, High, Picture, PictureName, Sighting, Scales, How, Warnings, Snap, Board, ByBoard, ScaleOf, OwnPackage: OwnPackage);
}
