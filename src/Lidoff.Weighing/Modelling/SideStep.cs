using Lidoff.Evidence.Recomputing;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Weighing.Modelling;

/// <summary>Which side the picture with a given hash was last said to show.</summary>
public sealed class SideStep(DossierTables tables, PictureStep pictures) : Step<string, PictureSide>
{
    /// <inheritdoc/>
    public override string Name => "side";

    /// <inheritdoc/>
    public override PictureSide Compute(string key, IReads reads) => tables.Pictures.About(DossierTables.Whole, reads)
        .Where(picture => reads.Read(pictures, picture.Value.File) is { Found: true } found && found.Sha256 == key)
        .Select(picture => picture.Value.Side).LastOrDefault(side => side != PictureSide.Unknown);
}
