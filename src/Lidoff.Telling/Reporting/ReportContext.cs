using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Documents;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Quarrels;
using Lidoff.Weighing.Questions;

namespace Lidoff.Telling.Reporting;

/// <summary>What a section builds from, and the memory of every value that was printed, each of which gets a "because".</summary>
public sealed class ReportContext
{
    private readonly Func<string, ModelValue> value;
    private readonly SortedDictionary<string, ModelValue> printed = new(StringComparer.Ordinal);
    private readonly SortedSet<EntryId> cited = [];
    private IReadOnlyList<TiedClaim>? tied;
    private IReadOnlyList<Quarrel>? quarrels;

    /// <summary>A report about <paramref name="view"/>, whose references <paramref name="model"/> resolves.</summary>
    public ReportContext(IDossierView view, DossierModel model, IReadOnlyList<Claim> claims, IReadOnlyList<ReportPicture> pictures)
    {
        View = view;
        Model = model;
        Claims = claims;
        Pictures = pictures;
        value = model.Value;
    }

    /// <summary>What counts in the dossier.</summary>
    public IDossierView View { get; }

    /// <summary>The live model.</summary>
    public DossierModel Model { get; }

    /// <summary>The claims as they read today.</summary>
    public IReadOnlyList<Claim> Claims { get; }

    /// <summary>The claims as questions and moves see them.</summary>
    public IReadOnlyList<TiedClaim> Tied => tied ??= TiedClaims.Of(Claims);

    /// <summary>Sightings that cannot all be true, in the book's order.</summary>
    public IReadOnlyList<Quarrel> Quarrels => quarrels ??= QuarrelBook.Find(View, Model);

    /// <summary>The pictures that go along.</summary>
    public IReadOnlyList<ReportPicture> Pictures { get; }

    /// <summary>Every value printed so far, by reference.</summary>
    public IReadOnlyCollection<ModelValue> Printed => printed.Values;

    /// <summary>Every entry some value leans on, in id order.</summary>
    public IReadOnlyCollection<EntryId> Cited => cited;

    /// <summary>A value in running text, leading to its because; where there is none, the words that say so.</summary>
    public Inline Value(string reference)
    {
        reference = ValueStep.Canonical(reference);
        var found = value(reference);
        printed[reference] = found;
        cited.UnionWith(found.RestsOn);
        return found.Missing is null
            ? new ValueRun(Print(found), found.Grade, Anchor(reference))
            : new LinkRun("unknown", Anchor(reference), LinkKind.Anchor);
    }

    /// <summary>Makes sure an entry has its line in the list of entries.</summary>
    public void Cite(EntryId id) => cited.Add(id);

    /// <summary>How a value reads in a sentence: value ± standard uncertainty with its unit, or the name with its odds.</summary>
    public static string Print(ModelValue value) => ValueText.Print(value);

    /// <summary>A probability for people: never 0 % nor 100 %, which nobody knows.</summary>
    public static string Percent(double p) => ValueText.Percent(p);

    /// <summary>The 90 % interval of a number in words.</summary>
    public static string Interval(ModelValue value) => ValueText.Interval(value);

    /// <summary>The anchor of a reference's because.</summary>
    public static string Anchor(string reference) => "because-" + Slug(reference);

    /// <summary>The anchor of an entry.</summary>
    public static string Anchor(EntryId id) => "entry-" + id.Hex[..12];

    /// <summary>Letters, digits and hyphens that stand for a text and for no other: what they leave out comes back as a short hash.</summary>
    private static string Slug(string text)
    {
        var plain = new string([.. text.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')]);
        return plain + "-" + EntryCodec.Hash(System.Text.Encoding.UTF8.GetBytes(text))[..6];
    }
}
