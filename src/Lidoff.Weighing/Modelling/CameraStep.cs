using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Carrying;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// What a picture of a target tells of the camera of the picture with a given hash: the picture that its scale was carried over from, else the one last tagged with the same camera and zoom, as
/// large, whose target tells the lens; null where there is none. A zoom and a camera must both be said: a lens belongs to neither alone.
/// </summary>
/// <param name="tables">The dossier.</param>
/// <param name="pictures">Which file a picture reference means.</param>
/// <param name="scales">The known lengths of a picture.</param>
/// <param name="calibrations">What the target in a picture tells.</param>
/// <param name="frame">Size and mirroring of a stored picture by its hash, null where it is no picture.</param>
public sealed class CameraStep(DossierTables tables, PictureStep pictures, ScaleStep scales, CalibrationStep calibrations, Func<string, PictureFrame?> frame) : Step<string, PictureCamera?>
{
    // Below so much the lens is known better than what is believed of a phone's.
    private const double KnownBend = 0.003;

    /// <inheritdoc/>
    public override string Name => "camera";

    /// <inheritdoc/>
    public override PictureCamera? Compute(string key, IReads reads)
    {
        if (frame(key) is not { } size) return null;
        var own = reads.Read(scales, key);
        if (own.CarriedFrom.Length > 0 && reads.Read(pictures, own.CarriedFrom) is { Found: true } carried && Of(carried.Sha256, [], size, reads) is { } by) return by;
        var said = new Dictionary<string, Sighting<PictureSighting>>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var tags in tables.Pictures.About(DossierTables.Whole, reads))
        {
            if (reads.Read(pictures, tags.Value.File) is not { Found: true } picture) continue;
            order.Remove(picture.Sha256);
            order.Add(picture.Sha256);
            said[picture.Sha256] = tags;
        }

        if (!said.TryGetValue(key, out var here) || here.Value.Zoom.Length == 0 || here.Value.Camera.Length == 0) return null;
        var alike = order.Where(sha => sha != key && said[sha].Value.Zoom == here.Value.Zoom && said[sha].Value.Camera == here.Value.Camera)
            .Select(sha => Of(sha, [here.Id, said[sha].Id], size, reads)).OfType<PictureCamera>().ToList();
        return alike.LastOrDefault(each => each.Known.Calibration.BendU < KnownBend) ?? alike.LastOrDefault();
    }

    private PictureCamera? Of(string sha256, EntryId[] tags, PictureFrame size, IReads reads)
    {
        if (reads.Read(calibrations, sha256) is not { } calibration || !calibration.Fits(size)) return null;
        var picture = reads.Read(pictures, sha256);
        return new(new(picture.Found ? picture.Name : sha256, calibration), sha256, [.. reads.Read(scales, sha256).References.Select(reference => reference.Id), .. tags]);
    }
}
