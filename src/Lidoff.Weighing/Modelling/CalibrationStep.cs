using Lidoff.Evidence.Recomputing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Carrying;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// What the target in the picture with a given hash tells of its camera, by that picture alone, so that two targets may each tell the other's picture; null where none lies in it.
/// Its own known lengths alone count: those carried over to it tell nothing new.
/// </summary>
/// <param name="tables">The dossier.</param>
/// <param name="scales">The known lengths of a picture.</param>
/// <param name="frame">Size and mirroring of a stored picture by its hash, null where it is no picture.</param>
public sealed class CalibrationStep(DossierTables tables, ScaleStep scales, Func<string, PictureFrame?> frame) : Step<string, CameraCalibration?>
{
    /// <inheritdoc/>
    public override string Name => "calibration";

    /// <inheritdoc/>
    public override CameraCalibration? Compute(string key, IReads reads)
    {
        var own = new PictureScale([.. reads.Read(scales, key).References.Where(reference => !reference.Value.Reference.Carried)]);
        if (own.References.All(reference => reference.Value.Reference.Target is null) || frame(key) is not { } size) return null;
        var look = tables.Looks.About(key, reads) is [.., { } last] ? last.Value.Look : null;
        return ScaledPicture.Of(own.Job(key), size, look).TryValue(out var picture) ? CameraCalibration.Of(picture) : null;
    }
}
