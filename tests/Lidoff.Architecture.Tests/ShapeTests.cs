using System.Text.RegularExpressions;

namespace Lidoff.Architecture.Tests;

public sealed partial class ShapeTests
{
    [Fact]
    public void Every_public_class_is_sealed_static_or_meant_for_inheritance()
    {
        var open = Rooms.Assemblies.SelectMany(assembly => assembly.GetExportedTypes())
            .Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false })
            // The web SDK makes the entry point public for its own test host.
            .Where(type => type.FullName != "Program")
            // The Razor compiler makes a class of each file of shared usings.
            .Where(type => type.Name != "_Imports")
            .Where(type => !typeof(Microsoft.AspNetCore.Components.IComponent).IsAssignableFrom(type))
            .Select(type => type.FullName);
        Assert.Empty(open);
    }

    [Fact]
    public void One_public_type_a_file_named_after_it()
    {
        var wrong = new List<string>();
        foreach (var path in Rooms.SourceFiles("src"))
        {
            var types = TopLevelPublic().Matches(File.ReadAllText(path)).Select(match => match.Groups["name"].Value).Distinct().ToList();
            var stem = Path.GetFileName(path).Split('.')[0];
            if (types.Count > 1 || (types.Count == 1 && types[0] != stem)) wrong.Add($"{Path.GetRelativePath(Rooms.Root, path)}: {string.Join(", ", types)}");
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Files_stay_small_and_long_ones_explain_themselves()
    {
        var lengths = Rooms.SourceFiles("src").ToDictionary(path => path, path => File.ReadAllLines(path).Length);
        var median = lengths.Values.Order().ElementAt(lengths.Count / 2);
        Assert.InRange(median, 1, 100);
        var unexplained = lengths.Where(pair => pair.Value > 600 && !File.ReadLines(pair.Key).First().StartsWith("//", StringComparison.Ordinal))
            .Select(pair => pair.Key);
        Assert.Empty(unexplained);
    }

    [Fact]
    public void Nothing_in_the_repository_reaches_outside_it()
    {
        // The folders of the machine it was written on, and a neighbour folder's name: the repository stands alone.
        string[] foreign = ["/wo" + "rk/", "../sha" + "red", "/ro" + "ot/", "/ho" + "me/"];
        var wrong = new[] { "src", "tests", "bench", "docs", "data", "eng", ".ci" }
            .Select(folder => Path.Combine(Rooms.Root, folder)).Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
            .Where(path => Path.GetExtension(path) is ".cs" or ".md" or ".razor" or ".py" or ".sh" or ".csproj" or ".targets" or "")
            .Where(path => !path.Contains("/obj/", StringComparison.Ordinal) && !path.Contains("/bin/", StringComparison.Ordinal))
            .Where(path => foreign.Any(word => File.ReadAllText(path).Contains(word, StringComparison.Ordinal)))
            .Select(path => Path.GetRelativePath(Rooms.Root, path));
        Assert.Empty(wrong);
    }

    [GeneratedRegex(@"^public (?:(?:static|sealed|abstract|readonly|partial|unsafe) )*(?:class|record struct|record|struct|interface|enum|delegate \S+) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex TopLevelPublic();
}
