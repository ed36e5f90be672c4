using Lidoff.Catalogue.Packages;

namespace Lidoff.Catalogue.Tests.Packages;

public sealed class PackageTableTests
{
    private static readonly PackageTable Table = PackageTable.Load().Value;

    // Outlines from outside the shipped tables: standard outlines and makers' package drawings, the source beside each row.
    [Theory]
    [InlineData("SOIC-8_3.9x4.9mm_P1.27mm", 8, 4.90, 3.90, 1.27)] // MS-012, a maker's package drawing
    [InlineData("SOIC-14_3.9x8.7mm_P1.27mm", 14, 8.65, 3.90, 1.27)] // MS-012, drawing C04-065 of one maker
    [InlineData("SOIC-16_3.9x9.9mm_P1.27mm", 16, 9.90, 3.90, 1.27)] // MS-012 AC, from memory
    [InlineData("SSOP-20_5.3x7.2mm_P0.65mm", 20, 7.20, 5.30, 0.65)] // MO-150, drawing C04-072 of one maker
    [InlineData("TSSOP-8_4.4x3mm_P0.65mm", 8, 4.40, 3.00, 0.65)] // MO-153, drawing C04-086 of one maker
    [InlineData("TSSOP-14_4.4x5mm_P0.65mm", 14, 5.00, 4.40, 0.65)] // MO-153, drawing C04-087 of one maker
    [InlineData("TSSOP-20_4.4x6.5mm_P0.65mm", 20, 6.50, 4.40, 0.65)] // MO-153, NXP SOT360-1
    [InlineData("TSSOP-28_4.4x9.7mm_P0.65mm", 28, 9.70, 4.40, 0.65)] // MO-153, NXP SOT361
    [InlineData("TSSOP-48_6.1x12.5mm_P0.5mm", 48, 12.5, 6.10, 0.50)] // MO-153 ED, NXP SOT362-1
    [InlineData("MSOP-8_3x3mm_P0.65mm", 8, 3.00, 3.00, 0.65)] // MO-187, from memory
    [InlineData("MSOP-10_3x3mm_P0.5mm", 10, 3.00, 3.00, 0.50)] // MO-187, from memory
    [InlineData("QFN-20-1EP_4x4mm_P0.5mm_EP2.7x2.7mm", 20, 4.00, 4.00, 0.50)] // MO-220, drawing C04-126 of one maker
    [InlineData("QFN-40-1EP_5x5mm_P0.4mm_EP3.6x3.6mm", 40, 5.00, 5.00, 0.40)] // drawing C04-425 of one maker
    [InlineData("QFN-64-1EP_9x9mm_P0.5mm_EP5.4x5.4mm", 64, 9.00, 9.00, 0.50)] // drawing C04-483 of one maker
    [InlineData("QFN-48-1EP_6x6mm_P0.4mm_EP4.6x4.6mm", 48, 6.00, 6.00, 0.40)] // MO-220, a maker's data sheet, read second-hand
    [InlineData("MO-153 AB-1", 14, 5.00, 4.40, 0.65)] // MO-153, drawing C04-087 of one maker
    [InlineData("MO-153 AC", 20, 6.50, 4.40, 0.65)] // MO-153, NXP SOT360-1
    [InlineData("MS-012 AA", 8, 4.90, 3.90, 1.27)] // MS-012 AA, TI D0008A: 4.81-5.00 x 3.81-3.98
    public void Named_outlines_agree_with_standards_and_drawings(string name, int pins, double length, double width, double pitch)
    {
        var outline = Table.Find(name);
        Assert.NotNull(outline);
        Assert.Equal(pins, outline.Pins);
        Assert.Equal(pitch, outline.PitchMm);
        Assert.InRange(outline.LengthMm, length - 0.051, length + 0.051);
        Assert.InRange(outline.WidthMm, width - 0.051, width + 0.051);
    }

    // Greatest heights: MS-012 1.75 (TI D0008A), MO-153 1.20 (drawings C04-086 and C04-087 of one maker).
    [Theory]
    [InlineData("MS-012 AA", 1.75)]
    [InlineData("MO-153 AA", 1.20)]
    [InlineData("MO-153 AB-1", 1.20)]
    public void Heights_of_outline_tables_are_the_greatest_allowed(string name, double height)
    {
        var outline = Table.Find(name)!;
        Assert.Equal("outline max", outline.HeightBasis);
        Assert.Equal(height, outline.HeightMm);
    }

    [Fact]
    public void Every_shipped_outline_is_there()
    {
        Assert.Equal(1587, Table.Outlines.Count);
        Assert.All(Table.Outlines, o => Assert.True(o.LengthMm >= o.WidthMm && o.WidthMm > 0, o.Name));
    }

    [Fact]
    public void Outline_tables_come_before_drawings()
    {
        var first = Table.Outlines.TakeWhile(o => o.HeightBasis == "outline max").Count();
        Assert.True(first > 0);
        Assert.DoesNotContain(Table.Outlines.Skip(first), o => o.HeightBasis == "outline max");
    }

    // MO-153 allows 4.3 to 4.5 by 4.9 to 5.1 for the fourteen-lead thin shrink package (drawing C04-087 of one maker).
    [Fact]
    public void A_measured_body_snaps_to_what_a_standard_allows()
    {
        var near = Table.Near(4.93, 4.46, 0.02, "TSSOP", 14);
        Assert.NotEmpty(near);
        Assert.True(near[0].HasRange);
        Assert.Equal("TSSOP", near[0].Family);
        Assert.Equal(near, Table.Near(4.46, 4.93, 0.02, "TSSOP", 14));
        Assert.DoesNotContain(Table.Near(5.6, 4.46, 0.02, "TSSOP", 14), o => o.LengthMm < 5.5);
    }
}
