using System.Text;
using Lidoff.Catalogue.Parts;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Ranking;
using Lidoff.Seeing.Measuring;
using Lidoff.TestSupport;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>A dossier in memory with its model, noted to line by line as a person would.</summary>
internal sealed class Bench : IDisposable
{
    public const string Dossier = "d";

    private static readonly EvidenceKinds Kinds = new(Registry.Of<IEvidenceKind>(kind => kind.Name,
    [
        typeof(IEvidenceKind).Assembly, typeof(Opening.Kinds.MassKind).Assembly, typeof(Seeing.Kinds.LengthKind).Assembly,
        typeof(Naming.Kinds.DecideKind).Assembly, typeof(Tracing.Kinds.TouchKind).Assembly, typeof(Reckoning.Bound.ReckonKind).Assembly,
        typeof(Weighing.Questions.QuestionKind).Assembly,
    ]).Items);

    private static readonly Lazy<Ranker> Engine = new(() => new(new NamingCatalogue(
    [
        new Part { Name = "ZX52832", Maker = "Made Up", Class = "radio SoC", Confidence = Confidence.Published, Packages = [new("QFN-48", "QFN", 6, 6, 0.85, 0.4, 48)] },
        new Part { Name = "ZX52810", Maker = "Made Up", Class = "radio SoC", Confidence = Confidence.Published, Packages = [new("QFN-32", "QFN", 5, 5, 0.85, 0.5, 32)] },
        new Part { Name = "QB24075", Maker = "Made Up", Class = "charger", Confidence = Confidence.Published, Packages = [new("QFN-16", "QFN", 3, 3, 0.9, 0.5, 16)] },
    ])));

    private readonly MemoryEntryStore store;
    private readonly Fold fold = new(Dossier, Kinds);

    public Bench(string writer = "a")
    {
        store = new(Seeds.Of(writer), new SteppingClock());
        Model = NewModel();
        Model.Feed(fold);
    }

    public DossierModel Model { get; }

    public IDossierView View => fold.View;

    /// <summary>A picture under a name, 2,000 × 1,000 px, whose hash is made of the name.</summary>
    public StoredEntry Picture(string name) => Store([FileKind.Draft(Dossier, new FileAdded(name, EntryCodec.Hash(Encoding.UTF8.GetBytes(name)), 10, "image/png", "add"))])[0];

    public IReadOnlyList<StoredEntry> Note(params string[] lines)
    {
        var batch = new NoteReader(Kinds, prefix => store.Find(Dossier, prefix)).Read(Dossier, Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        Assert.All(batch.Lines, line => Assert.True(line.Faults.Count == 0, line.Faults.Count > 0 ? line.Faults[0].Say : ""));
        return Store(batch.Drafts);
    }

    public void Dispose() => store.Dispose();

    /// <summary>The same dossier as another person has it, who then writes for himself.</summary>
    public Bench Copied(string writer)
    {
        var copy = new Bench(writer);
        copy.Merge(this);
        return copy;
    }

    /// <summary>Takes in what another has.</summary>
    public void Merge(Bench other)
    {
        Assert.True(store.Merge(other.store.Read(Dossier).Value.Entries, ErasureRule.Refuse).Ok);
        fold.Apply([.. store.Read(Dossier).Value.Entries.Where(entry => fold.View.Find(entry.Id) is null)]);
        Model.Feed(fold);
    }

    /// <summary>The same entries in a model that never saw them one by one.</summary>
    public DossierModel Rebuilt()
    {
        var whole = new Fold(Dossier, Kinds);
        whole.Apply(store.Read(Dossier).Value.Entries);
        var model = NewModel();
        model.Feed(whole);
        return model;
    }

    private static DossierModel NewModel() => new(Engine, "three made-up parts", _ => new PictureFrame(2000, 1000));

    private IReadOnlyList<StoredEntry> Store(IReadOnlyList<EntryDraft> drafts)
    {
        var stored = store.Append(drafts).Value;
        fold.Apply(stored);
        Model.Feed(fold);
        return stored;
    }
}
