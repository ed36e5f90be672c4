using Lidoff.Seeing.Advising;

namespace Lidoff.Seeing.Tests.Advising;

public sealed class ShotPlanTests
{
    private static readonly ShotAsk Bench = new(0.3, 40, 4000, 4, 1.2, 150);

    // Worked by hand: 15 px on a 0.3 mm letter are 50 px/mm; 4000 px show 80 mm of it, so 40 mm fit and are shot at 100 px/mm.
    [Fact]
    public void One_frame_that_is_fine_enough_is_filled()
    {
        var plan = ShotPlan.Of(Bench).Value;
        Assert.Equal((50.0, 1, 100.0), (Math.Round(plan.NeedPxPerMm, 9), plan.FramesAlong, plan.PxPerMm));
        // 100 px of 4 µm a millimetre: 0.4 times life size.
        Assert.Equal(0.4, plan.Magnification, 9);
        // 1.2 mm nearer to a lens 150 mm away: 1.2 / 148.8.
        Assert.Equal(0.00806, plan.HeightError, 5);
    }

    // 40 mm at 50 px/mm are 2000 px. A camera of 1000 px, a quarter overlapping, adds 750 px a frame: 1000, 1750, 2500: three.
    [Fact]
    public void What_does_not_fit_is_shot_in_overlapping_frames()
    {
        var plan = ShotPlan.Of(Bench with { CameraPx = 1000 }).Value;
        Assert.Equal((3, 50.0, 20.0), (plan.FramesAlong, Math.Round(plan.PxPerMm, 9), Math.Round(plan.FrameMm, 9)));
    }

    // Total depths that photographers of the small go by, green light of 0.55 µm, µm (R. Littlefield, photomacrography.net, viewtopic 22855: a
    // table of eighteen apertures; read). The sensor has no pixels here.
    [Theory]
    [InlineData(0.10, 55.0)]
    [InlineData(0.14, 28.1)]
    [InlineData(0.20, 13.8)]
    [InlineData(0.28, 7.02)]
    [InlineData(0.42, 3.12)]
    [InlineData(0.70, 1.12)]
    public void The_wave_s_depth_is_that_of_the_published_table(double aperture, double printedUm) =>
        Assert.InRange(ShotPlan.Depth(aperture, 10, 0) / printedUm, 0.995, 1.005);

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.1)]
    public void At_either_end_of_the_wave_s_depth_a_perfect_lens_keeps_four_fifths_of_its_brightest_point(double aperture)
    {
        // The light on the axis, summed over the pupil ring by ring: out of focus by z the rim lags by z·A²/2. Four fifths is Maréchal's limit of a
        // good picture (Born and Wolf, 9.3).
        var z = ShotPlan.Depth(aperture, 10, 0) / 2;
        var (real, imaginary) = (0.0, 0.0);
        const int rings = 2000;
        for (var i = 0; i < rings; i++)
        {
            var square = (i + 0.5) / rings;
            var phase = 2 * Math.PI / 0.55 * z * aperture * aperture / 2 * square;
            (real, imaginary) = (real + (Math.Cos(phase) / rings), imaginary + (Math.Sin(phase) / rings));
        }

        Assert.InRange((real * real) + (imaginary * imaginary), 0.80, 0.82);
    }

    [Theory]
    [InlineData(0.4, 4.0, 50)]
    [InlineData(1.0, 4.0, 60)]
    [InlineData(3.0, 2.5, 65)]
    public void At_either_end_of_the_sensor_s_depth_a_point_is_one_pixel_wide(double m, double pixelUm, double focalMm)
    {
        // Rays through a thin lens: 1/u + 1/v = 1/f; a point out of focus makes a disc on the sensor as wide as its cone is there.
        const double fNumber = 4;
        var aperture = m / (2 * fNumber * (1 + m));
        var depthMm = (ShotPlan.Depth(aperture, m, pixelUm) - ShotPlan.Depth(aperture, m, 0)) / 1000;
        var (u, v, opening) = (focalMm * (1 + (1 / m)), focalMm * (1 + m), focalMm / fNumber);
        foreach (var off in new[] { -depthMm / 2, depthMm / 2 })
        {
            var behind = 1 / ((1 / focalMm) - (1 / (u + off)));
            Assert.InRange(1000 * opening * Math.Abs(v - behind) / behind / pixelUm, 0.97, 1.03);
        }
    }

    [Fact]
    public void At_the_advised_aperture_the_first_dark_ring_of_a_point_is_two_pixels_wide()
    {
        // The light beside the axis, summed over the pupil strip by strip: strips across the direction looked in are 2·√(1 − x²) long. It is nought
        // at one pixel from the middle and nowhere nearer.
        var plan = ShotPlan.Of(Bench).Value;
        var seen = plan.FNumber * (1 + plan.Magnification);
        double Light(double um)
        {
            var sum = 0.0;
            const int strips = 4000;
            for (var i = 0; i < strips; i++)
            {
                var x = (((i + 0.5) / strips) * 2) - 1;
                sum += Math.Sqrt(1 - (x * x)) * Math.Cos(Math.PI / 0.55 / seen * um * x) * 2 / strips;
            }

            return sum / (Math.PI / 2);
        }

        Assert.Equal(1, Light(0), 4);
        Assert.InRange(Light(4), -0.002, 0.002);
        for (var um = 0.0; um < 3.9; um += 0.1) Assert.True(Light(um) > 0.005);
    }

    // A camera of 4.6 µm a pixel, λ 0.55 µm, far away: N < 0.82·p/λ = 6.9 (forum.luminous-landscape.com, topic 132459, by two pixels to the Airy
    // disc; read). Here 2 px/mm, so at 0.0092 times life size: 6.8 as marked.
    [Fact]
    public void Far_away_the_aperture_is_the_published_one() =>
        Assert.Equal(6.8, ShotPlan.Of(new(10, 2000, 4000, 4.6, 0, 3000)).Value.FNumber, 0.05);

    [Fact]
    public void Slices_reach_from_the_board_to_the_tallest_top_and_none_is_needed_within_the_sharp_depth()
    {
        var plan = ShotPlan.Of(Bench).Value;
        Assert.InRange((plan.Slices - 1) * plan.StepMm, 1.2, 1.2 + plan.StepMm);
        Assert.True(plan.StepMm < plan.DepthMm);
        Assert.Equal(1, ShotPlan.Of(Bench with { ReliefMm = 0 }).Value.Slices);
    }

    [Fact]
    public void What_no_bench_has_gets_a_sentence_each_and_all_at_once()
    {
        var faults = ShotPlan.Of(new(0, -1, 4000, double.NaN, 1, 150)).Faults;
        Assert.Equal(["letter", "field", "pixel"], faults.Select(fault => fault.Where));
        Assert.Equal("“letter” is 0 mm; it should be 0.02 to 50 mm.", faults[0].Say);
        Assert.Equal("The tallest part is 160 mm high and the lens 150 mm above the board: they would touch.", ShotPlan.Of(Bench with { ReliefMm = 160 }).Faults[0].Say);
    }
}
