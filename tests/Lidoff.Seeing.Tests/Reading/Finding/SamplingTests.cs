using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Tests.Reading.Finding;

public sealed class SamplingTests
{
    private static GreyPyramid Drawn(int width, int height, Func<double, double, double> grey, double left = 0, double top = 0, double step = 1)
    {
        var pixels = new float[width * height];
        for (var i = 0; i < pixels.Length; i++) pixels[i] = (float)grey((i % width) + 0.5, (i / width) + 0.5);
        return new(pixels, width, height, left, top, step);
    }

    [Fact]
    public void A_ramp_keeps_its_values_whatever_the_grid()
    {
        // A plane is its own average over any parallelogram: 0.1 + 0.001 x + 0.002 y.
        static double Ramp(double x, double y) => 0.1 + (0.001 * x) + (0.002 * y);
        var picture = Drawn(200, 160, Ramp);
        foreach (var (step, turn) in new[] { (0.4, 0.0), (1.0, 0.5), (3.7, 0.3), (9.0, 1.2) })
        {
            var (right, down) = ((step * Math.Cos(turn), step * Math.Sin(turn)), (-step * Math.Sin(turn), step * Math.Cos(turn)));
            var grid = picture.Sample(new(90, 60), right, down, 6, 5);
            for (var k = 0; k < grid.Length; k++)
            {
                var (i, j) = ((k % 6) + 0.5, (k / 6) + 0.5);
                Assert.Equal(Ramp(90 + (i * right.Item1) + (j * down.Item1), 60 + (i * right.Item2) + (j * down.Item2)), grid[k], 4);
            }
        }
    }

    [Fact]
    public void A_cubic_between_pixels_follows_a_parabola_and_a_straight_line_does_not()
    {
        // R. G. Keys, "Cubic convolution interpolation for digital image processing", IEEE Trans. ASSP 29 (1981): of third order, so that parabolas are met.
        static double Parabola(double x, double y) => 0.1 + (((x - 10) * (x - 10)) + (y * x)) / 800;
        var picture = Drawn(24, 20, Parabola);
        double Worst(bool cubic)
        {
            var grid = picture.Sample(new(6, 5), (0.3, 0.1), (-0.1, 0.3), 20, 18, cubic);
            return grid.Select((grey, k) => Math.Abs(grey - Parabola(6 + (0.3 * ((k % 20) + 0.5)) - (0.1 * ((k / 20) + 0.5)), 5 + (0.1 * ((k % 20) + 0.5)) + (0.3 * ((k / 20) + 0.5))))).Max();
        }

        Assert.InRange(Worst(cubic: true), 0, 1e-6);
        // Half way between two pixels a line misses a parabola by an eighth of its second difference.
        Assert.InRange(Worst(cubic: false), 0.9 * 2 / 800 / 8, 2.0 / 800 / 8 * 1.001);
    }

    [Fact]
    public void What_is_finer_than_the_grid_is_averaged_not_skipped()
    {
        // Stripes of one pixel, half of them white: from afar an even grey.
        var picture = Drawn(256, 256, (x, _) => (int)x % 2);
        Assert.All(picture.Sample(new(16, 16), (8, 0), (0, 8), 20, 20), grey => Assert.Equal(0.5, grey, 3));
        Assert.All(picture.Sample(new(64, 64), (5, 3), (-3, 5), 10, 10), grey => Assert.Equal(0.5, grey, 0.06));
    }

    [Fact]
    public void A_part_of_a_picture_answers_in_the_pictures_own_places()
    {
        // A part that begins at (100, 50), shrunk three times: its pixel (i, j) covers 3 × 3 px of the picture.
        var part = Drawn(40, 40, (x, y) => ((3 * x) + 100 + (3 * y) + 50) / 1000, 100, 50, 3);
        Assert.Equal((100, 50, 120, 120), part.Holds);
        Assert.Equal((130.0 + 80) / 1000, part.Sample(new(129, 79), (2, 0), (0, 2), 1, 1)[0], 5);
    }

