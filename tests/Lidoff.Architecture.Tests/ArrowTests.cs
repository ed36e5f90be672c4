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

    [Fact]
    public void Rooms_of_the_workbench_do_not_use_each_other()
    {
        var rooms = Path.Combine("src", "Lidoff.Bench", "Rooms");
        var names = Directory.EnumerateDirectories(Path.Combine(Rooms.Root, rooms)).Select(path => Path.GetFileName(path)!).ToList();
        Assert.Equal(6, names.Count);
        var wrong = from room in names
                    from path in Directory.EnumerateFiles(Path.Combine(Rooms.Root, rooms, room), "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
                    from line in File.ReadLines(path)
                    from other in names
                    where other != room && line.Contains("Rooms." + other, StringComparison.Ordinal)
                    select $"{Path.GetRelativePath(Rooms.Root, path)}: {line.Trim()}";
        Assert.Empty(wrong);
    }

    private static string NameOf(string assembly) => assembly == "lidoff" ? "Lidoff" : assembly;
}
