using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Spots;

namespace Lidoff.Telling.Dossiers;

/// <summary>Where the marks of a dossier can be read: every picture in which a spot was pointed at or both sides of its body were clicked, a specimen's by themselves.</summary>
public static class SpotsToRead
{
    // As they are called when a body is clicked, and when a part is named.
    private static readonly (string Long, string Short)[] Sides = [("long side", "short side"), ("length", "width")];

    /// <summary>A spot's marks, by specimen; none where no picture shows it.</summary>
    public static IReadOnlyList<SpotToRead> Of(OpenDossier dossier, string spot)
    {
        var view = Guard.NotNull(dossier).Session.View;
        var places = new Dictionary<(string Specimen, string Sha256), Place>();
        var tags = new PictureTags(dossier);
        void Add(string picture, string specimen, Func<Place, Place> with)
        {
            if (picture.Length == 0 || dossier.Model.Picture(picture) is not { Found: true } found) return;
            var key = (specimen.Length > 0 ? specimen : tags.Specimen(found.Sha256), found.Sha256);
            places[key] = with(places.GetValueOrDefault(key) ?? new(found.Name, places.Count, null, null, null));
        }

        // The newest of each picture counts.
        foreach (var each in view.Live<SpotSighting>().Where(each => each.Value.Spot == spot && each.Value.Middle is not null))
        {
            Add(each.Value.Picture, each.Specimen, place => place with { Box = each.Value.Box, At = each.Value.At });
        }

        foreach (var (picture, specimen, outline) in Outlines(view.Live<LengthSighting>().Where(each => each.Value.Spot == spot && each.Value.InPicture is not null)))
        {
            Add(picture, specimen, place => place with { Outline = outline });
        }

        var others = view.Live<SpotSighting>().Where(each => each.Value.Spot != spot && each.Value.Middle is not null).Select(each => each.Value).ToList();
        return [.. places.GroupBy(place => place.Key.Specimen, StringComparer.Ordinal).OrderBy(group => group.Key, NaturalOrder.Instance)
            .Select(group => Mark(dossier, spot, group.Key, group.ToDictionary(place => place.Key.Sha256, place => place.Value, StringComparer.Ordinal), others))];
    }

