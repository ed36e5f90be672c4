using Lidoff.Commands;

namespace Lidoff.Architecture.Tests;

public sealed class CommandTests
{
    [Fact]
    public void Every_command_of_the_table_has_its_class_and_every_class_stands_in_the_table()
    {
        var classes = typeof(ILidoffCommand).Assembly.GetTypes()
            .Where(type => type is { IsClass: true, IsAbstract: false } && typeof(ILidoffCommand).IsAssignableFrom(type))
            .Select(type => type.Name[..^"Command".Length].ToLowerInvariant());
        Assert.Equal(CommandTable.Names.Order(StringComparer.Ordinal), classes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_table_and_the_contracts_name_the_same_commands()
    {
        var contracts = File.ReadAllText(Path.Combine(Rooms.Root, "docs", "contracts.md"));
        var named = CommandTable.Names.Concat(CommandTable.Later).Where(name => !contracts.Contains($"`lidoff {name}", StringComparison.Ordinal));
        Assert.Empty(named);
    }
}
