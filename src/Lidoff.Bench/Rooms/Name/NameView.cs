using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Naming.Ranking;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>What the room Name shows: every spot with what may sit there.</summary>
/// <param name="Spots">In natural order of their designators.</param>
public sealed record NameView(ValueList<SpotRow> Spots)
{
    /// <summary>The room as the dossier stands.</summary>
    public static NameView Of(OpenDossier dossier) => new([.. SpotNames.Of(dossier.Session.View).Select(spot => Row(dossier, spot))]);

    private static SpotRow Row(OpenDossier dossier, string spot)
    {
        var answer = dossier.Model.Identity(spot);
        var told = answer.Evidence.Told;
        var measured = told.Where(each => each.Evidence is "body" or "height" or "pitch" or "pins" or "bus" or "identity" or "supply").Select(each => $"{each.Evidence}: {each.Says}");
        var mark = dossier.Session.View.Live<MarkSighting>().LastOrDefault(each => each.Value.Spot == spot);
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
}
