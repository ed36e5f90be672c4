using System.CommandLine;
using Lidoff.Evidence.Entries;
using Lidoff.Talking;

namespace Lidoff;

/// <summary>What a command is given of the outside world: talk, clock, folders. Nothing else of the process is touched.</summary>
/// <param name="Talk">Streams.</param>
/// <param name="Clock">The injected clock.</param>
/// <param name="ProgramFolder">The program's own folder, where data and assets lie.</param>
/// <param name="WorkingFolder">What relative file arguments start from.</param>
/// <param name="DefaultWorkspace">The user's data folder, used without <c>--workspace</c>.</param>
/// <param name="WorkspaceOption">The <c>--workspace</c> option every command has.</param>
/// <param name="Writers">What makes each writer itself, another one at each call; null draws it at random, as the program does.</param>
public sealed record Seat(
    ITalk Talk,
    TimeProvider Clock,
    string ProgramFolder,
    string WorkingFolder,
    string DefaultWorkspace,
    Option<string?> WorkspaceOption,
    Func<WriterSeed>? Writers = null)
{
    /// <summary>The workspace folder of this call, absolute.</summary>
    public string WorkspaceFolder(ParseResult parsed) =>
        Path.GetFullPath(parsed.GetValue(WorkspaceOption) ?? DefaultWorkspace, WorkingFolder);

    /// <summary>A file argument, absolute.</summary>
    public string PathOf(string argument) => Path.GetFullPath(argument, WorkingFolder);
}
