using Lidoff.Demo;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Telling.Dossiers;
using Lidoff.TestSupport;

namespace Lidoff.Tests.Demo;

/// <summary>The demo laid out once for all tests that look at it: its pictures take a few seconds.</summary>
public sealed class LaidDemo : IDisposable
{
    private readonly TempFolder folder = new();

    public LaidDemo()
    {
        Workspace = LayOut("demo");
        Dossier = Desk.Dossier(Seat, Workspace, DemoDossier.Name).Value;
    }

    public Workspace Workspace { get; }

    public OpenDossier Dossier { get; }

    internal Seat Seat => Seats.Of(new RecordedTalk(), folder.Path);

    /// <summary>The text of one of its files, as it is stored.</summary>
    public string Text(string name) => File.ReadAllText(Workspace.Files.PathOf(Dossier.Session.View.Live<FileAdded>().Single(file => file.Value.Name == name).Value.Sha256));

    /// <summary>Another demo in a folder of its own, by the same writer at the same times.</summary>
    public Workspace LayOut(string name)
    {
        var workspace = Workspace.Open(folder[name], Seeds.Of("demo"), new SteppingClock()).Value;
        Assert.True(DemoDossier.LayOut(Seat, workspace).Value);
        return workspace;
    }

    public void Dispose()
    {
        Workspace.Dispose();
        folder.Dispose();
    }
}
