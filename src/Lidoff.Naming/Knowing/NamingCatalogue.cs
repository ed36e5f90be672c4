using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Factors;
using Lidoff.Naming.Marks;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Knowing;

/// <summary>
/// The catalogue made ready for naming: parts in a fixed order, their kind and prior, their outlines, the index of marks. Built once,
/// then used for any number of spots, from several threads at once.
/// </summary>
public sealed class NamingCatalogue
{
    /// <summary>A kind with less standing than this, all its parts together, is thinly covered whatever its parts.</summary>
    private const double Thin = 60;

    private readonly Dictionary<string, int> familyMembers;
    private readonly Lazy<Dictionary<string, (int Part, int List, bool Ground)[]>> pins;

    /// <summary>Prepares <paramref name="parts"/>, whose order does not matter.</summary>
    public NamingCatalogue(IEnumerable<Part> parts)
    {
        Parts = [.. Guard.NotNull(parts).OrderBy(p => p.Name, StringComparer.Ordinal).ThenBy(p => p.Maker, StringComparer.Ordinal).ThenBy(p => p.Class, StringComparer.Ordinal)];
        GroupOf = [.. Parts.Select(p => ClassGroups.IndexOf(ClassGroups.Of(p.Class)))];
        Small = [.. Parts.Select(IsSmall)];
        Families = [.. Parts.Select(p => FamilyName.KeyOf(p.Name))];
        familyMembers = Families.GroupBy(f => f, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        Outlines = new OutlineTable(Parts);
        Marks = new MarkIndex([.. Parts.SelectMany((p, i) => MarkForms.Of(i, p, Small[i]))]);
        LogPrior = Priors(out var none);
        NoneLogPrior = none;
        ByRegister = Enumerable.Range(0, Parts.Count).SelectMany(i => Parts[i].Identity.Select(r => (Register: r.Register, Part: i)).Distinct())
            .GroupBy(r => r.Register).ToDictionary(g => g.Key, g => g.Select(r => r.Part).ToArray());
        pins = new(() => Enumerable.Range(0, Parts.Count).SelectMany(i => Parts[i].PinLists.SelectMany((list, k) => list.Pins.DistinctBy(p => p.Number).Select(p => (p.Number, At: (i, k, GroundPinsFactor.IsGround(p))))))
            .GroupBy(p => p.Number, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Select(p => p.At).ToArray(), StringComparer.Ordinal));
        ListedMass = new double[ClassGroups.All.Count];
        for (var i = 0; i < Parts.Count; i++) ListedMass[GroupOf[i]] += Elementary.Exp(LogPrior[i]);
    }

    /// <summary>Parts in the order in which everything is summed.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>Place of each part's group in <see cref="ClassGroups.All"/>.</summary>
    internal int[] GroupOf { get; }

    /// <summary>True for parts with so little room that a short code is to be expected.</summary>
    internal bool[] Small { get; }

    /// <summary>Family key of each part.</summary>
    internal string[] Families { get; }

    internal OutlineTable Outlines { get; }

    internal MarkIndex Marks { get; }

    /// <summary>Natural log of each part's prior.</summary>
    internal double[] LogPrior { get; }

    /// <summary>Natural log of the prior of "a part of this group that is not in the catalogue", per group.</summary>
    internal double[] NoneLogPrior { get; }

    /// <summary>Prior of all listed parts of each group together.</summary>
    internal double[] ListedMass { get; }

    /// <summary>Places of the parts that list each identity register, rising.</summary>
    internal Dictionary<int, int[]> ByRegister { get; }

    /// <summary>For each pin number as written: which part's which pin list has it, and whether it is ground there.</summary>
    internal Dictionary<string, (int Part, int List, bool Ground)[]> ByPin => pins.Value;

    /// <summary>How many parts of the catalogue share the family key.</summary>
    internal int FamilyMembers(string key) => familyMembers.GetValueOrDefault(key);

    /// <summary>
    /// A part whose supply or current somebody wrote down is one that wearables are made of; a bare row of a symbol library or a driver
    /// list is met less often. The factors are judgements, no source.
    /// </summary>
    private static double Standing(Part part) =>
        part.IdleCurrent is not null || part.ActiveCurrent is not null || part.SupplyMost is not null ? 4 : part.Marks.Count > 0 || part.Identity.Count > 0 ? 2 : 1;

    private static bool IsSmall(Part part) => part.Packages.Any(p => p.Family is "SOT" or "SC70" or "WLCSP" or "die" or "chip" || p.Pins <= 6 || p.LengthMm * p.WidthMm < 5);

    private double[] Priors(out double[] none)
    {
        var groups = ClassGroups.All;
        var all = groups.Sum(g => g.Share);
        var standing = new double[groups.Count];
        for (var i = 0; i < Parts.Count; i++) standing[GroupOf[i]] += Standing(Parts[i]);
        // Where the catalogue holds few parts of a kind, most of that kind's share is "none".
        var complete = groups.Select((g, i) => g.Complete * Math.Min(1, standing[i] / Thin)).ToArray();
        none = [.. groups.Select((g, i) => Elementary.Log(g.Share / all * (1 - complete[i])))];
        var log = new double[Parts.Count];
        for (var i = 0; i < Parts.Count; i++) log[i] = Elementary.Log(groups[GroupOf[i]].Share / all * complete[GroupOf[i]] * Standing(Parts[i]) / standing[GroupOf[i]]);
        return log;
    }
}
