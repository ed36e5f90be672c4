using System.Diagnostics;
using System.Security.Cryptography;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Serving;

/// <summary>Runs the workbench on a workspace until it is stopped; what <c>bench</c> and <c>demo</c> share.</summary>
public static class BenchRun
{
    /// <summary>
    /// The port taken where none is asked for: drafts and looks belong to an address, and one that changed with every start would lose
    /// them. Any number outside the system's own range does; this one spells nothing.
    /// </summary>
    private const int UsualPort = 24_871;

    /// <summary>
    /// Serves. Prints the one ready line when the page answers, and opens the browser unless told not to. What lands in
    /// <paramref name="watch"/>'s folder is taken into its dossier.
    /// </summary>
    public static async Task<int> Serve(Seat seat, Workspace workspace, int? port, bool browser, string start, CancellationToken stop, (string Folder, string Dossier)? watch = null)
    {
        using var jobs = new JobDesk(seat.Clock);
        using var seats = new PictureSeats();
        var tiles = new WorkspaceTiles(workspace, jobs, seats);
        using var data = new WorkspaceBench(workspace, Desk.Ranker(seat, workspace));
        using var watches = new WatchDesk(data, seat.Clock, workspace.Folder);
        using var recordings = new RecordingDesk(data, Path.Combine(workspace.Folder, "recordings"), seat.Clock);
        // What a start before this one was recording when it was killed is kept while the page comes up; what it was computing is cleared away.
        _ = recordings.Recover();
        var sweeping = Task.Run(() => UnfinishedFiles.Sweep(workspace.CacheFolder), stop);
        using var told = watches.Listen((_, each) => seat.Talk.Say(each.Say));
        if (watch is var (folder, dossier))
        {
            var watched = watches.Start(dossier, folder);
            if (!watched.Ok) return Desk.Refuse(seat, watched.Faults);
        }

        var options = new BenchOptions
        {
            Data = data,
            Watches = watches,
            Tiles = tiles,
            Seats = seats,
            PathOf = sha256 => workspace.Files.Has(sha256) ? workspace.Files.PathOf(sha256) : null,
            Recordings = recordings,
            Networks = () => new OnnxNetworks(OnnxNetworks.FolderOf(seat.ProgramFolder)),
            Jobs = jobs,
            Unguessable = RandomNumberGenerator.Fill,
            Program = "lidoff",
            ContentRoot = seat.ProgramFolder,
            Port = port ?? UsualPort,
            Time = seat.Clock,
            Log = seat.Talk.Say,
            Start = start,
        };
        void Ready(string address)
        {
            seat.Talk.Line(BenchHost.ReadyLine(address));
            if (browser) Open(address, seat);
        }

        var ran = await BenchHost.Run(options, Ready, stop).ConfigureAwait(false);
        if (!ran.Ok && port is null) ran = await BenchHost.Run(options with { Port = 0 }, Ready, stop).ConfigureAwait(false);
        await sweeping.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (!ran.Ok) return Desk.Refuse(seat, ran.Faults);
        return ExitCodes.Stopped;
    }

    private static void Open(string address, Seat seat)
    {
        try
        {
            using var opened = Process.Start(new ProcessStartInfo("xdg-open", [address]) { RedirectStandardError = true, RedirectStandardOutput = true });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            seat.Talk.Say("No browser could be started; open the address above yourself.");
        }
    }
}
