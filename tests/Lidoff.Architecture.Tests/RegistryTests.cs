using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Naming.Dates;
using Lidoff.Naming.Factors;
using Lidoff.Numbers.Calculating;
using Lidoff.Reckoning.References;
using Lidoff.Telling.Reporting;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Architecture.Tests;

/// <summary>Items are found by type; one that is not quite shaped right would silently be missing. None may be.</summary>
public sealed class RegistryTests
{
    public static TheoryData<string, IReadOnlyList<Type>, int> Registries => new()
    {
        { "evidence kinds", Registry.NearMisses<IEvidenceKind>(Rooms.Assemblies), Found<IEvidenceKind>() },
        { "file recognisers", Registry.NearMisses<IFileRecogniser>(Rooms.Assemblies), Found<IFileRecogniser>() },
        { "calculations", Registry.NearMisses<Calculation>(Rooms.Assemblies), Found<Calculation>() },
        { "factors", Registry.NearMisses<ILikelihoodFactor>(Rooms.Assemblies), Found<ILikelihoodFactor>() },
        { "date rules", Registry.NearMisses<IDateRule>(Rooms.Assemblies), Found<IDateRule>() },
        { "quarrel rules", Registry.NearMisses<IQuarrelRule>(Rooms.Assemblies), Found<IQuarrelRule>() },
        { "report sections", Registry.NearMisses<IReportSection>(Rooms.Assemblies), Found<IReportSection>() },
    };

    [Theory]
    [MemberData(nameof(Registries))]
    public void No_item_is_missed_and_none_is_empty(string registry, IReadOnlyList<Type> nearMisses, int found)
    {
        Assert.True(nearMisses.Count == 0, registry + " would miss " + string.Join(", ", nearMisses.Select(type => type.FullName)));
        Assert.True(found > 0, registry + " is empty");
    }

    [Fact]
    public void Every_evidence_kind_says_what_it_is_and_has_a_name_of_its_own()
    {
        var kinds = Desk.Kinds.All;
        Assert.Equal(kinds.Select(kind => kind.Name).Distinct(), kinds.Select(kind => kind.Name));
        Assert.All(kinds, kind =>
        {
            Assert.Matches("^[a-z]+$", kind.Name);
            Assert.NotEmpty(kind.Says);
            Assert.Contains(kind.Room, new[] { "Open", "See", "Name", "Trace", "Reckon", "Tell", "all rooms" });
            Assert.All(kind.Keys, key => Assert.True(key.Key.Length > 0 && key.Type.Length > 0 && key.Says.Length > 0, kind.Name));
        });
        // What the assemblies hold and what the program knows are the same kinds.
        Assert.Equal(Found<IEvidenceKind>(), kinds.Count);
    }

    [Fact]
    public void Every_calculation_has_a_source_and_a_value_from_outside()
    {
        var wrong = Reckoning.Calculations.All
            .Where(calculation => calculation.Info.Source.Length == 0 || ReferenceTable.Count(calculation.Info.Name) == 0 || calculation.Info.Inputs.Count == 0)
            .Select(calculation => calculation.Info.Name);
        Assert.Empty(wrong);
        Assert.Equal(Found<Calculation>(), Reckoning.Calculations.All.Count);
    }

    [Fact]
    public void Every_data_file_has_its_notice_beside_it()
    {
        var folder = Path.Combine(Rooms.Root, "data", "catalogue");
        var bare = Directory.EnumerateFiles(folder, "*.csv.gz").Where(path => !File.Exists(path.Replace(".csv.gz", ".licence.md", StringComparison.Ordinal))).Select(Path.GetFileName);
        Assert.Empty(bare);
    }

    [Fact]
    public void A_silenced_warning_says_why()
    {
        var bare = Rooms.SourceFiles("src").SelectMany(path => File.ReadLines(path)
            .Where(line => line.TrimStart().StartsWith("#pragma warning disable", StringComparison.Ordinal) && !line.Contains("//", StringComparison.Ordinal))
            .Select(line => Path.GetRelativePath(Rooms.Root, path) + ": " + line.Trim()));
        Assert.Empty(bare);
    }

    private static int Found<T>() => Rooms.Assemblies.SelectMany(assembly => assembly.GetTypes())
        .Count(type => type is { IsClass: true, IsAbstract: false, IsVisible: true } && typeof(T).IsAssignableFrom(type));
}
