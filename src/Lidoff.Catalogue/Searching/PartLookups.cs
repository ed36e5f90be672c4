using Lidoff.Catalogue.Packages;
using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Searching;

/// <summary>Ways into the catalogue that ranking uses: by bus address, by identity, by package, by mark. Built on first use; every list is in ordinal order of part names unless it says otherwise.</summary>
public sealed class PartLookups
{
    private readonly IReadOnlyList<Part> parts;
    private readonly Lazy<ILookup<int, Part>> byAddress;
    private readonly Lazy<ILookup<int, Part>> byRegister;
    private readonly Lazy<ILookup<string, (Part Part, PackageFact Package)>> byFamily;
    private readonly Lazy<MarkGrams> grams;

    internal PartLookups(IReadOnlyList<Part> parts)
    {
        this.parts = parts;
        byAddress = new(() => parts.SelectMany(p => p.BusAddresses.Concat(p.ExampleAddresses).Select(a => (a, p))).ToLookup(x => x.a, x => x.p));
        byRegister = new(() => parts.SelectMany(p => p.Identity.Select(i => i.Register).Distinct().Select(r => (r, p))).ToLookup(x => x.r, x => x.p));
        byFamily = new(() => parts.SelectMany(p => p.Packages.Select(f => (p, f))).ToLookup(x => x.f.Family, StringComparer.Ordinal));
        grams = new(() => new MarkGrams(parts));
    }

    /// <summary>Parts that can answer at a 7-bit address, those that only an example puts there among them.</summary>
    public IReadOnlyList<Part> ByAddress(int address) => [.. byAddress.Value[address]];

    /// <summary>Parts whose identity register returns this value, judged in the bits that count.</summary>
    public IReadOnlyList<Part> ByIdentity(int register, long value) =>
        [.. byRegister.Value[register].Where(p => p.Identity.Any(i => i.Register == register && i.Accepts(value)))];

    /// <summary>
    /// Parts with a package of this family, body and pins. A fact that is not known excludes nobody: a null or empty argument is
    /// not asked for, and a package that lacks a fact stays in. Sides agree within <paramref name="toleranceMm"/>, either way round.
    /// </summary>
    public IReadOnlyList<(Part Part, PackageFact Package)> ByPackage(string family, double? lengthMm, double? widthMm, int? pins, double toleranceMm)
    {
        var pool = family.Length > 0 ? byFamily.Value[family].Concat(byFamily.Value[""]) : byFamily.Value.SelectMany(g => g);
        return
        [
            .. pool.Where(x => (pins is null || x.Package.Pins is null || x.Package.Pins == pins) && BodyFit.Within(x.Package, lengthMm, widthMm, toleranceMm))
                .OrderBy(x => x.Part.Name, StringComparer.Ordinal),
        ];
    }

    /// <summary>
    /// Parts whose names, order codes or mark patterns share stretches of three signs with the lines of a mark (look-alikes count
    /// as one, <c>?</c> and <c>*</c> break a stretch), and parts whose short mark pattern covers a line; most shared stretches
    /// first, then by name. At most <paramref name="most"/> of them.
    /// </summary>
    public IReadOnlyList<Part> ByMark(IReadOnlyList<string> lines, int most) => [.. grams.Value.Find(lines, most).Select(i => parts[i])];
}
