using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// The specimen that the picture with a given hash shows, where boards are concerned: the last one named by a landmark in it, else the last
/// one its tags name; empty where none was. A landmark noted without its specimen is then no landmark of another one.
/// </summary>
public sealed class PictureSpecimenStep(DossierTables tables, PictureStep pictures) : Step<string, string>
{
    /// <inheritdoc/>
    public override string Name => "picture's specimen";

    /// <inheritdoc/>
    public override string Compute(string key, IReads reads)
    {
        bool Here(string picture) => picture.Length > 0 && reads.Read(pictures, picture) is { Found: true } found && found.Sha256 == key;
        var landmarks = tables.Landmarks.About(DossierTables.Whole, reads).Where(each => each.Specimen.Length > 0 && Here(each.Value.Picture)).Select(each => each.Specimen);
        var tags = tables.Pictures.About(DossierTables.Whole, reads).Where(each => each.Specimen.Length > 0 && Here(each.Value.File)).Select(each => each.Specimen);
        return landmarks.LastOrDefault() ?? tags.LastOrDefault() ?? "";
    }
}
