using Lidoff.Catalogue.Searching;

namespace Lidoff.Catalogue.Tests.Searching;

public sealed class LookupTests
{
    private static readonly PartLookups Lookups = Shipped.Parts.Lookups;

    // 0x68/0x75 -> 0x68: the Linux driver inv_mpu6050 (its table of who-am-i values), named in the row.
    [Fact]
    public void By_identity_and_address()
    {
        Assert.Contains(Lookups.ByIdentity(0x75, 0x68), p => p.Name is "MPU-6050" or "MPU6050");
        Assert.Contains(Lookups.ByAddress(0x68), p => p.Name is "MPU-6050" or "MPU6050");
        Assert.Empty(Lookups.ByAddress(0x80));
        Assert.Empty(Lookups.ByIdentity(0x7777, 1));
    }

    // SHTC3: identity register 0xEFC8 reads 0x0807 in the bits of mask 0x083F (its maker's data sheet, from memory); the rest is free.
    [Fact]
    public void Only_the_bits_that_count_are_compared()
    {
        Assert.Contains(Lookups.ByIdentity(0xEFC8, 0x8887), p => p.Name == "SHTC3");
        Assert.DoesNotContain(Lookups.ByIdentity(0xEFC8, 0x0806), p => p.Name == "SHTC3");
    }

    [Fact]
    public void By_package_in_either_orientation_and_unknown_excludes_nobody()
    {
        var found = Lookups.ByPackage("QFN", 6.02, 5.99, 48, 0.06);
        Assert.Contains(found, x => x.Part.Name == "nRF52832");
        Assert.DoesNotContain(found, x => x.Package.Pins is not null && x.Package.Pins != 48);
        Assert.Equal(Lookups.ByPackage("SOIC", 4.9, 3.9, 8, 0.1).Count, Lookups.ByPackage("SOIC", 3.9, 4.9, 8, 0.1).Count);
    }

    [Fact]
    public void By_mark_with_an_unreadable_sign()
    {
        var found = Lookups.ByMark(["N52?32", "QFAA?0"], 200);
        Assert.Contains(found, p => p.Name == "nRF52832");
        Assert.Equal(found, Lookups.ByMark(["N52?32", "QFAA?0"], 200));
        Assert.Empty(Lookups.ByMark([], 10));
        Assert.Empty(Lookups.ByMark(["", "?"], 10));
    }

    // 2N7002 in SOT-23 is printed "702" by onsemi (a maker's marking list, quoted; a short code, so it is met whole).
    [Fact]
    public void A_short_code_is_met_whole()
    {
        var mark = Shipped.Parts.Find("2N7002")!.Marks[0].Pattern.Replace("*", "", StringComparison.Ordinal).Replace('?', 'A');
        Assert.Contains(Lookups.ByMark([mark], 500), p => p.Name.StartsWith("2N7002", StringComparison.Ordinal));
    }
}
