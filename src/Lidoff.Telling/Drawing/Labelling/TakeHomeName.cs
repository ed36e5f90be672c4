using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>
/// What a picture's file is called that leaves the bench: the dossier, the side it shows, and its number among those of that side. Never the
/// camera's name or one that was typed, which may say who took it and where.
/// </summary>
public static class TakeHomeName
{
    /// <summary>The name without its ending: <c>tag-front</c>, <c>tag-back-2</c>; a picture of which no side was said is <c>tag-picture-3</c>.</summary>
    public static string Of(IDossierView view, DossierModel model, string sha256)
    {
        var sides = new Dictionary<string, PictureSide>(StringComparer.Ordinal);
        foreach (var said in Guard.NotNull(view).Live<PictureSighting>().Where(each => each.Value.Side != PictureSide.Unknown))
        {
            if (model.Picture(said.Value.File) is { Found: true } found) sides[found.Sha256] = said.Value.Side;
        }

        var side = sides.GetValueOrDefault(sha256);
        var alike = view.Live<FileAdded>().Select(file => file.Value.Sha256).Distinct(StringComparer.Ordinal)
            .Where(file => sides.GetValueOrDefault(file) == side && (side != PictureSide.Unknown || model.Picture(file).Found)).ToList();
        var number = alike.IndexOf(sha256) + 1;
        var word = side switch
        {
            PictureSide.Top => "front",
            PictureSide.Bottom => "back",
            PictureSide.Edge => "edge",
            PictureSide.Other => "other",
            _ => "picture",
        };
        return string.Create(CultureInfo.InvariantCulture, $"{view.Dossier}-{word}{(alike.Count > 1 ? $"-{number}" : "")}");
    }
}
