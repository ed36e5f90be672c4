using System.Globalization;
using Lidoff.Seeing.Measuring;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Drawing.Labelling;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A picture's scale in words and as numbers.</summary>
internal static class PictureScaleText
{
    /// <summary>"12.4 px/mm ± 0.4 %" along the first known length, with the doubt across the middle of the picture where it is larger and the scatter between known lengths where it counts; or across the middle by the board; empty where there is neither.</summary>
    public static string Of(OpenDossier dossier, string sha256, PictureFrame frame)
    {
        if (dossier.Model.Scale(sha256).References.Count == 0 && ByBoard(dossier, sha256, frame) is { } board) return string.Create(CultureInfo.InvariantCulture, $"{board.PxPerMm:0.##} px/mm ± {board.Relative * 100:0.##} % by the board");
        if (Fitted(dossier, sha256, frame) is not { } scale) return "";
        // Said where the scale stands: the single lengths still carry no warning, since once in fifty chance alone does this.
        var apart = scale.Fit.Scattered ? string.Create(CultureInfo.InvariantCulture, $", known lengths {scale.Fit.ReferenceSpread * 100:0.#} % apart") : "";
        // The bar of the picture lies across its middle; a length known one way says less about the other way, and less far away from it.
        var across = DossierPicture.Scale(dossier.Model, sha256, frame) is { Doubtful: true } bar && bar.RelativeU > scale.Relative ? $" along the known length, {LabelledSentences.Doubt(bar.RelativeU)} across the middle" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{scale.PxPerMm:0.##} px/mm ± {scale.Relative * 100:0.##} %{across}{apart}{Taken(dossier, sha256)}");
    }

    /// <summary>px of the upright picture per mm along the first known length, or across the middle by the board, and its relative standard uncertainty; null where there is neither.</summary>
    public static (double PxPerMm, double Relative)? Along(OpenDossier dossier, string sha256, PictureFrame frame) =>
        Fitted(dossier, sha256, frame) is { } scale ? (scale.PxPerMm, scale.Relative) : dossier.Model.Scale(sha256).References.Count == 0 ? ByBoard(dossier, sha256, frame) : null;

    /// <summary>"12.4 px/mm ± 0.4 %".</summary>
    public static string Words(double pxPerMm, double relative) => string.Create(CultureInfo.InvariantCulture, $"{pxPerMm:0.##} px/mm ± {relative * 100:0.##} %");

    // A lens that comes from the same picture as the scale needs no second name.
    private static string Taken(OpenDossier dossier, string sha256)
    {
        var from = From(dossier, sha256);
        var taken = from.Length == 0 ? "" : ", taken over from " + (dossier.Model.Picture(from) is { Found: true } found ? Showing.Shown.Of(found.Name) : Showing.Shown.Of(Showing.ShortHash.Of(from)));
        return dossier.Model.Fitted(sha256)?.Camera is { } camera && (from.Length == 0 || dossier.Model.Picture(from).Sha256 != camera.Sha256) ? $"{taken}, lens by {Showing.Shown.Of(camera.Known.From)}" : taken;
    }

    // Of the picture it was made of, or of one of the same camera and zoom.
    private static string From(OpenDossier dossier, string sha256) => dossier.Model.Scale(sha256) is { From.Length: 0 } own
        ? own.References.Select(each => each.Value.CarriedFrom).FirstOrDefault(from => from.Length > 0) ?? ""
        : dossier.Model.Scale(sha256).From;

    private static (double PxPerMm, double Relative)? ByBoard(OpenDossier dossier, string sha256, PictureFrame frame)
    {
        if (!dossier.Model.Measures(sha256)) return null;
        var (x, y, half) = (frame.Width / 2.0, frame.Height / 2.0, frame.Width / 4.0);
        var chord = dossier.Model.Board(sha256)!.Laid.Length(sha256, new(x - half, y), new(x + half, y), 0);
        return (2 * half / chord.Mm, chord.ShareU / chord.Mm);
    }

    private static (ScaleFit Fit, double PxPerMm, double Relative)? Fitted(OpenDossier dossier, string sha256, PictureFrame frame)
    {
        if (dossier.Model.Fitted(sha256) is not { Usable: { } usable } fitted) return null;
        var first = fitted.Scale.References.Select(reference => reference.Value.Reference).First(reference => frame.Holds(reference.From) && frame.Holds(reference.To));
        var (pxPerMm, relative) = usable.Fit.Along(first.From, first.To, first.HeightMm);
        return (usable.Fit, pxPerMm, relative);
    }
}
