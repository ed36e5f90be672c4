namespace Lidoff.Architecture.Tests;

public sealed class ArrowTests
{
    [Fact]
    public void Every_project_under_src_is_a_room_of_the_design()
    {
        var projects = Directory.EnumerateDirectories(Path.Combine(Rooms.Root, "src")).Select(Path.GetFileName).Order(StringComparer.Ordinal);
        Assert.Equal(Rooms.MayUse.Keys.Order(StringComparer.Ordinal), projects!);
    }

    [Fact]
    public void Arrows_point_only_leftwards_and_no_room_calls_a_sibling()
    {
        var wrong = Rooms.Assemblies.SelectMany(assembly => assembly.GetReferencedAssemblies()
            .Where(used => used.Name!.StartsWith("Lidoff", StringComparison.OrdinalIgnoreCase))
            .Where(used => !Rooms.MayUse[NameOf(assembly.GetName().Name!)].Contains(NameOf(used.Name!)))
            .Select(used => $"{assembly.GetName().Name} uses {used.Name}"));
        Assert.Empty(wrong);
    }

    [Fact]
    public void Numbers_uses_nothing_but_the_base_library()
    {
        var used = Rooms.Assemblies[0].GetReferencedAssemblies().Select(name => name.Name!)
            .Where(name => !name.StartsWith("System", StringComparison.Ordinal));
        Assert.Empty(used);
    }

    private static string NameOf(string assembly) => assembly == "lidoff" ? "Lidoff" : assembly;
}
