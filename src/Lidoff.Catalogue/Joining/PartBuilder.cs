using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Joining;

/// <summary>Melts the rows of a base part and its variants into one <see cref="Part"/>.</summary>
internal sealed class PartBuilder(RowGroup root, IReadOnlyList<RowGroup> members)
{
    private readonly IReadOnlyList<CatalogueRow> rows = [.. root.Rows, .. members.Where(m => m != root).SelectMany(m => m.Rows)];

    public Part Build()
    {
        var addresses = rows.SelectMany(r => r.Addresses).Distinct().Order().ToList();
        var (least, most) = Supply();
        return new Part
        {
            Name = root.Name,
            OrderCodes = Ordered(members.Where(m => m != root).Select(m => m.Name)),
            Maker = First(r => r.Maker),
            OtherMakers = Ordered(rows.Select(r => r.Maker).Concat(rows.Select(r => r.SecondSources)).Where(m => m != First(r => r.Maker))),
            Class = First(r => r.Class),
            Classes = Ordered(rows.Select(r => r.Class)),
            Kind = KindWords.Of(First(r => r.Class)),
            Packages = Packages(),
            Marks = Marks(),
            BusAddresses = [.. addresses],
            ExampleAddresses = [.. rows.SelectMany(r => r.ExampleAddresses).Distinct().Order().Except(addresses)],
            Identity = Identity(),
            Interface = First(r => r.Interface),
            PinLists = PinLists(),
            SupplyLeast = least,
            SupplyMost = most,
            IdleCurrent = Best(r => r.IdleCurrent),
            ActiveCurrent = Best(r => r.ActiveCurrent),
            Introduced = rows.Where(r => r.Introduced is not null).Select(r => r.Introduced).Min(),
            Price = First(r => r.Price),
            Confidence = rows.Count > 0 ? rows.Max(r => r.Confidence) : Confidence.Memory,
            Sources = Ordered(rows.Select(r => r.Source)),
            Rows = [.. rows.Select(r => r.Origin)],
        };
    }

    private string First(Func<CatalogueRow, string> pick) => rows.Select(pick).FirstOrDefault(w => w.Length > 0) ?? "";

    private double? Best(Func<CatalogueRow, double?> pick) =>
        rows.Where(r => pick(r) is not null).OrderByDescending(r => r.Confidence).Select(pick).FirstOrDefault();

    // The widest range among the most trusted rows: a narrower one may belong to another variant and would wrongly exclude.
    private (double? Least, double? Most) Supply()
    {
        var stated = rows.Where(r => r.SupplyLeast is not null || r.SupplyMost is not null).ToList();
        if (stated.Count == 0) return (null, null);
        var best = stated.Max(r => r.Confidence);
        var trusted = stated.Where(r => r.Confidence == best).ToList();
        return (trusted.Min(r => r.SupplyLeast), trusted.Max(r => r.SupplyMost));
    }

    private List<PackageFact> Packages()
    {
        var facts = new List<PackageFact>();
        foreach (var member in Members())
        {
            foreach (var fact in member.Rows.SelectMany(PackageFacts.Of))
                PackageFacts.Add(facts, member == root ? fact : fact with { OrderCodes = [member.Name] });
        }

        return facts;
    }

    private List<MarkPattern> Marks()
    {
        var marks = new List<MarkPattern>();
        foreach (var member in Members())
        {
            foreach (var row in member.Rows)
            {
                foreach (var pattern in row.Marks)
                {
                    string[] codes = member == root ? [] : [member.Name];
                    var at = marks.FindIndex(m => m.Pattern == pattern);
                    if (at < 0)
                    {
                        marks.Add(new MarkPattern(pattern, row.Confidence, row.Source) { OrderCodes = codes });
                        continue;
                    }

                    var known = marks[at];
                    var best = row.Confidence > known.Confidence ? new MarkPattern(pattern, row.Confidence, row.Source) : known;
                    marks[at] = best with { OrderCodes = Ordered(known.OrderCodes.Concat(codes)) };
                }
            }
        }

        return marks;
    }

    private List<IdentityRegister> Identity() =>
    [
        .. rows.Where(r => r.IdRegister is not null && r.IdValue is not null)
            .GroupBy(r => (Register: r.IdRegister!.Value, Value: r.IdValue!.Value, r.IdMask))
            .OrderBy(g => g.Key)
            .Select(g => new IdentityRegister(g.Key.Register, g.Key.Value, g.Max(r => r.Confidence)) { Mask = g.Key.IdMask }),
    ];

    private List<PinList> PinLists()
    {
        var lists = new List<PinList>();
        foreach (var member in Members())
        {
            foreach (var row in member.Rows.Where(r => r.Pinout.Count > 0))
            {
                string[] codes = member == root ? [] : [member.Name];
                var at = lists.FindIndex(l => l.Package == row.Package && l.Pins.SequenceEqual(row.Pinout));
                if (at < 0) lists.Add(new PinList(row.Package, codes, row.Pinout, row.Source));
                else lists[at] = lists[at] with { OrderCodes = Ordered(lists[at].OrderCodes.Concat(codes)) };
            }
        }

        return lists;
    }

    private IEnumerable<RowGroup> Members() => members.OrderBy(m => m == root ? 0 : 1).ThenBy(m => m.Fold, StringComparer.Ordinal);

    private static List<string> Ordered(IEnumerable<string> words) =>
        [.. words.Where(w => w.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
