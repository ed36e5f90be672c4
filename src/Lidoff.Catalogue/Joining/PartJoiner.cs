using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Joining;

/// <summary>
/// Joins rows of all tables into parts, one a base part. Rows come in table order (shipped ones first, then imports in fold
/// order), and that order alone decides spellings and ties; facts that disagree stay side by side.
/// </summary>
public static class PartJoiner
{
    /// <summary>Joins; the parts come in ordinal order of their names.</summary>
    public static IReadOnlyList<Part> Join(IEnumerable<CatalogueRow> rows)
    {
        var groups = new SortedDictionary<string, RowGroup>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var fold = PartFold.Of(row.Part);
            if (!groups.TryGetValue(fold, out var group)) groups.Add(fold, group = new RowGroup(fold, row.Part));
            group.Rows.Add(row);
        }

        OrderVariants.Link(groups);
        var families = new Dictionary<RowGroup, List<RowGroup>>();
        foreach (var group in groups.Values)
        {
            var root = group.Root();
            if (!families.TryGetValue(root, out var members)) families.Add(root, members = []);
            members.Add(group);
        }

        return [.. families.Select(f => new PartBuilder(f.Key, f.Value).Build()).OrderBy(p => p.Name, StringComparer.Ordinal)];
    }
}
