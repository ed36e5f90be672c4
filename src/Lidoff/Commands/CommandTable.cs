using System.CommandLine;

namespace Lidoff.Commands;

/// <summary>The commands of docs/contracts.md: which exist, which come later, and how the one that was asked for is built.</summary>
public static class CommandTable
{
    /// <summary>Every command that exists, in the order of the contracts.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "demo", "bench", "new", "add", "note", "entries", "claims", "read", "look", "measure", "name", "date", "value", "reckon", "quarrels", "moves", "tell", "verify", "catalogue",
    ];

    /// <summary>Promised by the contracts and not built yet; asking for one is answered with exit 2 and a sentence.</summary>
    public static IReadOnlyList<string> Later { get; } = ["trace", "capture", "rebuild", "pack", "unpack"];

    /// <summary>The class of a command, found by its name alone; null when there is none.</summary>
    public static ILidoffCommand? Find(string name)
    {
        if (name.Length == 0 || !name.All(char.IsAsciiLetterLower)) return null;
        var type = typeof(CommandTable).Assembly.GetType($"Lidoff.Commands.{char.ToUpperInvariant(name[0])}{name[1..]}Command");
        return type is null || type.IsAbstract ? null : Activator.CreateInstance(type) as ILidoffCommand;
    }

    /// <summary>The command as the parser wants it.</summary>
    public static Command Build(string name, ILidoffCommand item, Seat seat)
    {
        var command = new Command(name, item.Says + "\n\nExample:\n  lidoff " + item.Example);
        command.Options.Add(seat.WorkspaceOption);
        item.Build(command, seat);
        return command;
    }
}
