using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Tests.Joining;

public sealed class KnownPartsTests
{
    // Its maker's product specification gives QFAA as QFN48, 6 x 6 mm, 0.4 mm pitch (from memory, not looked up here), and the
    // information register FICR.INFO.PART as 0x00052832 (the maker's header files, named in the row).
    [Fact]
    public void A_base_part_gathers_its_orderable_variants()
    {
        var part = Shipped.Parts.Find("nRF52832")!;
        Assert.Equal("nRF52832", part.Name);
        Assert.Equal("Nordic Semiconductor", part.Maker);
        Assert.Equal("radio SoC", part.Kind);
        Assert.Contains("nRF52832-QFAA", part.OrderCodes);
        Assert.Contains("nRF52832-CIAA", part.OrderCodes);
        var qfn = Assert.Single(part.Packages, p => p.Family == "QFN" && p.LengthMm is not null);
        Assert.Equal((48, 6.0, 6.0, 0.4), (qfn.Pins, qfn.LengthMm, qfn.WidthMm, qfn.PitchMm));
        Assert.Contains("nRF52832-QFAA", qfn.OrderCodes);
        Assert.Contains(part.Identity, i => i.Register == 0x10000100 && i.Value == 0x52832 && i.Confidence == Confidence.Published);
        Assert.Same(part, Shipped.Parts.Find("nrf52832 qfaa"));
    }

    // Different chips of one family must not melt: ESP32-C3 (RISC-V, QFN-32) is no variant of ESP32.
    [Theory]
    [InlineData("ESP32-C3", "ESP32-S3")]
    [InlineData("MPU6050", "MPU6500")]
    [InlineData("FT6336G", "FT6336U")]
    [InlineData("BAT54A", "BAT54C")]
    [InlineData("BQ25120", "BQ25120A")]
    public void Different_chips_stay_apart(string one, string other)
    {
        Assert.NotNull(Shipped.Parts.Find(one));
        Assert.NotNull(Shipped.Parts.Find(other));
        Assert.NotSame(Shipped.Parts.Find(one), Shipped.Parts.Find(other));
    }

    // JEDEC identifiers as the flash programmers' tables have them: maker 0xEF, then type and capacity.
    [Fact]
    public void A_flash_chip_has_its_jedec_identity()
    {
        var part = Shipped.Parts.Find("W25Q32JVSSIQ")!;
        Assert.Contains(part.Identity, i => i.Register == 0x9F && i.Value == 0xEF4016);
    }

    // UM10204 3.1.10: a bus address has seven bits.
    [Fact]
    public void All_addresses_have_seven_bits()
    {
        Assert.All(Shipped.Parts.Parts, p => Assert.All(p.BusAddresses.Concat(p.ExampleAddresses), a => Assert.InRange(a, 0, 0x7f)));
        Assert.True(Shipped.Parts.Parts.Count(p => p.BusAddresses.Count > 0) > 500);
    }

    [Fact]
    public void Parts_come_in_ordinal_order_and_once()
    {
        var names = Shipped.Parts.Parts.Select(p => p.Name).ToList();
        Assert.Equal(names.Order(StringComparer.Ordinal), names);
        Assert.Equal(names.Count, names.ToHashSet(StringComparer.Ordinal).Count);
    }

    // The table gives 0.7 µA for this charger's rest current (its maker's headline figure, a public page named in the row).
    [Fact]
    public void Currents_are_in_amperes() => Assert.Equal(0.7e-6, Shipped.Parts.Find("BQ25120")!.IdleCurrent);
}
