using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>Takes a file into a dossier: the content first, for good, and only then the entry that names it.</summary>
public static class FileTaking
{
    /// <summary>
    /// Streams <paramref name="content"/> into the vault, recognises it by its content and appends its entry. Whatever it is, it is
    /// kept. <paramref name="name"/> is hostile text; <paramref name="from"/> says how it came (<c>add</c>, <c>drop</c>, …).
    /// </summary>
    public static Outcome<(StoredEntry Stored, FileAdded Fact)> Take(
        Workspace workspace, DossierSession session, Stream content, string name, string from, FileRecognisers recognisers, long cap = FileVault.UsualCap, CancellationToken stop = default)
    {
        Guard.NotNull(workspace);
        Guard.NotNull(session);
        return workspace.Files.Take(content, name, cap, stop).Then(taken => workspace.Files.Open(taken.Sha256, name).Then(stream =>
        {
            using (stream)
            {
                var kind = recognisers.Recognise(stream, name);
                var fact = new FileAdded(name, taken.Sha256, taken.Bytes, kind == RecognisedFile.Unrecognised ? "" : kind.MediaType, from);
                return session.Append([FileKind.Draft(session.Name, fact)], () => workspace.Files.Has(taken.Sha256) ? null : StoreSentences.FileVanished(name)).Then(stored => (stored[0], fact));
            }
        }));
    }
}
