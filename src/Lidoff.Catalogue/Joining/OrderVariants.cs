using System.Text.RegularExpressions;
using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Joining;

/// <summary>
/// Decides which names are orderable variants of a base part ("nRF52832-QFAA" of "nRF52832", "W25Q32JVSSIQ" of "W25Q32JV").
/// A suffix alone is not enough (ESP32 and ESP32-C3 are different chips): maker and coarse class must agree, no fact may
/// contradict, and a short suffix needs a fact that speaks for it.
/// </summary>
internal static partial class OrderVariants
{
    private const int LongestSuffix = 8;
    private const int ShortestBase = 4;

    // After a bare number, one or two letters are as often another chip (BAT54 and BAT54A) as another reel, so only an
    // identity or the printed name speaks for them; after a package code they are a reel when package or address agrees.
    private const int TellingSuffix = 3;

    /// <summary>Sets <see cref="RowGroup.Base"/> on every variant; adds bases that no row names but two-letter-two-sign suffixes point at.</summary>
    public static void Link(SortedDictionary<string, RowGroup> groups)
    {
        AddNamelessBases(groups);
        foreach (var group in groups.Values)
        {
            for (var length = group.Fold.Length - 1; length >= Math.Max(ShortestBase, group.Fold.Length - LongestSuffix); length--)
            {
                if (!groups.TryGetValue(group.Fold[..length], out var candidate)) continue;
                if (!IsVariant(group, candidate)) continue;
                group.Base = candidate;
                group.Root().Family.AddRange(group.Rows);
                break;
            }
        }
    }

    private static bool IsVariant(RowGroup variant, RowGroup whole)
    {
        var suffix = variant.Fold.AsSpan(whole.Fold.Length);
        if (!SuffixPattern().IsMatch(suffix) || whole.Fold.AsSpan().IndexOfAnyInRange('0', '9') < 0) return false;
        if (whole.Rows.Count == 0) return true;
        if (!MakersAgree(variant, whole) || variant.Kind != whole.Kind) return false;
        // Against all that is joined already, so that a chain of small steps never brings two identities together.
        var ids = Compare(variant.Rows, whole.Root().Family, IdentityOf, pair => pair.Register);
        var addresses = Compare(variant.Rows, whole.Root().Family, row => row.Addresses, _ => 0);
        if (ids < 0 || addresses < 0) return false;
        var packages = PackageVerdict(variant, whole);
        var named = Names(variant, whole);
        if (packages < 0 && ids <= 0) return false;
        if (ids > 0 || named || suffix.Length >= TellingSuffix) return true;
        return !char.IsAsciiDigit(whole.Fold[^1]) && (addresses > 0 || packages > 0);
    }

    private static IReadOnlyList<(int Register, long Value)> IdentityOf(CatalogueRow row) =>
        row.IdRegister is { } register && row.IdValue is { } value ? [(register, value)] : [];

    private static bool MakersAgree(RowGroup a, RowGroup b) => a.Rows.Any(x => b.Rows.Any(y => MakerNames.Agree(x.Maker, y.Maker)));

    // 1: a shared value; -1: both say something under one key and share nothing; 0: nothing to compare.
    private static int Compare<T>(IEnumerable<CatalogueRow> a, IEnumerable<CatalogueRow> b, Func<CatalogueRow, IReadOnlyList<T>> pick, Func<T, int> key)
        where T : notnull
    {
        var left = a.SelectMany(pick).ToHashSet();
        var right = b.SelectMany(pick).ToHashSet();
        if (left.Overlaps(right)) return 1;
        var keys = left.Select(key).ToHashSet();
        return right.Any(r => keys.Contains(key(r))) ? -1 : 0;
    }

    private static int PackageVerdict(RowGroup variant, RowGroup whole)
    {
        var clash = false;
        foreach (var a in variant.Packages)
        {
            foreach (var b in whole.Packages)
            {
                if (PackageFacts.Same(a, b) && a.Pins is not null && b.Pins is not null) return 1;
                clash |= PackageFacts.Contradict(a, b);
            }
        }

        return clash ? -1 : 0;
    }

    // What the variant's mark says without its tail: where that is the base name, the maker prints the base name on it.
    private static bool Names(RowGroup variant, RowGroup whole) =>
        variant.Rows.Any(row => row.Marks.Any(mark => mark.EndsWith('*') && PartFold.Of(mark[..^1].Replace("/", "", StringComparison.Ordinal)) == whole.Fold));

    private static void AddNamelessBases(SortedDictionary<string, RowGroup> groups)
    {
        foreach (var group in groups.Values.ToList())
        {
            var found = PackageAndBuild().Match(group.Name);
            if (!found.Success) continue;
            var name = found.Groups[1].Value;
            var fold = PartFold.Of(name);
            if (!groups.ContainsKey(fold)) groups.Add(fold, new RowGroup(fold, name));
        }
    }

    // After the base: a letter, a plus or a bracket; a digit would make another number of it (MAX3010 and MAX30101).
    [GeneratedRegex(@"^[A-Z+(/#][A-Z0-9+()/#.]*$", RegexOptions.CultureInvariant)]
    private static partial Regex SuffixPattern();

    // Hyphen, two letters for the package, two for the build; "xx" where a source speaks of all builds.
    [GeneratedRegex(@"^([A-Za-z0-9]*\d[A-Za-z0-9]*)-[A-Z]{2}(?:xx|[A-Z][A-Z0-9])(?:-R7?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex PackageAndBuild();
}
