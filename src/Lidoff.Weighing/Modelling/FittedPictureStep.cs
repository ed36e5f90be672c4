using Lidoff.Evidence.Recomputing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Fits the cameras of the picture with a given hash, once for all lengths in it, since hundreds may lie in one; null where it has no known
/// length or is no picture. Of several looks at one picture the last counts.
/// </summary>
/// <param name="tables">The dossier.</param>
/// <param name="scales">The known lengths of a picture.</param>
/// <param name="pictures">Which file a picture reference means.</param>
/// <param name="cameras">What another picture tells of a picture's camera.</param>
/// <param name="frame">Size and mirroring of a stored picture by its hash, null where it is no picture.</param>
public sealed class FittedPictureStep(DossierTables tables, TakenScaleStep scales, PictureStep pictures, CameraStep cameras, Func<string, PictureFrame?> frame) : Step<string, FittedPicture?>
{
    /// <inheritdoc/>
    public override string Name => "fitted picture";

    /// <inheritdoc/>
    public override FittedPicture? Compute(string key, IReads reads)
    {
        var scale = reads.Read(scales, key);
        if (scale.References.Count == 0 || frame(key) is not { } size) return null;
        var look = tables.Looks.About(key, reads) is [.., { } last] ? last : null;
        // A picture made of pictures may have taken the lens out of them.
        var camera = scale.From.Length == 0 ? reads.Read(cameras, key) : null;
        var job = scale.Job(reads.Read(pictures, key) is { Found: true } picture ? picture.Name : key, camera?.Known);
        var all = ScaledPicture.Of(job, size, look?.Value.Look);
        if (all.Ok) return new(scale, all, all.Value, look?.Id, camera);
        var usable = ScaledPicture.Usable(job, size);
        return new(scale, all, usable.References.Count > 0 && ScaledPicture.Of(usable, size, look?.Value.Look).TryValue(out var shown) ? shown : null, look?.Id, camera);
    }
}
