using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>A picture of a dossier labelled with what was pointed at in it, with its scale and the dossier's notice.</summary>
public static class DossierPicture
{
    /// <summary>
    /// Gathers what is drawn on the stored file of hash <paramref name="sha256"/> that lies at <paramref name="path"/>. Drawing it takes its
    /// time and needs the dossier no longer. An empty title becomes the dossier's.
    /// </summary>
    public static Outcome<PictureToLabel> Gather(IDossierView view, DossierModel model, string sha256, string path, PictureWords words)
    {
        var opened = view.Live<DossierOpened>().Select(sighting => sighting.Value).ToList();
        var name = view.Live<FileAdded>().Select(file => file.Value).FirstOrDefault(file => file.Sha256 == sha256)?.Name ?? sha256[..12];
        var header = PictureFile.Read(path, name);
        if (!header.TryValue(out var found)) return Outcome<PictureToLabel>.Failed(header.Faults);
        var title = words.Title.Length > 0 ? words.Title : opened.Select(dossier => dossier.Title).LastOrDefault(text => text.Length > 0) ?? view.Dossier;
        var notice = words.Notice.Length > 0 ? words.Notice : opened.Select(dossier => dossier.Notice).LastOrDefault(text => text.Length > 0) ?? "";
        return new PictureToLabel(path, name, [.. Spots(view, model, sha256)], Scale(model, sha256, found.Frame), words with { Title = title, Notice = notice });
    }

    /// <summary>Everything pointed at in the picture, in the order of pointing; a box by its middle.</summary>
    public static IReadOnlyList<PictureSpot> Spots(IDossierView view, DossierModel model, string sha256) =>
    [
        .. view.Live<SpotSighting>().Select(spot => spot.Value)
            .Where(spot => spot.Picture.Length > 0 && model.Picture(spot.Picture) is { Found: true } picture && picture.Sha256 == sha256)
            .Where(spot => spot.Middle is not null).Select(spot => new PictureSpot(spot.Spot, spot.Middle!.Value, spot.Role)),
    ];

    /// <summary>
    /// The scale along the middle of the picture, where a bar would lie, as the bench has it: by its own known lengths, by those of the
    /// picture it was made of, or by the board it lies on; null where no length is known.
    /// </summary>
    public static BarScale? Scale(DossierModel model, string sha256, PictureFrame frame)
    {
        var (from, to) = (new PicturePoint(frame.Width * 0.25, frame.Height * 0.5), new PicturePoint(frame.Width * 0.75, frame.Height * 0.5));
        if (model.Fitted(sha256) is not { } fitted)
        {
            if (!model.Measures(sha256)) return null;
            var chord = model.Board(sha256)!.Laid.Length(sha256, from, to, 0);
            return new(from.DistanceTo(to) / chord.Mm, chord.ShareU / chord.Mm, ByBoard: true);
        }

        if (fitted.Usable is not { } usable) return null;
        var (pxPerMm, relative) = usable.Fit.Along(from, to, 0);
        return new(pxPerMm, relative);
    }
}
