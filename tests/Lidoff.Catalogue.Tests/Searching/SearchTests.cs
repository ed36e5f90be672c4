using CsCheck;
using Lidoff.Catalogue.Searching;

namespace Lidoff.Catalogue.Tests.Searching;

public sealed class SearchTests(IndexedCatalogue indexed) : IClassFixture<IndexedCatalogue>
{
    private readonly PartCatalogue catalogue = indexed.Parts;

    // The marks are those of the named packages: the maker prints N52832 on an nRF52832.
    [Theory]
    [InlineData("nRF52832", "nRF52832", SearchTier.Name)]
    [InlineData("nrf 52832", "nRF52832", SearchTier.Name)]
    [InlineData("nRF52832-QFAA", "nRF52832", SearchTier.Code)]
    [InlineData("nRF52832-Q", "nRF52832", SearchTier.Prefix)]
    [InlineData("N52832", "nRF52832", SearchTier.Code)]
    [InlineData("2832", "nRF52832", SearchTier.Infix)]
    [InlineData("n52832 qfaa", "nRF52832", SearchTier.Code)]
    [InlineData("nordic 52832", "nRF52832", SearchTier.Words)]
    [InlineData("nRF5283?", "nRF52832", SearchTier.Name)]
    [InlineData("?RF52*QFAB", "nRF52832", SearchTier.Code)]
    [InlineData("N52B32", "nRF52832", SearchTier.Alike)]
    [InlineData("N5Z83Z", "nRF52832", SearchTier.Alike)]
    [InlineData("nRF5Z83?", "nRF52832", SearchTier.Alike)]
    [InlineData("nRF52X32QFAA", "nRF52832", SearchTier.OneEdit)]
    [InlineData("nRF5232QFAA", "nRF52832", SearchTier.OneEdit)]
    [InlineData("nRF528832QFAA", "nRF52832", SearchTier.OneEdit)]
    public void A_part_is_found_by(string text, string name, SearchTier tier)
    {
        var found = catalogue.Search(text, int.MaxValue).Rows.Where(r => r.Part.Name == name).ToList();
        Assert.Equal(tier, Assert.Single(found).Tier);
    }

    [Fact]
    public void The_best_row_comes_first_and_the_total_counts_all()
    {
        var all = catalogue.Search("nRF52", int.MaxValue);
        var few = catalogue.Search("nRF52", 3);
        Assert.Equal(all.Rows.Count, all.Total);
        Assert.Equal(all.Total, few.Total);
        Assert.Equal(all.Rows.Take(3), few.Rows);
        Assert.Equal(all.Rows.Select(r => r.Tier).Order(), all.Rows.Select(r => r.Tier));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("---")]
    public void An_empty_text_finds_nothing(string text) => Assert.Equal(0, catalogue.Search(text, 10).Total);

    [Theory]
    [InlineData("\" OR names:\"")]
    [InlineData("names:nRF*")]
    [InlineData("NEAR(a b)")]
    [InlineData("'; DROP TABLE entry; --")]
    [InlineData("\0\u0001\ud83d\ude00")]
    [InlineData("????????")]
    public void Hostile_text_is_only_text(string text)
    {
        var result = catalogue.Search(text, 5);
        Assert.InRange(result.Rows.Count, 0, 5);
        Assert.Equal("nRF52832", catalogue.Search("nRF52832", 1).Rows[0].Part.Name);
    }

    [Fact]
    public void Text_of_any_length_is_cut_and_answered() =>
        Assert.InRange(catalogue.Search(new string('*', 100_000) + new string('A', 100_000), 5).Rows.Count, 0, 5);

    // The index only proposes; without it every part is looked at. Both must answer alike, whatever is typed.
    [Fact]
    public void With_and_without_the_index_the_answers_are_the_same()
    {
        var parts = Shipped.Parts.Parts;
        var text = Gen.Select(Gen.Int[0, parts.Count - 1], Gen.Int[0, 12], Gen.Int[1, 12], Gen.Int[0, 6], Gen.Char["AZ059?* -B8"]).Select((part, from, length, change, mark) =>
        {
            var name = parts[part].OrderCodes.Count > 0 && change == 5 ? parts[part].OrderCodes[0] : parts[part].Name;
            if (change == 6) name = parts[part].Maker + " " + name;
            var start = Math.Min(from, name.Length - 1);
            var piece = name.Substring(start, Math.Min(length, name.Length - start));
            return change switch
            {
                1 => piece.Insert(piece.Length / 2, mark.ToString()),
                2 => piece.Remove(piece.Length / 2, 1),
                3 => string.Concat(piece.AsSpan(0, piece.Length / 2), mark.ToString(), piece.AsSpan(piece.Length / 2 + 1)),
                _ => piece,
            };
        });
        text.Sample(
            t =>
            {
                var proposed = catalogue.Search(t, 50);
                var scanned = Shipped.Parts.Search(t, 50);
                return proposed.Total == scanned.Total
                    && proposed.Rows.Select(r => (r.Part.Name, r.Tier)).SequenceEqual(scanned.Rows.Select(r => (r.Part.Name, r.Tier)));
            },
            iter: 300);
    }
}
