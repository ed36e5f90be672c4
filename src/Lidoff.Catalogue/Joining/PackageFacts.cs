using Lidoff.Catalogue.Packages;
using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Joining;

/// <summary>Makes package facts of rows and melts those that agree into one.</summary>
internal static class PackageFacts
{
    // Two tables that round one body differently (4.9 and 4.90, 1.6 and 1.55) mean one package; half a tenth of a mm is below any caliper reading of plastic.
    private const double SameMm = 0.051;

    private const double SmallestModuleMm = 7;

    /// <summary>What one row says; several when its package column names alternatives.</summary>
    public static IEnumerable<PackageFact> Of(CatalogueRow row)
    {
        var names = PackageName.Alternatives(row.Package);
        if (names.Count == 0)
        {
            if (row.LengthMm is not null || row.Pins is not null || row.PitchMm is not null)
                yield return new PackageFact("", "", Longer(row), Shorter(row), row.HeightMm, row.PitchMm, row.Pins) { Confidence = row.Confidence };
            yield break;
        }

        var first = true;
        foreach (var name in names)
        {
            var read = PackageName.Read(name);
            // The row's own numbers belong to its only package, or to the first alternative that has none of its own.
            var own = first && (names.Count == 1 || read.LengthMm is null || read.LengthMm == Longer(row));
            yield return new PackageFact(
                name,
                Family(read, row),
                (own ? Longer(row) : null) ?? read.LengthMm,
                (own ? Shorter(row) : null) ?? read.WidthMm,
                (own ? row.HeightMm : null) ?? read.HeightMm,
                (own ? row.PitchMm : null) ?? read.PitchMm,
                (own ? row.Pins : null) ?? read.Pins) { Confidence = row.Confidence };
            first = false;
        }
    }

    // A module's package is named after the module; positioning modules are castellated boards that tables call leadless carriers.
    private static string Family(PackageName read, CatalogueRow row)
    {
        if (read.Family.Length > 0 && !read.Name.StartsWith("LCC", StringComparison.Ordinal)) return read.Family;
        var kind = KindWords.Of(row.Class);
        return kind == "module" || (kind == "GNSS" && Longer(row) >= SmallestModuleMm) ? "module" : read.Family;
    }

    /// <summary>Adds a fact to a list, melting it into one that says the same with gaps filled.</summary>
    public static void Add(List<PackageFact> facts, PackageFact fact)
    {
        for (var i = 0; i < facts.Count; i++)
        {
            if (Same(facts[i], fact))
            {
                facts[i] = Melt(facts[i], fact);
                return;
            }
        }

        facts.Add(fact);
    }

    /// <summary>True when both name a family and nothing in them disagrees.</summary>
    public static bool Same(PackageFact a, PackageFact b) =>
        a.Family == b.Family && a.Family.Length > 0 && Equal(a.Pins, b.Pins) && Near(a.LengthMm, b.LengthMm) && Near(a.WidthMm, b.WidthMm) && Near(a.PitchMm, b.PitchMm)
        && (a.Pins is null || b.Pins is not null || a.LengthMm is null || b.LengthMm is not null || a.Name == b.Name);

    /// <summary>True when both speak of the same family and cannot be one package.</summary>
    public static bool Contradict(PackageFact a, PackageFact b) =>
        a.Family == b.Family && a.Family.Length > 0 && (!Equal(a.Pins, b.Pins) || !Near(a.LengthMm, b.LengthMm) || !Near(a.WidthMm, b.WidthMm));

    private static PackageFact Melt(PackageFact a, PackageFact b)
    {
        var (best, other) = b.Confidence > a.Confidence ? (b, a) : (a, b);
        return best with
        {
            LengthMm = best.LengthMm ?? other.LengthMm,
            WidthMm = best.WidthMm ?? other.WidthMm,
            HeightMm = best.HeightMm ?? other.HeightMm,
            PitchMm = best.PitchMm ?? other.PitchMm,
            Pins = best.Pins ?? other.Pins,
            OrderCodes = [.. a.OrderCodes.Union(b.OrderCodes, StringComparer.Ordinal).Order(StringComparer.Ordinal)],
        };
    }

    private static bool Equal(int? a, int? b) => a is null || b is null || a == b;

    private static bool Near(double? a, double? b) => a is null || b is null || Math.Abs(a.Value - b.Value) <= SameMm;

    private static double? Longer(CatalogueRow row) => row.LengthMm is { } l && row.WidthMm is { } w ? Math.Max(l, w) : row.LengthMm ?? row.WidthMm;

    private static double? Shorter(CatalogueRow row) => row.LengthMm is { } l && row.WidthMm is { } w ? Math.Min(l, w) : null;
}
