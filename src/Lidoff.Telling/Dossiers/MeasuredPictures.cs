using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Telling.Dossiers;

/// <summary>Which pictures of a dossier something was measured in.</summary>
public static class MeasuredPictures
{
    /// <summary>Hashes of the pictures in which a length or another shape was clicked.</summary>
    public static IReadOnlySet<string> Of(OpenDossier dossier)
    {
        var (view, model) = (Guard.NotNull(dossier).Session.View, dossier.Model);
        return view.Live<LengthSighting>().Select(length => length.Value.InPicture?.Picture ?? "").Concat(view.Live<ClickedShape>().Select(shape => shape.Value.Picture))
            .Where(name => name.Length > 0).Distinct(StringComparer.Ordinal).Select(model.Picture).Where(picture => picture.Found).Select(picture => picture.Sha256)
            .ToHashSet(StringComparer.Ordinal);
    }
}
