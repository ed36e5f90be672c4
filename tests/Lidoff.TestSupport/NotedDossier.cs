using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;

namespace Lidoff.TestSupport;

/// <summary>A dossier in memory, noted to line by line as a person would, with the kinds of the assemblies named.</summary>
public sealed class NotedDossier : IDisposable
{
    private const string Name = "d";
    private readonly EvidenceKinds kinds;
    private readonly MemoryEntryStore store = new(Seeds.Of("noted"), new SteppingClock());
    private readonly Fold fold;

    /// <summary>An empty dossier that knows the kinds of the store and of <paramref name="rooms"/>' assemblies.</summary>
    public NotedDossier(params Type[] rooms)
    {
        kinds = new(Registry.Of<IEvidenceKind>(kind => kind.Name, [typeof(IEvidenceKind).Assembly, .. rooms.Select(room => room.Assembly).Distinct()]).Items);
        fold = new(Name, kinds);
    }

    /// <summary>What counts now.</summary>
    public IDossierView View => fold.View;

    /// <summary>Stores lines; a line with a fault throws with its sentence.</summary>
    public IReadOnlyList<StoredEntry> Note(params string[] lines)
    {
        var batch = new NoteReader(kinds, prefix => store.Find(Name, prefix)).Read(Name, Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        if (batch.Lines.SelectMany(line => line.Faults).FirstOrDefault() is { } fault) throw new ArgumentException(fault.Say);
        var stored = store.Append(batch.Drafts).Value;
        fold.Apply(stored);
        return stored;
    }

    /// <inheritdoc/>
    public void Dispose() => store.Dispose();
}
