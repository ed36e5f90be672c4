using Lidoff.Catalogue.Packages;

namespace Lidoff.Catalogue.Tests.Packages;

public sealed class PackageNameTests
{
    // Names as data sheets and drawing libraries write them; what they mean is common practice, no source, but for the
    // bodies that the name itself states. SOT-23 (TO-236): three leads; SOT-363 (SC-88): six; SC-70-5 (MO-203): five.
    [Theory]
    [InlineData("QFN-48-1EP_6x6mm_P0.4mm_EP4.6x4.6mm", "QFN", 48, 6.0, 6.0, 0.4)]
    [InlineData("TSSOP-16-1EP_4.4x5mm_P0.65mm_EP3x3mm", "TSSOP", 16, 5.0, 4.4, 0.65)]
    [InlineData("SOIC-8_3.9x4.9mm_P1.27mm", "SOIC", 8, 4.9, 3.9, 1.27)]
    [InlineData("Texas_DSBGA-9_1.4715x1.4715mm_Layout3x3_P0.5mm", "WLCSP", 9, 1.4715, 1.4715, 0.5)]
    [InlineData("AMS_LGA-20_4.7x4.5mm_P0.65mm", "LGA", 20, 4.7, 4.5, 0.65)]
    [InlineData("QFN-20 3x3 p0.4", "QFN", 20, 3.0, 3.0, 0.4)]
    [InlineData("VSSOP-8 2.3x2 (DCU)", "TSSOP", 8, 2.3, 2.0, null)]
    [InlineData("SOT-23", "SOT", 3, null, null, null)]
    [InlineData("SOT-23-5 (DBV)", "SOT", 5, null, null, null)]
    [InlineData("TSOT-23-6", "SOT", 6, null, null, null)]
    [InlineData("SC-70-5 (DCK)", "SC70", 5, null, null, null)]
    [InlineData("SOT-363", "SC70", 6, null, null, null)]
    [InlineData("SOD-123", "", 2, null, null, null)]
    [InlineData("X2SON-4 1x1 (DQN)", "DFN", 4, 1.0, 1.0, null)]
    [InlineData("WSON-8", "DFN", 8, null, null, null)]
    [InlineData("LFCSP-28", "QFN", 28, null, null, null)]
    [InlineData("aQFN-73", "QFN", 73, null, null, null)]
    [InlineData("LQFP-48", "QFP", 48, null, null, null)]
    [InlineData("VFBGA-90", "BGA", 90, null, null, null)]
    [InlineData("WLBGA", "WLCSP", null, null, null, null)]
    [InlineData("SOIC-16W", "SOIC", 16, null, null, null)]
    [InlineData("COG die", "die", null, null, null, null)]
    [InlineData("0402", "chip", 2, 1.0, 0.5, null)]
    [InlineData("R_0201_0603Metric", "chip", 2, 0.6, 0.3, null)]
    [InlineData("CL-2025", "", null, null, null, null)]
    [InlineData("", "", null, null, null, null)]
    public void A_name_tells_family_pins_body_and_pitch(string name, string family, int? pins, double? length, double? width, double? pitch)
    {
        var read = PackageName.Read(name);
        Assert.Equal((family, pins, length, width, pitch), (read.Family, read.Pins, read.LengthMm, read.WidthMm, read.PitchMm));
    }

    [Theory]
    [InlineData("SOP-8 or MSOP-8", new[] { "SOP-8", "MSOP-8" })]
    [InlineData("TSSOP-8 / SOT-23-6", new[] { "TSSOP-8", "SOT-23-6" })]
    [InlineData("QFN/aQFN/WLCSP", new[] { "QFN", "aQFN", "WLCSP" })]
    [InlineData("SOT-23-5/6 (DBV)", new[] { "SOT-23-5/6 (DBV)" })]
    [InlineData("", new string[0])]
    public void Alternatives_come_apart(string text, string[] expected) => Assert.Equal(expected, PackageName.Alternatives(text));

    [Fact]
    public void Every_family_that_the_catalogue_uses_is_a_word_of_the_contract()
    {
        var used = Shipped.Parts.Parts.SelectMany(p => p.Packages).Select(f => f.Family).Where(f => f.Length > 0).Distinct();
        Assert.Subset(PackageFamily.Words.ToHashSet(), used.ToHashSet());
    }

    [Fact]
    public void Most_named_packages_have_a_family()
    {
        var named = Shipped.Parts.Parts.SelectMany(p => p.Packages).Where(f => f.Name.Length > 0).ToList();
        Assert.True(named.Count(f => f.Family.Length > 0) > named.Count * 85 / 100);
    }
}
