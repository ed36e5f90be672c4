using Lidoff.Catalogue.Parts;

namespace Lidoff.Naming.Knowing;

/// <summary>Every distinct outline of the catalogue once, with how many parts come in it; parts point at rows of it.</summary>
internal sealed class OutlineTable
{
    internal OutlineTable(IReadOnlyList<Part> parts)
    {
        var distinct = parts.SelectMany(p => p.Packages).Select(Plain).Distinct()
            .OrderBy(p => p.Family, StringComparer.Ordinal).ThenBy(p => p.LengthMm).ThenBy(p => p.WidthMm).ThenBy(p => p.HeightMm).ThenBy(p => p.PitchMm).ThenBy(p => p.Pins).ToArray();
        var place = new Dictionary<PackageFact, int>();
        for (var i = 0; i < distinct.Length; i++) place[distinct[i]] = i;
        Outlines = distinct;
        OfPart = [.. parts.Select(p => p.Packages.Select(Plain).Distinct().Select(o => place[o]).Order().ToArray())];
        var sets = new Dictionary<string, int>(StringComparer.Ordinal);
        var rowSets = new List<int[]>();
        SetOfPart = new int[OfPart.Length];
        for (var i = 0; i < OfPart.Length; i++)
        {
            var key = string.Join(',', OfPart[i]);
            if (!sets.TryGetValue(key, out var set))
            {
                sets[key] = set = rowSets.Count;
                rowSets.Add(OfPart[i]);
            }
            SetOfPart[i] = set;
        }
        Sets = [.. rowSets];
        var counts = new double[distinct.Length];
        foreach (var rows in OfPart)
        {
            foreach (var row in rows) counts[row] += 1.0 / rows.Length;
        }
        Counts = counts;
    }

    internal PackageFact[] Outlines { get; }

    /// <summary>Rows of each part's outlines, rising.</summary>
    internal int[][] OfPart { get; }

    /// <summary>Every distinct set of outlines once, and for each part which one it has: many parts share theirs.</summary>
    internal int[][] Sets { get; }

    /// <summary>Place in <see cref="Sets"/> of each part.</summary>
    internal int[] SetOfPart { get; }

    /// <summary>Parts per outline; a part with several counts once.</summary>
    internal double[] Counts { get; }

    /// <summary>The sizes alone, sides in order: whose name or row it was does not matter here.</summary>
    internal static PackageFact Plain(PackageFact fact)
    {
        var (length, width) = fact.LengthMm is { } l && fact.WidthMm is { } w && w > l ? (fact.WidthMm, fact.LengthMm) : (fact.LengthMm, fact.WidthMm);
        return new PackageFact("", fact.Family, length, width, fact.HeightMm, fact.PitchMm, fact.Pins);
    }
}
