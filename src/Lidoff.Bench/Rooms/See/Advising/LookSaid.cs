using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.See.Advising;

/// <summary>What a machine's look at a picture comes to for lengths in it.</summary>
/// <param name="Entry">The look that counts.</param>
/// <param name="Says">What it told of the camera, one sentence.</param>
/// <param name="Against">What its edges and words say against lengths that the known lengths alone do not: that the camera leaned, the lens bends, the picture is flipped.</param>
public sealed record LookSaid(EntryId Entry, string Says, ValueList<string> Against)
{
    private static readonly string[] Seen = [WarningCodes.Tilt, WarningCodes.Lens, WarningCodes.Mirrored, WarningCodes.UnequalAxes];

    /// <summary>Of one picture of a dossier; null where nobody looked at it, or it has no known length.</summary>
    public static LookSaid? Of(OpenDossier dossier, string sha256)
    {
        if (dossier.Model.Fitted(sha256) is not { Usable: { } with, LookedAt: { } entry } fitted) return null;
        var look = dossier.Session.View.Live<LookSighting>().First(each => each.Id == entry).Value;
        var header = dossier.Picture(sha256, sha256).Value;
        var without = ScaledPicture.Of(ScaledPicture.Usable(fitted.Scale.Job("", fitted.Camera?.Known), header.Frame), header.Frame);
        var lengths = Lengths(dossier, sha256, header.Frame);
        var told = without.Ok ? Warnings(without.Value, lengths) : [];
        return new(
            entry,
            SeeSentences.Looked(look.Edges.Count > 0 ? 100 * with.Fit.SlopeAcross : null),
            [.. Warnings(with, lengths).Where(warning => told.All(other => other.Code != warning.Code)).Select(warning => warning.Say)]);
    }

    // The lengths that were clicked, and three across and three down the picture.
    private static List<TargetLength> Lengths(OpenDossier dossier, string sha256, PictureFrame frame)
    {
        var (width, height) = (frame.Width, frame.Height);
        return
        [
            .. dossier.Session.View.Live<LengthSighting>().Select(each => each.Value.InPicture)
                .Where(clicked => clicked is not null && dossier.Model.Picture(clicked.Picture) is { Found: true } picture && picture.Sha256 == sha256)
                .Select(clicked => new TargetLength("length", clicked!.From, clicked.To, clicked.HeightMm)),
            .. new[] { 0.2, 0.5, 0.8 }.SelectMany(at => new (PicturePoint From, PicturePoint To)[]
            {
                (new(width * 0.2, height * at), new(width * 0.8, height * at)),
                (new(width * at, height * 0.2), new(width * at, height * 0.8)),
            }).Select(each => new TargetLength("length", each.From, each.To)),
        ];
    }

    // Of each sort the first.
    private static List<MeasureWarning> Warnings(ScaledPicture picture, List<TargetLength> lengths) =>
        [.. lengths.Select(picture.Length).Where(length => length.Ok).SelectMany(length => length.Value.Warnings).Where(warning => Seen.Contains(warning.Code)).DistinctBy(warning => warning.Code)];
}