    [Theory]
    [InlineData(640, 480, 0)]
    [InlineData(300, 700, 0.4)]
    [InlineData(384, 384, 0)]
    [InlineData(100, 21, -2)]
    public void The_finders_sheet_is_normalised_padded_and_leads_back(double width, double height, double turn)
    {
        var picture = Drawn(900, 900, (x, y) => 0.5 + (0.3 * Math.Sin(x / 9) * Math.Cos(y / 7)));
        var region = new PictureRegion(new(450, 450), width, height, turn);
        var sheet = FinderSheet.Of(picture, region);
        Assert.Equal(384, Math.Max(sheet.ValidWidth, sheet.ValidHeight));
        Assert.Equal((0, 0), (sheet.Width % 32, sheet.Height % 32));
        Assert.InRange(sheet.Width - sheet.ValidWidth, 0, 31);
        Assert.InRange(sheet.Height - sheet.ValidHeight, 0, 31);
        var valid = Enumerable.Range(0, sheet.ValidHeight).SelectMany(y => sheet.Pixels.Skip(y * sheet.Width).Take(sheet.ValidWidth)).ToList();
        Assert.Equal(0, valid.Average(), 4);
        Assert.Equal(1, Math.Sqrt(valid.Average(each => each * each)), 0.02);
        Assert.Equal(sheet.Pixels.Count(each => each != 0), valid.Count(each => each != 0));
        // Corner to corner, and a rectangle on the sheet to the one it covers.
        Assert.InRange(sheet.ToPicture(0, 0).DistanceTo(region.Corners[0]), 0, 1e-9);
        Assert.InRange(sheet.ToPicture(sheet.ValidWidth, sheet.ValidHeight).DistanceTo(region.Corners[2]), 0, 1e-9);
        var there = sheet.ToPicture(new PictureRegion(new(sheet.ValidWidth / 2.0, sheet.ValidHeight / 2.0), 40, 20, 0.25));
        Assert.InRange(there.Middle.DistanceTo(new(450, 450)), 0, 1e-9);
        Assert.Equal(40 * sheet.Step, there.Width, 9);
        Assert.Equal(0, Math.IEEERemainder(there.Turn - turn - 0.25, 2 * Math.PI), 9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(222)]
    public void A_line_is_straightened_so_that_its_text_runs_to_the_right(double degrees)
    {
        // A line 200 × 40 whose first quarter is bright and whose upper half is a little brighter than its lower one.
        var outline = new PictureRegion(new(300, 300), 200, 40, degrees * Math.PI / 180);
        var picture = Drawn(600, 600, (x, y) => outline.Inside(new(x, y)) is var (u, v) && Math.Abs(u) <= 110 && Math.Abs(v) <= 30 ? (u < -50 ? 0.8 : 0.2) + (v < 0 ? 0.1 : 0) : 0.2);
        var strip = LineStrip.Of(picture, outline);
        // Grown by 0.11 of the height on every side: 208.8 × 48.8 → 48 rows, 205.4 columns.
        Assert.Equal(205, strip.ValidWidth, 1.0);
        Assert.Equal(224, strip.Width);
        double At(double x, double y) => strip.Pixels[((int)(y * LineStrip.Rows) * strip.Width) + (int)(x * strip.ValidWidth)];
        Assert.True(At(0.1, 0.25) > At(0.1, 0.75) && At(0.1, 0.75) > At(0.5, 0.25) && At(0.5, 0.25) > At(0.5, 0.75));
        Assert.Equal(At(0.5, 0.25), At(0.9, 0.25), 2);
        Assert.Equal(0, strip.Pixels.Sum(), 0.5);
    }

    [Fact]
    public void Widths_are_those_the_reader_was_trained_on_and_a_very_long_line_is_squeezed()
    {
        var picture = Drawn(1000, 100, (x, y) => Math.Sin(x * y));
        Assert.Equal((64, 48), LineStrip.Of(picture, PictureRegion.Box(100, 20, 40, 40)) is var small ? (small.Width, small.ValidWidth) : default);
        var far = LineStrip.Of(picture, PictureRegion.Box(0, 40, 1000, 20));
        Assert.Equal((480, 480), (far.Width, far.ValidWidth));
        Assert.All(LineStrip.Widths, width => Assert.True(width % 32 == 0 && width is >= 64 and <= 480));
    }

    [Fact]
    public void Corners_go_clockwise_from_the_texts_own_top_left()
    {
        // Text upside down in the picture: its own top left is the picture's bottom right.
        var corners = new PictureRegion(new(50, 50), 40, 10, Math.PI).Corners;
        Assert.InRange(corners[0].DistanceTo(new(70, 55)), 0, 1e-9);
        Assert.InRange(corners[1].DistanceTo(new(30, 55)), 0, 1e-9);
        Assert.InRange(corners[2].DistanceTo(new(30, 45)), 0, 1e-9);
        // Running down (90° clockwise): top left is the picture's top right.
        Assert.InRange(new PictureRegion(new(50, 50), 40, 10, Math.PI / 2).Corners[0].DistanceTo(new(55, 30)), 0, 1e-9);
    }
}
