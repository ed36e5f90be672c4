using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>The board that the picture with a given hash was laid on or left out of; null where no landmark was pointed at in it.</summary>
public sealed class PictureBoardStep(DossierTables tables, PictureSpecimenStep specimens, BoardStep boards) : Step<string, PictureBoard?>
{
    /// <inheritdoc/>
    public override string Name => "picture's board";

    /// <inheritdoc/>
    public override PictureBoard? Compute(string key, IReads reads) =>
        tables.Landmarks.About(DossierTables.Whole, reads).Count == 0 ? null : reads.Read(boards, reads.Read(specimens, key)).Boards.FirstOrDefault(board => board.Laid.Concerns(key));
}
