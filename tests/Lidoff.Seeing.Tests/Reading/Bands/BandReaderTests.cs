using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Bands;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Rendering;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Reading.Bands;

/// <summary>Bands of rendered parts with known truth, by a reader that knows neither their pigments nor their light.</summary>
public sealed class BandReaderTests
{
    // 400 more of these parts: docs/design.md has the figures.
    [Fact]
    public void Bands_are_read_in_warm_and_cold_light_at_any_turn_and_odds_can_be_believed()
    {
        var (right, five, said) = (0, 0, 0.0);
        const int parts = 16;
        for (var seed = 201; seed < 201 + parts; seed++)
        {
            var part = new RenderedAxial(seed);
            if (!BandReader.Read(part.Picture, "part", part.Box).TryValue(out var seen)) continue;
            var at = seen.Odds.Readings.ToList().FindIndex(each => each.Reading.Unit == Units.Ohm && Math.Abs((each.Reading.Si / part.Ohms) - 1) < 1e-6);
            right += at == 0 ? 1 : 0;
            five += at is >= 0 and < 5 ? 1 : 0;
            said += seen.Odds.Readings.Count > 0 ? seen.Odds.Readings[0].P : 0;
            Assert.InRange(seen.Odds.Readings.Sum(each => each.P) + seen.Odds.NoneP, 1 - 1e-9, 1 + 1e-9);
        }

        // 0.93 and 0.99 of 150 others; chance takes 16 of them below these once in a hundred.
        Assert.True(right >= 12, $"{right} right of {parts}");
        Assert.True(five >= 14, $"{five} in the first five of {parts}");
        Assert.InRange(said / parts, 0.7, 0.99);
    }

    [Fact]
    public void A_plain_part_is_found_with_each_band_where_it_lies()
    {
        var part = new RenderedAxial(3, hard: false);
        var seen = BandReader.Read(part.Picture, "part", part.Box).Value;
        Assert.InRange(seen.Body.Middle.DistanceTo(part.Body.Middle), 0, 5);
        Assert.Equal(part.Body.Width, seen.Body.Width, 10.0);
        Assert.Equal(0, Math.Sin(seen.Body.Turn - part.Body.Turn), 0.05);
        var likeliest = seen.Bands.Select(band => band.Colours.Likeliest).ToList();
        Assert.Contains(string.Join(' ', part.Colours), new[] { string.Join(' ', likeliest), string.Join(' ', likeliest.AsEnumerable().Reverse()) });
        Assert.Equal(part.Ohms, seen.Odds.Readings[0].Reading.Si, 1e-6 * part.Ohms);
        // The body given by a box along it is read as well.
        var boxed = BandReader.Read(part.Picture, "part", part.Body).Value;
        Assert.Equal(part.Ohms, boxed.Odds.Readings[0].Reading.Si, 1e-6 * part.Ohms);
    }

    [Fact]
    public void What_cannot_be_read_says_why()
    {
        string Say(byte[] pixels, int channels, int width, int height) => BandReader.Read(new ColourPyramid(pixels, channels, width, height), "x.png", PictureRegion.Box(0, 0, width, height)).Faults[0].Say;
        Assert.Equal("x.png has no colours: bands cannot be told apart in it.", Say(new byte[100 * 50], 1, 100, 50));
        Assert.Equal("No colour bands were found in x.png. Give a box around one part, with its body along the longer side or with a little of an even ground around it.", Say(new byte[100 * 50 * 3], 3, 100, 50));
        Assert.Equal("x.png: the body is 30 px long, too few to tell its bands; 40 are the least, 100 are better.", Say(new byte[30 * 20 * 3], 3, 30, 20));
        // Nine stripes.
        var stripes = new byte[180 * 60 * 3];
        for (var i = 0; i < 180 * 60; i++) for (var c = 0; c < 3; c++) stripes[(3 * i) + c] = (byte)(i % 180 % 20 is >= 8 and < 14 ? 30 : 190);
        Assert.Equal("9 bands were found in x.png, more than any code has: give a box around one part alone.", Say(stripes, 3, 180, 60));
    }

    // Black, white and mid grey of sRGB under D65 are L* 0, 100 and 53.6 without colour; its red is 53.2, 80.1, 67.2 (computed values as published for
    // IEC 61966-2-1 and CIE 15, read in many places).
    [Fact]
    public void Colours_are_those_of_cielab()
    {
        static (double, double, double) Lab(byte r, byte g, byte b) => new LinearRgb(LinearRgb.OfStep(r), LinearRgb.OfStep(g), LinearRgb.OfStep(b)).Lab() is var lab ? (Math.Round(lab.L), Math.Round(lab.A), Math.Round(lab.B)) : default;
        Assert.Equal((100, 0, 0), Lab(255, 255, 255));
        Assert.Equal((54, 0, 0), Lab(128, 128, 128));
        Assert.Equal((53, 80, 67), Lab(255, 0, 0));
        Assert.Equal((32, 79, -108), Lab(0, 0, 255));
    }

    [Fact]
    public void A_file_is_read_as_the_picture_in_it()
    {
        using var folder = new TempFolder();
        var part = new RenderedAxial(3, hard: false);
        using (var file = File.Create(folder["part.png"])) PngFile.Write(file, RenderedAxial.Width, RenderedAxial.Height, part.Pixels, 1, "");
        var header = PictureFile.Read(folder["part.png"], "part.png").Value;
        Assert.Equal(BandReader.Read(part.Picture, "part.png", part.Box).Value.Odds.Readings[0].ToString(), BandReader.Read(folder["part.png"], "part.png", header).Value.Odds.Readings[0].ToString());
        Assert.StartsWith("part.png: the box lies outside", BandReader.Read(folder["part.png"], "part.png", header, PictureRegion.Box(5000, 5000, 50, 50)).Faults[0].Say, StringComparison.Ordinal);
    }
}
