using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Working;

/// <summary>Names for landmarks that a machine found: those that stand there already, else the next free F.</summary>
internal static class MatchNames
{
    // Pointed at by hand within a hole, or within this of something small.
    private const double NearPx = 4;

    /// <summary>The marks with their names; a mark that has another name in each picture is left out, as is one whose name stands elsewhere in the other picture.</summary>
    public static IReadOnlyList<(string Name, MatchedMark Mark)> Of(OpenDossier dossier, string first, string second, IReadOnlyList<MatchedMark> marks)
    {
        var all = dossier.Session.View.Live<LandmarkSighting>().Select(each => each.Value).Where(each => each.At is not null).ToList();
        var (a, b) = (In(first), In(second));
        var taken = all.Select(each => each.Landmark).ToHashSet(StringComparer.Ordinal);
        var number = 0;
        var named = new List<(string Name, MatchedMark Mark)>();
        foreach (var mark in marks)
        {
            var (here, there) = (At(a, mark.First), At(b, mark.Second));
            if (here is not null && there is not null && here != there) continue;
            if (here is null && there is not null && a.Any(each => each.Landmark == there)) continue;
            if (there is null && here is not null && b.Any(each => each.Landmark == here)) continue;
            if ((here ?? there) is { } name)
            {
                if (named.TrueForAll(each => each.Name != name)) named.Add((name, mark));
                continue;
            }

            string free;
            do free = "F" + (++number).ToString(CultureInfo.InvariantCulture);
            while (!taken.Add(free));
            named.Add((free, mark));
        }

        return named;

        List<LandmarkSighting> In(string sha256) => [.. all.Where(each => dossier.Model.Picture(each.Picture) is { Found: true } found && found.Sha256 == sha256)];
    }

    private static string? At(List<LandmarkSighting> landmarks, FoundMark mark) => landmarks.Where(each => Near(each.At!.Value, mark)).MinBy(each => each.At!.Value.DistanceTo(mark.At))?.Landmark;

    private static bool Near(PicturePoint at, FoundMark mark) => at.DistanceTo(mark.At) < Math.Max(NearPx, 0.6 * mark.RadiusPx);
}
