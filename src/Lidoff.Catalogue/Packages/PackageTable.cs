using System.Globalization;
using Lidoff.Catalogue.Tables;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Packages;

/// <summary>The shipped package outlines, those of outline tables before drawn ones, else in table order.</summary>
public sealed class PackageTable
{
    private readonly Dictionary<string, Outline> byName;

    private PackageTable(IReadOnlyList<Outline> outlines)
    {
        Outlines = [.. outlines.OrderBy(o => o.HeightBasis == "outline max" ? 0 : o.HasRange ? 1 : 2)];
        byName = Outlines.Reverse().GroupBy(o => o.Name, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal);
    }

    /// <summary>All outlines.</summary>
    public IReadOnlyList<Outline> Outlines { get; }

    /// <summary>Reads the shipped tables of the program's own folder.</summary>
    public static Outcome<PackageTable> Load() => Load(ShippedTables.OwnFolder);

    /// <summary>Reads the shipped tables of a folder.</summary>
    public static Outcome<PackageTable> Load(string dataFolder) => ShippedTables.Open(dataFolder).Then(Read);

    /// <summary>The outline of exactly this name; null when there is none.</summary>
    public Outline? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>
    /// Outlines whose body agrees with measured sides within a tolerance in mm, either way round, best first: outline tables
    /// before drawings, then the smaller difference, then by name. Null sides and pins and an empty family are not asked for.
    /// </summary>
    public IReadOnlyList<Outline> Near(double? sideMm, double? otherMm, double toleranceMm, string family = "", int? pins = null)
    {
        if (sideMm is { } a && otherMm is { } b) (sideMm, otherMm) = (Math.Max(a, b), Math.Min(a, b));
        return
        [
            .. Outlines
                .Where(o => (family.Length == 0 || o.Family == family) && (pins is null || o.Pins == pins))
                .Select(o => (Outline: o, Off: Math.Max(Off(o.LengthMm, o.LengthRange, sideMm), Off(o.WidthMm, o.WidthRange, otherMm))))
                .Where(x => x.Off <= toleranceMm)
                .OrderBy(x => x.Outline.HasRange ? 0 : 1).ThenBy(x => x.Off).ThenBy(x => x.Outline.Name, StringComparer.Ordinal)
                .Select(x => x.Outline),
        ];
    }

    // Nothing within the allowed range is off; beyond it, the distance to it.
    private static double Off(double nominal, (double Least, double Most)? range, double? measured)
    {
        if (measured is not { } mm) return 0;
        if (range is not { } r) return Math.Abs(mm - nominal);
        return mm < r.Least ? r.Least - mm : mm > r.Most ? mm - r.Most : 0;
    }

    private static Outcome<PackageTable> Read(ShippedTables tables)
    {
        var faults = new List<Fault>();
        var outlines = new List<Outline>();
        foreach (var file in tables.Manifest.Files.Where(f => f.Kind == "outlines"))
        {
            foreach (var (_, cell) in tables.Records(file, faults))
                outlines.Add(Of(cell));
        }

        return faults.Count > 0 ? Outcome<PackageTable>.Failed(faults) : new PackageTable(outlines);
    }

    private static Outline Of(Func<string, string> cell)
    {
        var (length, lengthRange) = (Number(cell("body_l_mm")) ?? 0, Range(cell("body_l_range")));
        var (width, widthRange) = (Number(cell("body_w_mm")) ?? 0, Range(cell("body_w_range")));
        if (width > length) (length, lengthRange, width, widthRange) = (width, widthRange, length, lengthRange);
        var name = cell("package");
        var family = PackageFamily.OfStandard(name) is { Length: > 0 } registered ? registered
            : PackageFamily.Of(name) is { Length: > 0 } word ? word : PackageFamily.Of(cell("family"));
        return new Outline(
            name, family, cell("standard_code"), length, width, lengthRange, widthRange, Number(cell("height_mm")), cell("height_basis"),
            Number(cell("pitch_mm")), (int?)Number(cell("pins")), cell("lead_style"), cell("source"));
    }

    private static double? Number(string text) => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;

    private static (double Least, double Most)? Range(string text)
    {
        var dash = text.IndexOf('-', StringComparison.Ordinal);
        return dash > 0 && Number(text[..dash]) is { } least && Number(text[(dash + 1)..]) is { } most ? (least, most) : null;
    }
}
