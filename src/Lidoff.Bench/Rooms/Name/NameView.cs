using Lidoff.Bench.Rooms.Name.Listing;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Naming.Dates;
using Lidoff.Naming.Ranking;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>What the room Name shows: every spot with how far it is settled.</summary>
/// <param name="Spots">In natural order of their designators.</param>
public sealed record NameView(ValueList<SpotRow> Spots)
{
    /// <summary>The room as the dossier stands.</summary>
    public static NameView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var pointed = view.Live<SpotSighting>().Select(each => each.Value).ToLookup(spot => spot.Spot, StringComparer.Ordinal);
        var marks = view.Live<MarkSighting>().ToLookup(mark => mark.Value.Spot, StringComparer.Ordinal);
        var readings = view.Live<ReadingSighting>().ToDictionary(reading => reading.Id, reading => reading.Value.Mark);
        return new([.. SpotNames.Of(view).Select(spot => Row(dossier, spot, pointed[spot], marks[spot], readings))]);
    }

    /// <summary>How far an answer settles a spot.</summary>
    public static Settled SettledOf(IdentityAnswer answer) => !answer.Asked || answer.Says == IdentityAnswer.Undecided ? Settled.Open : answer.Level switch
    {
        NameLevel.Part => Settled.Part,
        NameLevel.Family => Settled.Family,
        _ => Settled.None,
    };

    private static SpotRow Row(OpenDossier dossier, string spot, IEnumerable<SpotSighting> pointed, IEnumerable<Sighting<MarkSighting>> marks, Dictionary<EntryId, MarkSighting?> readings)
    {
        var answer = dossier.Model.Identity(spot);
        // The one that names it; two specimens may read differently.
        var counted = answer.Evidence.Told.FirstOrDefault(told => told.Evidence == "mark")?.From ?? [];
        var machine = answer.Evidence.Machine;
        var mark = marks.LastOrDefault(each => counted.Contains(each.Id))?.Value ?? (machine is { Counts: true } ? readings[machine.Entry] : null);
        var best = answer.Asked ? answer.Best : -1;
        var settled = SettledOf(answer);
        var candidate = best >= 0 ? answer.Local.Candidates[best] : null;
        return new(
            spot,
            pointed.Select(each => each.Role).LastOrDefault(role => role.Length > 0) ?? "",
            SpotCrop.Of(dossier, pointed),
            mark?.Written ?? "",
            string.Join("; ", NameSentences.ByMachine(machine).Concat(answer.Evidence.Elsewhere.Select(other => NameSentences.Elsewhere(other.Specimen, other.Told)))),
            settled,
            settled == Settled.Open ? "" : answer.Says,
            candidate?.Part.Name ?? "",
            candidate?.Part.Maker ?? "",
            settled == Settled.Open && best >= 0 ? answer.Joint.P[best] : answer.P,
            answer.Grade,
            MarkDate.Of(mark),
            MarkDate.Why(mark),
            answer.Decisions.Count > 0);
    }
}
