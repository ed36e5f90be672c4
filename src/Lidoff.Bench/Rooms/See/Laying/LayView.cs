using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Laying;

/// <summary>A picture, those it could be laid on, and what a machine found.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="FileName">Its name; hostile text; empty where the dossier has none of that hash.</param>
/// <param name="Width">Upright width, px; 0 where it cannot be opened.</param>
/// <param name="Height">Upright height, px.</param>
/// <param name="Side">The side noted: "top", "bottom"; else empty.</param>
/// <param name="Others">Other pictures: whose names begin alike the longest first, since pictures of one board are mostly named alike; then in natural order.</param>
/// <param name="Proposals">What was found, the last one of each other picture, the newest first.</param>
public sealed record LayView(string Sha256, string FileName, int Width, int Height, string Side, ValueList<LayRow> Others, ValueList<LayProposal> Proposals)
{
    /// <summary>As the dossier stands.</summary>
    public static LayView Of(OpenDossier dossier, string sha256)
    {
        var view = dossier.Session.View;
        var files = view.Live<FileAdded>().Select(file => file.Value).Where(file => file.Type.StartsWith("image/", StringComparison.Ordinal)).DistinctBy(file => file.Sha256, StringComparer.Ordinal).ToList();
        if (files.Find(file => file.Sha256 == sha256) is not { } here || dossier.Picture(sha256, here.Name) is not { Ok: true } header) return new(sha256, "", 0, 0, "", [], []);
        var board = dossier.Model.Board(sha256)?.Laid;
        var lies = board?.Picture(sha256) is not null;
        // Boards of two specimens never lie on one another, so that landmarks found in both would lead nowhere.
        var specimen = Specimen(dossier, sha256);
        bool Fellow(string other) => specimen.Length == 0 || Specimen(dossier, other) is var theirs && (theirs.Length == 0 || theirs == specimen);
        var others = files.Where(file => file.Sha256 != sha256 && Fellow(file.Sha256) && dossier.Picture(file.Sha256, file.Name).Ok)
            .Select(file => new LayRow(file.Sha256, file.Name, SideOf(dossier, file.Sha256), lies && board!.Picture(file.Sha256) is not null))
            .OrderByDescending(row => Alike(row.Name, here.Name)).ThenBy(row => row.Name, NaturalOrder.Instance).ThenBy(row => row.Sha256, StringComparer.Ordinal).ToList();
        var proposals = view.Live<MatchSighting>().Where(each => each.Value.First == sha256 || each.Value.Second == sha256)
            .GroupBy(each => each.Value.First == sha256 ? each.Value.Second : each.Value.First, StringComparer.Ordinal)
            .Where(group => others.Exists(other => other.Sha256 == group.Key))
            .Select(group => Proposal(dossier, group.Last(), sha256, others.Find(other => other.Sha256 == group.Key)!)).Reverse();
        return new(sha256, here.Name, header.Value.Width, header.Value.Height, SideOf(dossier, sha256), [.. others], [.. proposals]);
    }

    // How many letters two names begin with alike, whatever their case.
    private static int Alike(string a, string b) => a.Zip(b).TakeWhile(pair => char.ToLowerInvariant(pair.First) == char.ToLowerInvariant(pair.Second)).Count();

    private static LayProposal Proposal(OpenDossier dossier, Sighting<MatchSighting> sighting, string sha256, LayRow other)
    {
        var (match, turned) = (sighting.Value, sighting.Value.Second == sha256);
        var there = dossier.Picture(other.Sha256, other.Name).Value;
        var landmarks = dossier.Session.View.Live<LandmarkSighting>().Where(each => each.Value.At is not null).ToList();
        bool Has(string name, string picture) => landmarks.Exists(each => each.Value.Landmark == name && dossier.Model.Picture(each.Value.Picture) is { Found: true } found && found.Sha256 == picture);
        var pxPerMm = SecondPxPerMm(dossier, match);
        var (first, second) = (Specimen(dossier, match.First), Specimen(dossier, match.Second));
        var pairs = new List<LayPair>();
        var lines = new List<LayLines>();
        for (var i = 0; i < match.Names.Count; i++)
        {
            var (a, b, name) = (match.FirstPoints[i], match.SecondPoints[i], match.Names[i]);
            var places = new List<(string Specimen, string Sha256, PicturePoint At, double UPx)>();
            if (!Has(name, match.First)) places.Add((first, match.First, a, match.FirstUPx));
            if (!Has(name, match.Second)) places.Add((second, match.Second, b, match.SecondUPx));
            pairs.Add(new(name, turned ? b : a, turned ? a : b, Rest(match.RestPx[i], pxPerMm), places.Count == 0));
            lines.Add(new(name, [.. places], sighting.Id.Hex));
        }

        var rest = Math.Sqrt(match.RestPx.Average(px => px * px));
        return new(
            sighting.Id, other.Sha256, other.Name, there.Width, there.Height, LaySentences.Summary(match.Agree, match.Of, match.ByChance, match.LogOdds, match.Mirrored, Rest(rest, pxPerMm)),
            match.Says, [.. pairs], [.. lines]);
    }

    private static string Rest(double px, double? pxPerMm) => pxPerMm is { } scale ? Plain.Number(Math.Round(px / scale * 1000)) + " µm" : Plain.Number(Math.Round(px, 2)) + " px";

    // The second picture's own scale, or the first one's carried over by how far the landmarks lie apart in each.
    private static double? SecondPxPerMm(OpenDossier dossier, MatchSighting match)
    {
        double? Own(string sha256) => dossier.Picture(sha256, sha256) is { Ok: true } header ? PictureScaleText.Along(dossier, sha256, header.Value.Frame)?.PxPerMm : null;
        if (Own(match.Second) is { } own) return own;
        if (Own(match.First) is not { } first) return null;
        var (a, b) = (0.0, 0.0);
        for (var i = 1; i < match.Names.Count; i++)
        {
            a += match.FirstPoints[i].DistanceTo(match.FirstPoints[0]);
            b += match.SecondPoints[i].DistanceTo(match.SecondPoints[0]);
        }

        return a > 0 && b > 0 ? first * b / a : null;
    }

    private static PictureTags Tags(OpenDossier dossier, string sha256) => dossier.Session.View.Live<PictureSighting>()
        .Where(each => each.Value.File.Length > 0 && dossier.Model.Picture(each.Value.File) is { Found: true } found && found.Sha256 == sha256).Select(PictureTags.Of).LastOrDefault() ?? PictureTags.None;

    private static string Specimen(OpenDossier dossier, string sha256) => Tags(dossier, sha256).Specimen;

    private static string SideOf(OpenDossier dossier, string sha256) => new[] { "top", "bottom" }.FirstOrDefault(side => side == Tags(dossier, sha256).Side) ?? "";
}
