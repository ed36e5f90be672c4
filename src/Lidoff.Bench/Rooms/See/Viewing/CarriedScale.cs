using Lidoff.Bench.Working;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Carrying;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>
/// The scale of another picture of the same camera, zoom and size, offered to one that has none. It is taken by an act of its own and never
/// in silence: zoom rings get moved, so it carries more doubt than where it was set, and a board may still contradict it.
/// </summary>
/// <param name="From">Hash of the picture it is from.</param>
/// <param name="FromName">Its name; hostile text.</param>
/// <param name="Says">"12.4 px/mm ± 1.1 %".</param>
/// <param name="Known">One length of that picture that has the scale: its ends, px.</param>
/// <param name="LengthMm">What it comes to, mm.</param>
/// <param name="UMm">Standard uncertainty with what putting the zoom back adds, mm.</param>
public sealed record CarriedScale(string From, string FromName, string Says, ScaleSighting Known, double LengthMm, double UMm)
{
    /// <summary>What can be offered to a picture; null where it has a scale, or no other one has its camera, zoom and size.</summary>
    public static CarriedScale? For(OpenDossier dossier, string sha256, int width, int height, PictureTags tags)
    {
        var (view, model) = (dossier.Session.View, dossier.Model);
        if (tags.Zoom.Length == 0 || tags.Camera.Length == 0 || model.Scale(sha256).References.Count > 0) return null;
        var alike = view.Live<PictureSighting>().Where(each => model.Picture(each.Value.File).Found).GroupBy(each => model.Picture(each.Value.File).Sha256, StringComparer.Ordinal)
            .Where(said => said.Key != sha256 && said.Last().Value is { } last && last.Zoom == tags.Zoom && last.Camera == tags.Camera).Select(said => said.Key);
        // The one scaled last: the ring was moved least since.
        return alike.Select(from => Of(dossier, from, width, height)).OfType<(Sighting<ScaleSighting> Last, CarriedScale Scale)>()
            .OrderBy(each => view.Live<ScaleSighting>().ToList().FindIndex(scale => scale.Id == each.Last.Id)).Select(each => each.Scale).LastOrDefault();
    }

    /// <summary>The line that takes it over.</summary>
    public Line Line(string sha256, string specimen) => Working.Line.Of("scale").Set("specimen", specimen).Set("picture", sha256)
        .Set("from", Known.Reference.From.X, Known.Reference.From.Y).Set("to", Known.Reference.To.X, Known.Reference.To.Y).Set("length_mm", LengthMm).Set("u_mm", UMm)
        .Set("height_mm", Known.Reference.HeightMm).Set("click_u_px", 0).Set("camera_distance_mm", Known.CameraDistanceMm).Set("carried_from", From).Set("package", Known.Package);

    private static (Sighting<ScaleSighting> Last, CarriedScale Scale)? Of(OpenDossier dossier, string from, int width, int height)
    {
        var scale = dossier.Model.Scale(from);
        if (scale.From.Length > 0 || scale.References.Any(each => each.Value.CarriedFrom.Length > 0)) return null;
        var name = dossier.Model.Picture(from).Name;
        if (dossier.Picture(from, name) is not { Ok: true } header || header.Value.Width != width || header.Value.Height != height) return null;
        if (scale.References.FirstOrDefault(each => header.Value.Frame.Holds(each.Value.Reference.From) && header.Value.Frame.Holds(each.Value.Reference.To)) is not { } known) return null;
        if (dossier.Model.Fitted(from) is not { Usable: { } usable } || PictureScaleText.Along(dossier, from, header.Value.Frame) is not var (along, relative)) return null;
        // A target tells its slant, so its scale is that of the middle looked at squarely; one known length leaves it open, and on the same stand this picture leans the same way.
        var told = CameraCalibration.Of(usable);
        var half = Math.Max(width, height) / 2.0;
        var calibration = told.ByTarget ? told : told with { MmPerHalf = half / along, RelativeU = relative };
        var carried = calibration.Between(known.Value.Reference.From, known.Value.Reference.To, header.Value.Frame);
        var pxPerMm = half / calibration.MmPerHalf;
        return (scale.References[^1], new(from, name, PictureScaleText.Words(pxPerMm, calibration.CarriedU), known.Value with { Package = scale.References.Select(each => each.Value.Package).FirstOrDefault(spot => spot.Length > 0) ?? "" }, Math.Round(carried.LengthMm, 6), Math.Round(carried.UMm, 6)));
    }
}
