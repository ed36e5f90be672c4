// A writer to be killed: it opens the workspace named first, as the writer whose seed (hex) comes second, and appends entries and
// files to dossier "tag" without end. The id of each entry goes to standard output once the store has acknowledged it.
using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;

using var workspace = Workspace.Open(args[0], new WriterSeed(Convert.FromHexString(args[1])), TimeProvider.System).Value;
using var acknowledged = Console.OpenStandardOutput();
for (var i = 0; ; i++)
{
    var batch = new List<EntryDraft>();
    for (var word = 0; word <= i % 3; word++) batch.Add(EntryDraft.Of("tag", new DossierKind(), json => json.WriteString("title", $"title {i}")));
    if (i % 2 == 1)
    {
        // Few different contents, so that writers meet on the same file.
        var content = Encoding.UTF8.GetBytes(new string((char)('a' + (i % 7)), 100_000));
        var file = workspace.Files.Take(new MemoryStream(content), "a.txt").Value;
        batch.Add(FileKind.Draft("tag", new FileAdded("a.txt", file.Sha256, file.Bytes, "text/plain", "add")));
    }

    var lines = string.Concat(workspace.Store.Append(batch).Value.Select(stored => stored.Id.Hex + "\n"));
    acknowledged.Write(Encoding.ASCII.GetBytes(lines));
}
