using System.Reflection;

namespace Lidoff.Architecture.Tests;

/// <summary>The rooms as docs/design.md §2 has them: each project with the ones it may use directly or through others.</summary>
internal static class Rooms
{
    private static readonly string[] Core = ["Lidoff.Numbers", "Lidoff.Evidence", "Lidoff.Catalogue"];
    private static readonly string[] Benches = ["Lidoff.Opening", "Lidoff.Seeing", "Lidoff.Naming", "Lidoff.Tracing", "Lidoff.Reckoning"];

    public static IReadOnlyDictionary<string, IReadOnlySet<string>> MayUse { get; } = Build();

    public static IReadOnlyList<Assembly> Assemblies { get; } =
        [.. MayUse.Keys.Select(name => Assembly.Load(name == "Lidoff" ? "lidoff" : name))];

    /// <summary>The folder that holds the solution, found upwards from the test's own folder.</summary>
    public static string Root { get; } = FindRoot();

    public static IEnumerable<string> SourceFiles(string under) =>
        Directory.EnumerateFiles(Path.Combine(Root, under), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains("/obj/", StringComparison.Ordinal) && !path.Contains("/bin/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static Dictionary<string, IReadOnlySet<string>> Build()
    {
        var table = new Dictionary<string, IReadOnlySet<string>>(StringComparer.Ordinal)
        {
            ["Lidoff.Numbers"] = new HashSet<string>(),
            ["Lidoff.Evidence"] = new HashSet<string> { "Lidoff.Numbers" },
            ["Lidoff.Catalogue"] = new HashSet<string> { "Lidoff.Numbers", "Lidoff.Evidence" },
        };
        foreach (var room in Benches) table[room] = new HashSet<string>(Core);
        table["Lidoff.Weighing"] = new HashSet<string>([.. Core, .. Benches]);
        table["Lidoff.Telling"] = new HashSet<string>([.. Core, .. Benches, "Lidoff.Weighing"]);
        table["Lidoff.Bench"] = new HashSet<string>([.. Core, .. Benches, "Lidoff.Weighing", "Lidoff.Telling"]);
        table["Lidoff"] = new HashSet<string>([.. Core, .. Benches, "Lidoff.Weighing", "Lidoff.Telling", "Lidoff.Bench"]);
        return table;
    }

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Lidoff.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("the tests run inside the repository");
        }

        return folder;
    }
}
