using System.Globalization;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Quantities;
using Lidoff.Reckoning.Bound;
using Lidoff.Reckoning.Reckon;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Serving;

/// <summary>Makes the page of one dossier: pictures, spots, numbers and claims as they stand, already in words.</summary>
internal sealed class DossierPage(OpenDossier dossier)
{
    private readonly IDossierView view = dossier.Session.View;
    private readonly DossierModel model = dossier.Model;

    public DossierPageModel Build() => new(
        dossier.Session.Name,
        TitleOf(view),
        view.Entries.Count,
        [.. Notices()],
        [.. Pictures()],
        [.. SpotsOf(view).Select(Spot)],
        [.. Numbers()],
        [.. dossier.Claims.Select(Claim)]);

    public static string TitleOf(IDossierView view) => view.Live<DossierOpened>().Select(opened => opened.Value.Title).LastOrDefault(title => title.Length > 0) ?? "";

    /// <summary>Every spot anybody spoke of, in natural order.</summary>
    public static IReadOnlyList<string> SpotsOf(IDossierView view) =>
    [
        .. view.Live<SpotSighting>().Select(spot => spot.Value.Spot)
            .Concat(view.Live<MarkSighting>().Select(mark => mark.Value.Spot))
            .Concat(view.Live<BodySighting>().Select(body => body.Value.Spot))
            .Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance),
    ];

    private IEnumerable<string> Notices()
    {
        foreach (var notice in view.Live<DossierOpened>().Select(opened => opened.Value.Notice).Where(notice => notice.Length > 0).Distinct(StringComparer.Ordinal)) yield return notice;
        foreach (var fault in dossier.Session.Damaged) yield return fault.Say;
        var unknown = view.Entries.Count(entry => entry.Fate == EntryFate.Unknown);
        if (unknown > 0) yield return Text($"{unknown} entries are of a kind this program does not know; they are kept as they are.");
        var refused = view.Entries.Count(entry => entry.Fate == EntryFate.Refused);
        if (refused > 0) yield return Text($"{refused} entries cannot be read; they are kept as they are.");
        foreach (var quarrel in QuarrelBook.Find(view, model)) yield return $"{quarrel.Say} To settle it: {quarrel.Settle}.";
    }

    private IEnumerable<PictureRow> Pictures()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var file in view.Live<FileAdded>().Select(sighting => sighting.Value).Where(file => seen.Add(file.Sha256)))
        {
            if (!file.Type.StartsWith("image/", StringComparison.Ordinal))
            {
                yield return new(file.Name, file.Sha256, file.Type.Length > 0 ? file.Type : "not recognised", file.Bytes, null, null);
                continue;
            }

            var header = PictureFile.Read(dossier.Workspace.Files.PathOf(file.Sha256), file.Name);
            yield return header.TryValue(out var found)
                ? new(file.Name, file.Sha256, found.Kind.Says, file.Bytes, found.Width, found.Height, Scale(file.Sha256, found.Frame))
                : new(file.Name, file.Sha256, file.Type, file.Bytes, null, null, "", header.Faults[0].Say);
        }
    }

    private string Scale(string sha256, PictureFrame frame)
    {
        var references = model.Scale(sha256).References;
        if (references.Count == 0) return "";
        var first = references[0].Value.Reference;
        var fit = ScaleFit.To([.. references.Select(reference => reference.Value.Reference)], frame, MeasureJob.DefaultClickPx, null, 0);
        var (pxPerMm, relative) = fit.Along(first.From, first.To, first.HeightMm);
        return Text($"{pxPerMm:0.##} px/mm ± {relative * 100:0.##} %");
    }

    private SpotRow Spot(string spot)
    {
        var answer = model.Identity(spot);
        var told = answer.Evidence.Told;
        var measured = told.Where(each => each.Evidence is "body" or "height" or "pitch" or "pins" or "bus" or "identity" or "supply").Select(each => $"{each.Evidence}: {each.Says}");
        var mark = view.Live<MarkSighting>().LastOrDefault(each => each.Value.Spot == spot);
        var asked = answer.Asked;
        List<CandidateRow> candidates = [];
        for (var i = 0; i < answer.Local.Candidates.Count && asked; i++)
        {
            var candidate = answer.Local.Candidates[i];
            candidates.Add(new(candidate.Part.Name, candidate.Part.Maker, answer.Joint.P[i], [.. candidate.Because.Select(each => new BecauseRow(each.Evidence, each.Db, each.Say))]));
        }

        return new(
            spot,
            told.FirstOrDefault(each => each.Evidence == "role")?.Says ?? "",
            mark is null ? [] : [.. mark.Value.Lines.Select(line => line.Text)],
            string.Join("; ", measured),
            asked ? answer.Level switch { NameLevel.Part => "part", NameLevel.Family => "family", _ => "none" } : "",
            [.. candidates.OrderByDescending(candidate => candidate.P).Take(5)],
            asked ? answer.Joint.P[^2] : 0,
            asked ? answer.Joint.P[^1] : 0);
    }

    private IEnumerable<ReckoningRow> Numbers()
    {
        foreach (var name in view.Live<ReckonBinding>().Select(binding => binding.Value.Reckoning).Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance))
        {
            var value = model.Value("reckoning:" + name);
            yield return Number(name + ": " + value.Says, value, model.Reckoning(name)?.Result);
        }

        foreach (var reference in view.Live<LengthSighting>().Select(length => $"length:{length.Value.Spot}:{length.Value.What}").Distinct(StringComparer.Ordinal).Order(NaturalOrder.Instance))
        {
            var value = model.Value(reference);
            yield return Number(value.Says, value, null);
        }
    }

    private static ReckoningRow Number(string name, ModelValue value, ReckonResult? counted)
    {
        var maturity = counted is null ? "" : ReckonJson.Word(counted.Info.Maturity);
        if (value.Missing is { } missing) return new(name, "unknown", "", value.Grade, maturity, [], "", [], [missing]);
        var cautions = counted?.Cautions ?? [];
        var shares = (counted?.Value.Shares ?? []).Where(share => share.Share >= 0.01).OrderByDescending(share => share.Share).Select(share => Text($"{share.Input} {share.Share * 100:0} %"));
        return new(name, ReportContext.Print(value), ReportContext.Interval(value), value.Grade, maturity, [.. shares], value.Source, [.. value.Because.Except(cautions)], cautions);
    }

    private static ClaimRow Claim(Claim claim) => new(
        claim.Name,
        claim.Text,
        claim.Grade,
        claim.Published is null && claim.State == ClaimState.Same ? "new" : claim.State == ClaimState.ProgramChanged ? "program changed" : claim.State.ToString().ToLowerInvariant(),
        claim.RestsOn.Count);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
