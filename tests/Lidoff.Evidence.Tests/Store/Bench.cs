using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

/// <summary>Opening workspaces and putting things in, in few words.</summary>
internal static class Bench
{
    private static readonly FileRecognisers Recognisers = FileRecognisers.Found();
    private static int writers;

    /// <summary>Opens a workspace with one dossier, <c>tag</c>, as a process of its own.</summary>
    public static Workspace Open(string folder, IFileLayer? disk = null)
    {
        var workspace = Workspace.Open(folder, Seeds.Of("bench" + Interlocked.Increment(ref writers)), new SteppingClock(), disk).Value;
        if (workspace.Store.Dossiers().Value.Count == 0) Assert.True(DossierSession.Begin(workspace, "tag").Ok);
        return workspace;
    }

    public static Outcome<(StoredEntry Stored, FileAdded Fact)> Add(Workspace workspace, string content, string name = "a.txt") => FileTaking.Take(
        workspace, DossierSession.Open(workspace, "tag", WordKind.Kinds).Value, new MemoryStream(Encoding.UTF8.GetBytes(content)), name, "add", Recognisers);

    public static EntryId Note(Workspace workspace, string word) => workspace.Store.Append([WordKind.Of(word)]).Value[0].Id;

    /// <summary>The content of a stored file, read back.</summary>
    public static string Read(Workspace workspace, string sha256)
    {
        using var reader = new StreamReader(workspace.Files.Open(sha256, "file").Value);
        return reader.ReadToEnd();
    }

    public static string View(Workspace workspace) => Histories.Spell(Histories.FoldOf(Histories.Entries(workspace.Store)));

    /// <summary>Verifies, showing every sentence when something is wrong.</summary>
    public static Verification Verified(Workspace workspace)
    {
        var found = Verifier.Run(workspace).Value;
        Assert.Equal("", string.Join('\n', found.Faults.Select(f => f.Where + ": " + f.Say)));
        return found;
    }
}
