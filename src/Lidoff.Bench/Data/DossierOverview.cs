using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Opening.Resuming;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Becauses;

namespace Lidoff.Bench.Data;

/// <summary>A dossier's own page: what it is about and what needs a look.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Title">What it is about; may be empty.</param>
/// <param name="Entries">Number of entries of any kind.</param>
/// <param name="Notices">What is shown on every page, such as that all of it is invented.</param>
/// <param name="Troubles">Sentences about entries that were damaged, refused or not understood.</param>
/// <param name="Bench">Where the bench was left, in sentences: the cell, what was in hand, the next act that cannot be taken back; empty before anything was opened.</param>
/// <param name="Newest">The newest entries, newest first, at most thirty.</param>
public sealed record DossierOverview(string Name, string Title, int Entries, ValueList<string> Notices, ValueList<string> Troubles, ValueList<string> Bench, ValueList<EntryRow> Newest)
{
    private const int Most = 30;

    /// <summary>The page as the dossier stands.</summary>
    public static DossierOverview Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        return new(dossier.Session.Name, TitleOf(view), view.Entries.Count, NoticesOf(view), [.. Trouble(dossier)], [.. Left(dossier)], [.. Rows(dossier)]);
    }

    /// <summary>What the dossier is about in words; empty where nobody said.</summary>
    public static string TitleOf(IDossierView view) => view.Live<DossierOpened>().Select(opened => opened.Value.Title).LastOrDefault(title => title.Length > 0) ?? "";

    /// <summary>What is shown on every page.</summary>
    public static ValueList<string> NoticesOf(IDossierView view) =>
        [.. view.Live<DossierOpened>().Select(opened => opened.Value.Notice).Where(notice => notice.Length > 0).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<EntryRow> Rows(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var payloads = new EntryPayloads(view);
        // Sentences of claims are Telling's: the entries' own words stop left of it.
        var claims = dossier.Claims.Where(claim => claim.RestsOn.Count > 0).ToLookup(claim => claim.RestsOn[0]);
        return view.Entries.Reverse().Take(Most).Select(folded => new EntryRow(
            folded.Entry.Id.Hex,
            folded.Entry.Kind,
            claims[folded.Entry.Id].FirstOrDefault() is { } claim ? $"{claim.Name}: {claim.Text}" : payloads.Of(folded.Entry.Id) is { } payload ? EntryWords.Say(payload, dossier.Model) : RawWords.Of(folded, view),
            folded.Fate,
            folded.Entry.By,
            folded.Entry.At));
    }

    private static IEnumerable<string> Left(OpenDossier dossier)
    {
        var card = ResumeCard.Of(dossier.Session.View, dossier.Model.Has);
        // Once anything is noted of the work, a cell that nobody looked at is said too: it counts as connected.
        if (card.Cells.All(each => each.Entry is null) && card.InHand is not { Said: true } && card.Irreversible is null) yield break;
        foreach (var cell in card.Cells) yield return cell.Say;
        if (card.InHand is { Said: true, What.Length: > 0 } hand) yield return $"In hand: {hand.What}{(hand.Next.Length > 0 ? "; next: " + hand.Next : "")}.";
        if (card.IrreversibleSays.Length > 0) yield return "The next act that cannot be taken back: " + card.IrreversibleSays;
    }

    private static IEnumerable<string> Trouble(OpenDossier dossier)
    {
        foreach (var fault in dossier.Session.Damaged) yield return fault.Say;
        var entries = dossier.Session.View.Entries;
        var unknown = entries.Count(entry => entry.Fate == EntryFate.Unknown);
        if (unknown > 0) yield return string.Create(CultureInfo.InvariantCulture, $"{unknown} entries are of a kind this program does not know; they are kept as they are.");
        var refused = entries.Count(entry => entry.Fate == EntryFate.Refused);
        if (refused > 0) yield return string.Create(CultureInfo.InvariantCulture, $"{refused} entries cannot be read; they are kept as they are.");
    }
}
