using System.CommandLine;
using System.Runtime.InteropServices;
using Lidoff;
using Lidoff.Talking;

// The only place where the process itself is touched: its streams, clock, folders and signals.
using var talk = new ConsoleTalk();
using var stop = new CancellationTokenSource();
using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);

var data = Environment.GetEnvironmentVariable("XDG_DATA_HOME") is { Length: > 0 } given && Path.IsPathFullyQualified(given)
    ? given
    : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "share");
var seat = new Seat(
    talk,
    TimeProvider.System,
    AppContext.BaseDirectory,
    Path.GetFullPath("."),
    Path.Combine(data, "lidoff"),
    new Option<string?>("--workspace") { Description = "Folder of the workspace (default: the user's data folder).", HelpName = "DIR" });

return await LidoffProgram.Run(args, seat, stop.Token);

void Stop(PosixSignalContext context)
{
    context.Cancel = true;
    stop.Cancel();
}
