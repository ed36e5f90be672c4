using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Quantities;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Weighing.Modelling;

/// <summary>One line of evidence about a length, mm: from a picture (with the picture's hash and the ends clicked) or from an instrument.</summary>
/// <param name="Mm">Value.</param>
/// <param name="UMm">Standard uncertainty.</param>
/// <param name="ScaleShare">Relative standard uncertainty shared with every length of the same picture; zero for an instrument.</param>
/// <param name="Low">Lower end of the 90 % interval.</param>
/// <param name="High">Upper end of the 90 % interval.</param>
/// <param name="Picture">Hash of the picture; empty for an instrument.</param>
/// <param name="PictureName">Name of the picture's file; empty for an instrument.</param>
/// <param name="Sighting">The entry of the length.</param>
/// <param name="Scales">Entries of the scale it leans on, and of the file.</param>
/// <param name="How">How it was measured, without the value.</param>
/// <param name="Warnings">What to know about it.</param>
/// <param name="Snap">The standard size it must be, or null.</param>
/// <param name="Board">First picture, by hash, of the board that its picture lies on; empty for none.</param>
/// <param name="ByBoard">True when its scale is that board's: it then shares it with what was measured in the board's other pictures.</param>
/// <param name="ScaleOf">Hash of the picture whose scale it has, where its own was made of that one; empty otherwise. Both are then one line.</param>
/// <param name="OwnPackage">True when its scale leans on the recognised package of the very spot: it then says nothing of which package that is.</param>
public sealed record LengthReading(
    double Mm,
    double UMm,
    double ScaleShare,
    double Low,
    double High,
    string Picture,
    string PictureName,
    EntryId Sighting,
    ValueList<EntryId> Scales,
    string How,
    ValueList<MeasureWarning> Warnings,
    Seeing.Standards.StandardSnap? Snap,
    string Board = "",
    bool ByBoard = false,
    string ScaleOf = "",
    bool OwnPackage = false)
{
    /// <summary>How it was measured, and what came of it.</summary>
    public string Says => $"{How}: {QuantityText.Noted(Mm, UMm, "mm")}{(OwnPackage ? WeighingSentences.ByItsOwnPackage : "")}";
}
