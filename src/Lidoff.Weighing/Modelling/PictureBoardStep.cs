using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>The board that the picture with a given hash was laid on or left out of; null where no landmark was pointed at in it.</summary>
public sealed class PictureBoardStep(DossierTables tables, PictureStep pictures, BoardStep boards) : Step<string, PictureBoard?>
{
    /// <inheritdoc/>
    public override string Name => "picture's board";

    /// <inheritdoc/>
    public override PictureBoard? Compute(string key, IReads reads)
    {
        // A picture shows one specimen; where landmarks in it were noted for two by mistake, the later one is meant.
        var last = tables.Landmarks.About(DossierTables.Whole, reads)
            .LastOrDefault(each => each.Value.At is not null && reads.Read(pictures, each.Value.Picture) is { Found: true } picture && picture.Sha256 == key);
        return last is null ? null : reads.Read(boards, last.Specimen).Boards.FirstOrDefault(board => board.Laid.Concerns(key));
    }
}
