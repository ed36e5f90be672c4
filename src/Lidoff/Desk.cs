using System.CommandLine;
using System.Security.Cryptography;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Dossiers;

namespace Lidoff;

/// <summary>Opens what commands work on: the workspace of a call, its dossiers, and every evidence kind of every room.</summary>
public static class Desk
{
    /// <summary>Every evidence kind.</summary>
    public static EvidenceKinds Kinds => DossierKinds.All;

    /// <summary>Opens a dossier with its live model.</summary>
    public static Outcome<OpenDossier> Dossier(Seat seat, Workspace workspace, string name) => OpenDossier.Open(workspace, name, Ranker(seat, workspace));

    /// <summary>The naming engine of a workspace, made when a name is first asked for.</summary>
    public static Lazy<Naming.Ranking.Ranker> Ranker(Seat seat, Workspace workspace) => OpenDossier.Ranker(Path.Combine(seat.ProgramFolder, "data", "catalogue"), workspace);

    /// <summary>Opens the workspace, making it where there is none.</summary>
    public static Outcome<Workspace> Open(Seat seat, ParseResult parsed) => OpenFolder(seat, seat.WorkspaceFolder(parsed));

    /// <summary>Opens a workspace that must be there, for commands that only read.</summary>
    public static Outcome<Workspace> OpenExisting(Seat seat, ParseResult parsed)
    {
        var folder = seat.WorkspaceFolder(parsed);
        return Workspace.IsThere(folder) ? OpenFolder(seat, folder) : CommandSentences.NoWorkspace(folder);
    }

    /// <summary>Opens the workspace of a folder. The writer's seed is drawn here, at the program's edge, and nowhere else.</summary>
    public static Outcome<Workspace> OpenFolder(Seat seat, string folder) => Workspace.Open(folder, seat.Writers?.Invoke() ?? DrawnSeed(), seat.Clock);

    /// <summary>Works on the workspace of a call, which must be there, and closes it.</summary>
    public static int Within(Seat seat, ParseResult parsed, Func<Workspace, int> work)
    {
        var opened = OpenExisting(seat, parsed);
        if (!opened.TryValue(out var workspace)) return Refuse(seat, opened.Faults);
        using (workspace) return work(workspace);
    }

    /// <summary>Works on one dossier of the workspace of a call.</summary>
    public static int Within(Seat seat, ParseResult parsed, string dossier, Func<Workspace, DossierSession, int> work) => Within(seat, parsed, workspace =>
    {
        var session = DossierSession.Open(workspace, dossier, Kinds);
        return session.Ok ? work(workspace, session.Value) : Refuse(seat, session.Faults);
    });

    private static WriterSeed DrawnSeed()
    {
        Span<byte> seed = stackalloc byte[32];
        RandomNumberGenerator.Fill(seed);
        return new(seed);
    }

    /// <summary>Says faults and gives the exit code of a refused whole.</summary>
    public static int Refuse(Seat seat, IReadOnlyList<Fault> faults)
    {
        foreach (var fault in faults) seat.Talk.Say(fault.Say);
        return ExitCodes.Refused;
    }
}