    /// <summary>Every spot that may carry a mark and is seen in a picture, by specimen, in natural order.</summary>
    public static IReadOnlyList<SpotToRead> All(OpenDossier dossier)
    {
        var view = Guard.NotNull(dossier).Session.View;
        var classes = view.Live<SpotSighting>().GroupBy(each => each.Value.Spot, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Select(each => each.Value.Class).LastOrDefault(kind => kind.Length > 0) ?? "", StringComparer.Ordinal);
        return [.. view.Live<SpotSighting>().Select(each => each.Value.Spot).Concat(view.Live<LengthSighting>().Where(each => each.Value.InPicture is not null).Select(each => each.Value.Spot))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance)
            .Where(spot => SpotClasses.Find(classes.GetValueOrDefault(spot, "")) is not { BearsMark: false })
            .SelectMany(spot => Of(dossier, spot))];
    }

    /// <summary>What is left to read of <see cref="All"/>: without what these networks have read or could not read in the same places, and without what a person has read, unless that is asked for.</summary>
    /// <param name="dossier">The dossier.</param>
    /// <param name="networks">Hashes of the networks.</param>
    /// <param name="withMarked">Also marks that a person has typed.</param>
    public static MarksLeft Left(OpenDossier dossier, IReadOnlyList<string> networks, bool withMarked)
    {
        var view = Guard.NotNull(dossier).Session.View;
        var ever = StoredReadings.Ever(view);
        var typed = view.Live<MarkSighting>().ToLookup(each => each.Value.Spot, each => each.Specimen, StringComparer.Ordinal);
        // A mark of nobody's specimen may be of any.
        bool ByPerson(SpotToRead mark) => typed[mark.Spot].Any(specimen => specimen == mark.Specimen || specimen.Length == 0 || mark.Specimen.Length == 0);
        var all = All(dossier);
        var fresh = all.Where(mark => !StoredReadings.Cover(ever[(mark.Spot, mark.Specimen)], mark, networks)).ToList();
        var unread = view.Live<UnreadSighting>().ToLookup(each => (each.Value.Spot, each.Specimen), each => each.Value);
        var wanted = fresh.Where(mark => withMarked || !ByPerson(mark)).ToList();
        var untried = wanted.Where(mark => !StoredUnread.Covers(unread[(mark.Spot, mark.Specimen)], mark, networks, OpenDossier.Program)).ToList();
        return new([.. untried], all.Count - fresh.Count, fresh.Count - wanted.Count, wanted.Count - untried.Count);
    }

    /// <summary>A body as it was outlined: the newest of each of its two sides, out of a spot's lengths in one picture; null where they make none.</summary>
    public static PictureRegion? Outline(IReadOnlyList<LengthSighting> lengths)
    {
        PictureLength? Newest(string what) => lengths.LastOrDefault(each => each.What == what)?.InPicture;
        return Sides.Select(sides => Newest(sides.Long) is { } one && Newest(sides.Short) is { } other ? BodyOutline.Of(one, other) : null).FirstOrDefault(found => found is not null);
    }

    private static IEnumerable<(string Picture, string Specimen, PictureRegion Outline)> Outlines(IEnumerable<Sighting<LengthSighting>> lengths)
    {
        foreach (var group in lengths.GroupBy(each => (each.Value.InPicture!.Picture, each.Specimen)))
        {
            if (Outline([.. group.Select(each => each.Value)]) is { } body) yield return (group.Key.Picture, group.Key.Specimen, body);
        }
    }

    private static SpotToRead Mark(OpenDossier dossier, string spot, string specimen, Dictionary<string, Place> places, List<SpotSighting> others)
    {
        // What a picture was made of shows the same print once more: only what was made is read.
        var made = dossier.Session.View.Live<ComposedSighting>().Where(each => places.ContainsKey(each.Value.Picture)).SelectMany(each => each.Value.Inputs).ToHashSet(StringComparer.Ordinal);
        var (pictures, faults) = (new List<SpotPicture>(), new List<Fault>());
        foreach (var (sha256, place) in places.Where(each => !made.Contains(each.Key)).OrderBy(each => each.Value.Outline is null).ThenByDescending(each => each.Value.Order))
        {
            var opened = dossier.Picture(sha256, place.Name);
            if (!opened.TryValue(out var header)) faults.AddRange(opened.Faults);
            else if (pictures.Count < ReadingKind.MostPictures) pictures.Add(new(sha256, place.Name, dossier.Workspace.Files.PathOf(sha256), header, place.Outline, place.Box, place.At, Elsewhere(dossier, others, sha256)));
        }

        return new(spot, specimen, [.. pictures], [.. faults]);
    }

    private static ValueList<PicturePoint> Elsewhere(OpenDossier dossier, List<SpotSighting> others, string sha256) =>
        [.. others.Where(each => dossier.Model.Picture(each.Picture) is { Found: true } found && found.Sha256 == sha256).Select(each => each.Middle!.Value)];

    private sealed record Place(string Name, int Order, PictureRegion? Outline, PixelBox? Box, PicturePoint? At);

    // The specimen that a picture as a whole was said to show.
    private sealed class PictureTags(OpenDossier dossier)
    {
        private readonly Dictionary<string, string> specimens = dossier.Session.View.Live<PictureSighting>()
            .Where(each => each.Specimen.Length > 0).Select(each => (Found: dossier.Model.Picture(each.Value.File), each.Specimen)).Where(each => each.Found.Found)
            .GroupBy(each => each.Found.Sha256, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Last().Specimen, StringComparer.Ordinal);

        public string Specimen(string sha256) => specimens.GetValueOrDefault(sha256, "");
    }
}
