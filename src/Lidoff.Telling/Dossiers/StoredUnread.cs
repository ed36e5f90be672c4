using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Telling.Dossiers;

/// <summary>What a dossier remembers of marks that could not be read, so that the same places are not looked through again and again.</summary>
public static class StoredUnread
{
    /// <summary>Live ones of a spot of a specimen, in fold order.</summary>
    public static IReadOnlyList<Sighting<UnreadSighting>> Of(IDossierView view, string spot, string specimen) =>
        [.. Guard.NotNull(view).Live<UnreadSighting>().Where(each => each.Value.Spot == spot && each.Specimen == specimen)];

    /// <summary>What is to be remembered of a mark that could not be read; null where one of its pictures could not be opened, which may be mended without a trace.</summary>
    public static UnreadSighting? Made(SpotToRead mark, IReadOnlyList<string> networks, string program, IReadOnlyList<Fault> faults) =>
        Guard.NotNull(mark).Faults.Count > 0 || mark.Pictures.Count == 0 ? null : new(mark.Spot, Places(mark), networks.ToValueList(), program, [.. faults.Select(fault => fault.Say)]);

    /// <summary>Whether one of them looked at every place of a mark as it lies now, by these networks and this version of the program.</summary>
    public static bool Covers(IEnumerable<UnreadSighting> unread, SpotToRead mark, IReadOnlyList<string> networks, string program)
    {
        var now = Places(Guard.NotNull(mark));
        return Guard.NotNull(unread).Any(each => each.Program == program && each.Networks.SequenceEqual(networks) && now.All(place => each.Places.Contains(place)));
    }

    /// <summary>Why the marks of a spot could not be read, where they lie as they did then and nothing was read on them since.</summary>
    public static ValueList<string> Says(OpenDossier dossier, string spot)
    {
        var view = Guard.NotNull(dossier).Session.View;
        var newest = view.Live<UnreadSighting>().Where(each => each.Value.Spot == spot).GroupBy(each => each.Specimen, StringComparer.Ordinal)
            .Where(group => StoredReadings.Of(view, spot, group.Key).Count == 0).ToDictionary(group => group.Key, group => group.Last().Value, StringComparer.Ordinal);
        return newest.Count == 0 ? [] : [.. SpotsToRead.Of(dossier, spot).Where(mark => newest.TryGetValue(mark.Specimen, out var each) && Places(mark).All(place => each.Places.Contains(place))).SelectMany(mark => newest[mark.Specimen].Says)];
    }

    /// <summary>The lines of <c>note</c> that remember it in the place of what was remembered before; null where that says the same.</summary>
    public static ReadOnlyMemory<byte>? Lines(IDossierView view, string specimen, UnreadSighting unread)
    {
        var before = Of(view, Guard.NotNull(unread).Spot, specimen);
        if (before.Any(each => each.Value.Equals(unread))) return null;
        return StoredReadings.Lines(UnreadKind.Word, specimen, json => UnreadKind.WriteKeys(json, unread), before.Select(each => each.Id));
    }

    private static ValueList<UnreadPlace> Places(SpotToRead mark) => [.. mark.Pictures.Select(picture => new UnreadPlace(picture.Sha256, (picture.Outline, picture.Box, picture.At) switch
    {
        ({ } outline, _, _) => Rounded(outline.Middle.X, outline.Middle.Y, outline.Width, outline.Height, outline.Turn),
        (_, { } box, _) => Rounded(box.X, box.Y, box.Width, box.Height),
        _ => Rounded(picture.At!.Value.X, picture.At.Value.Y),
    }))];

    // An outline is reckoned from clicks; its last digits are nobody's.
    private static ValueList<double> Rounded(params double[] numbers) => [.. numbers.Select(number => Math.Round(number, 3))];
}
