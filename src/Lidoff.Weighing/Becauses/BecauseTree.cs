using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Failing;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Becauses;

/// <summary>What a selected thing rests on, in at most three steps: the thing, the entries, the raw files with their hashes. Pure.</summary>
public sealed class BecauseTree
{
    private readonly IDossierView view;
    private readonly DossierModel model;
    private readonly IReadOnlyList<TiedClaim> claims;
    private readonly EntryPayloads payloads;

    private BecauseTree(IDossierView view, DossierModel model, IReadOnlyList<TiedClaim> claims)
    {
        this.view = view;
        this.model = model;
        this.claims = claims;
        payloads = new(view);
    }

    /// <summary>
    /// The because of <c>spot:U3</c>, <c>claim:C1</c>, <c>entry:ID</c> or any reference that claims may use. A reference that leads
    /// nowhere gives a node that says why.
    /// </summary>
    public static BecauseNode Of(IDossierView view, DossierModel model, string reference, IReadOnlyList<TiedClaim>? claims = null)
    {
        var tree = new BecauseTree(Guard.NotNull(view), Guard.NotNull(model), claims ?? []);
        var (word, rest) = reference.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon ? (reference[..colon], reference[(colon + 1)..]) : ("", reference);
        return word switch
        {
            "spot" => tree.Spot(reference, rest),
            "claim" => tree.Claim(reference, rest),
            "entry" => tree.Entry(reference, rest),
            _ => tree.Value(reference),
        };
    }

    private BecauseNode Value(string reference)
    {
        var value = model.Value(reference);
        if (value.Missing is { } missing) return Thing(reference, value.Says, missing, [], Grade.E0, []);
        var sentences = new List<string>();
        if (ValueText.Interval(value) is { Length: > 0 } interval) sentences.Add(BecauseSentences.Interval(interval));
        sentences.AddRange(value.Because);
        if (value.Source.Length > 0) sentences.Add(BecauseSentences.Formula(value.Source));
        return Thing(reference, value.Says, ValueText.Print(value), sentences, value.Grade, value.RestsOn);
    }

    private BecauseNode Claim(string reference, string name)
    {
        if (claims.FirstOrDefault(claim => claim.Name == name) is not { } claim) return Thing(reference, name, WeighingSentences.NoClaim(name), [], Grade.E0, []);
        List<string> sentences = claim.Stale ? [WeighingSentences.StaleClaim(name) + "."] : claim.Unsupported ? [WeighingSentences.UnsupportedClaim(name) + "."] : [];
        sentences.AddRange(claim.References.Select(each => model.Value(each)).Select(value => $"{value.Says}: {value.Missing ?? ValueText.Print(value)}"));
        return Thing(reference, name, claim.Text, sentences, claim.Grade, claim.RestsOn);
    }

    private BecauseNode Spot(string reference, string spot)
    {
        var about = view.Entries.Select(folded => folded.Entry.Id).Where(id => EntryWords.Spot(payloads.Of(id)) == spot).ToList();
        if (about.Count == 0) return Thing(reference, spot, BecauseSentences.Nothing(spot), [], Grade.E0, []);
        var part = model.Value("part:" + spot);
        return Thing(reference, spot, part.Missing ?? ValueText.Print(part), [.. part.Because], part.Grade, [.. part.RestsOn, .. about]);
    }

    private BecauseNode Entry(string reference, string hex) =>
        EntryId.Fits(hex) && view.Find(new(hex)) is { } folded ? Node(folded) : Thing(reference, hex, BecauseSentences.NoEntry, [], Grade.E0, []);

    private BecauseNode Thing(string reference, string title, string say, IEnumerable<string> sentences, Grade grade, IEnumerable<EntryId> rests)
    {
        var ids = rests.ToHashSet();
        var nodes = ids.Count == 0 ? [] : view.Entries.Where(folded => ids.Contains(folded.Entry.Id)).Select(Node);
        return new(BecauseSort.Thing, reference, title, say, [.. sentences], grade, "", null, [.. nodes]);
    }

    private BecauseNode Node(FoldedEntry folded)
    {
        var entry = folded.Entry;
        var payload = payloads.Of(entry.Id);
        var claim = claims.FirstOrDefault(each => each.RestsOn.Count > 0 && each.RestsOn[0] == entry.Id);
        var say = payload is null && claim is not null ? $"claim {claim.Name}: {claim.Text}" : EntryWords.Say(payload, model);
        ValueList<string> fate = folded.Fate == EntryFate.Live ? [] : [BecauseSentences.Fate(folded.Fate)];
        return new(BecauseSort.Entry, entry.Id.Hex, entry.Kind, say, fate, null, entry.By, entry.At, [.. Files(entry, payload)]);
    }

    /// <summary>The files an entry brought or was made in, each once.</summary>
    private IEnumerable<BecauseNode> Files(Entry entry, object? payload)
    {
        var files = entry.Files.ToList();
        if (EntryWords.Picture(payload) is { Length: > 0 } picture && model.Picture(picture) is { Found: true } found) files.Add(found.Sha256);
        foreach (var sha256 in files.Distinct(StringComparer.Ordinal))
        {
            var name = model.Picture(sha256) is { Found: true } named ? named.Name : BecauseSentences.UnnamedFile;
            yield return new(BecauseSort.File, sha256, name, "", [], null, "", null, []);
        }
    }
}
