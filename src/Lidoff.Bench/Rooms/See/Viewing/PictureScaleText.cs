using System.Globalization;
using Lidoff.Seeing.Measuring;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A picture's scale in words.</summary>
internal static class PictureScaleText
{
    /// <summary>"12.4 px/mm ± 0.4 %" along the first known length, with the scatter between known lengths where it counts; empty where there is none.</summary>
    public static string Of(OpenDossier dossier, string sha256, PictureFrame frame)
    {
        var references = dossier.Model.Scale(sha256).References;
        // A length that reaches out of the picture cannot be fitted; it is told beside each measured one.
        var usable = references.Select(reference => reference.Value.Reference).Where(reference => frame.Holds(reference.From) && frame.Holds(reference.To)).ToList();
        if (usable.Count == 0) return "";
        var fit = ScaleFit.To(usable, frame, MeasureJob.DefaultClickPx, null, 0);
        var (pxPerMm, relative) = fit.Along(usable[0].From, usable[0].To, usable[0].HeightMm);
        // Said where the scale stands: the single lengths still carry no warning, since once in fifty chance alone does this.
        var apart = fit.Scattered ? string.Create(CultureInfo.InvariantCulture, $", known lengths {fit.ReferenceSpread * 100:0.#} % apart") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{pxPerMm:0.##} px/mm ± {relative * 100:0.##} %{apart}");
    }
}
