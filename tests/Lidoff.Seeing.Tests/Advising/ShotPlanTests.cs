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

    // Depths of field that makers of microscopes print for λ = 0.55 µm, wave term alone (from memory): 4×/0.10 55.5 µm, 10×/0.25 8.5 µm,
    // 40×/0.65 1.0 µm. The sensor's term is kept small here.
    [Theory]
    [InlineData(0.10, 4, 55.5)]
    [InlineData(0.25, 10, 8.5)]
    [InlineData(0.65, 40, 1.0)]
    public void The_sharp_depth_is_that_of_microscopes(double aperture, double magnification, double printedUm) =>
        Assert.InRange(ShotPlan.Depth(aperture, magnification, 0.001) / printedUm, 0.9, 1.5);

    // What photographers find: close-ups on sensors of 4 µm lose detail beyond f/8 or so, on phone sensors of 1.5 µm from f/2 to f/3 (common practice, no source).
    [Theory]
    [InlineData(4, 3.5, 8)]
    [InlineData(1.5, 1.5, 3)]
    public void The_aperture_is_where_diffraction_begins_to_cost(double pixelUm, double widest, double closest) =>
        Assert.InRange(ShotPlan.Of(Bench with { PixelUm = pixelUm }).Value.FNumber, widest, closest);

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
