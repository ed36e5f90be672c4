namespace Lidoff.Catalogue.Tests;

public sealed class StatsTests
{
    [Fact]
    public void Counts_add_up_and_are_ordered()
    {
        var stats = Shipped.Parts.Stats;
        Assert.Equal(Shipped.Parts.Parts.Count, stats.Parts);
        Assert.Equal(1815 + 5542 + 641 + 2373, stats.Rows);
        foreach (var counts in new[] { stats.ByKind, stats.ByClass, stats.ByMaker, stats.ByConfidence })
        {
            Assert.Equal(stats.Parts, counts.Sum(c => c.Value));
            Assert.Equal(counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key, StringComparer.Ordinal), counts);
        }

        Assert.Equal(["derived", "memory", "published"], stats.ByConfidence.Select(c => c.Key).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Filled_columns_are_columns_of_the_contract_and_prices_are_not_shipped()
    {
        var filled = Shipped.Parts.Stats.Filled;
        Assert.Subset(Catalogue.Tables.Columns.Contract.ToHashSet(), filled.Select(f => f.Key).ToHashSet());
        Assert.Equal(0, filled.Single(f => f.Key == "price").Value);
        Assert.All(filled.Where(f => f.Key != "price"), f => Assert.True(f.Value > 0, f.Key));
    }
}
