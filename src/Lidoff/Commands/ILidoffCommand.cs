using System.CommandLine;

namespace Lidoff.Commands;

/// <summary>
/// One command of the program. The class for <c>lidoff name</c> is <c>NameCommand</c>: the program finds it by that name
/// alone, so that a start pays for one command and not for all. A command returns an exit code of <see cref="ExitCodes"/>.
/// </summary>
public interface ILidoffCommand
{
    /// <summary>One sentence for <c>--help</c>.</summary>
    string Says { get; }

    /// <summary>One example for <c>--help</c>, without the leading <c>lidoff</c>.</summary>
    string Example { get; }

    /// <summary>Adds arguments, options and the action to an empty command that already has name, help and <c>--workspace</c>.</summary>
    void Build(Command command, Seat seat);
}
