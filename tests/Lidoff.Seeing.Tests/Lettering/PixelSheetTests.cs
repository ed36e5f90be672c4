using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Lettering;
using NetVips;

namespace Lidoff.Seeing.Tests.Lettering;

public sealed class PixelSheetTests
{
    [Fact]
    public void A_stroke_covers_as_much_as_a_round_pen_does()
    {
        var sheet = new PixelSheet(100, 60, 0x000000);
        sheet.Draw([new([new(20, 30), new(80, 30)])], 6, 0xFFFFFF);
        using var image = Image.NewFromBuffer(sheet.Png());
        // Geometry: a band 60 long and 6 wide with two half discs of radius 3.
        Assert.InRange(image[0].Avg() * 100 * 60 / 255, ((60 * 6) + (Math.PI * 9)) - 1, ((60 * 6) + (Math.PI * 9)) + 1);
        Assert.Equal([255.0, 255, 255], image.Getpoint(50, 30));
        Assert.Equal([0.0, 0, 0], image.Getpoint(50, 34));
    }

    [Fact]
    public void A_slanting_line_has_no_gaps_and_what_hangs_over_is_cut()
    {
        var sheet = new PixelSheet(50, 50, 0x102030);
        sheet.Draw([new([new(-20, -35), new(70, 85)])], 2, 0xFF8040);
        sheet.Fill(-5, -5, 10, 10, 0x0000FF);
        using var image = Image.NewFromBuffer(sheet.Png());
        Assert.Equal([0.0, 0, 255], image.Getpoint(2, 2));
        Assert.Equal([16.0, 32, 48], image.Getpoint(45, 5));
        for (var y = 6; y < 50; y++)
        {
            // The line is x = -20 + (y + 35) · 90 / 120.
            var x = -20 + ((y + 0.5 + 35) * 0.75);
            if (x is > 1 and < 49) Assert.InRange(image.Getpoint((int)x, y)[0], 200, 255);
        }
    }

    [Fact]
    public void Strokes_of_one_call_cover_once()
    {
        PicturePoint[] line = [new(10.5, 5.25), new(30.5, 5.25)];
        var (once, twice) = (new PixelSheet(40, 10, 0), new PixelSheet(40, 10, 0));
        once.Draw([new(line)], 1, 0xFFFFFF);
        twice.Draw([new(line), new(line)], 1, 0xFFFFFF);
        Assert.Equal(once.Png(), twice.Png());
    }
}
