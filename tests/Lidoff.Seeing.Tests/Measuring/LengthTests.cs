using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

public sealed class LengthTests
{
    [Fact]
    public void A_ruler_of_1000_px_for_50_mm_makes_600_px_30_mm_with_the_clicks_spread_worked_by_hand()
    {
        // 20 px/mm. Relative variances: reference clicks 2/1000², its length (0.1/50)², target clicks 2/600².
        // sqrt(2e-6 + 4e-6 + 5.5556e-6) = 0.339935 %; times 30 mm = 0.10198 mm. The camera adds what the two rows, 10 px apart, do not share: little.
        var length = Measured.One([Measured.Reference(100, 500, 1100, 500, 50, 0.1)], new("t", new(300, 510), new(900, 510)));
        Assert.Equal(30, length.ValueMm, 0.003);
        Assert.InRange(length.UMm, 0.1019, 0.106);
        Assert.Equal(2 * 1.645 * length.UMm, length.HighMm - length.LowMm, 0.005);
        Assert.Empty(length.Warnings);
    }

    [Fact]
    public void A_known_length_clicked_from_afar_carries_its_own_doubt_into_what_is_measured_from_near()
    {
        // Reference ends to 7 px: relative variance 2·7²/1000² = 9.8e-5; target clicks 2/600² = 5.5556e-6; together 1.0176 %, times 30 mm = 0.30528 mm.
        var reference = Measured.Reference(100, 500, 1100, 500, 50) with { ClickPx = 7 };
        var length = Measured.One([reference], new("t", new(300, 510), new(900, 510)));
        Assert.InRange(length.UMm, 0.3052, 0.3085);
    }

    [Fact]
    public void Without_any_error_the_length_is_exact()
    {
        var length = Measured.One([Measured.Reference(100, 500, 1100, 500, 50)], new("t", new(300, 500), new(900, 500)), click: 0);
        Assert.Equal(30, length.ValueMm, 0.003);
        Assert.InRange(length.UMm, 0, 0.03);
    }

    [Theory]
    // Trade R67 (geometry): a thing 1 mm tall at 200 mm is drawn larger by 1/199, which 20 mm off the axis is 0.1 mm.
    [InlineData(1, 200, 20, 20.1005)]
    [InlineData(9, 85, 6.26, 7.0013)]
    public void A_reference_above_the_board_is_brought_down_by_the_cameras_distance(double height, double camera, double naive, double known)
    {
        var length = Measured.One(
            [Measured.Reference(100, 1500, 2100, 1500, 20, 0, height)], new("t", new(500, 1500), new(500 + (naive * 100), 1500)), camera: camera);
        // The typed distance is good to 3 %, which moves a tenth of the length by a third of a per cent.
        Assert.InRange(known, length.LowMm, length.HighMm);
        Assert.Equal(known, length.ValueMm, 0.001 * known);
    }

    [Fact]
    public void Things_at_one_height_need_no_camera_distance_and_no_warning()
    {
        var near = Measured.One([Measured.Reference(100, 1500, 2100, 1500, 20, 0, 3)], new("t", new(500, 1500), new(900, 1500), 3));
        Assert.Equal(4, near.ValueMm, 3);
        Assert.Empty(near.Warnings);
    }

    [Fact]
    public void Another_plane_at_an_unknown_distance_warns_and_holds_what_a_typical_bench_would_give()
    {
        // 100 px/mm, 4000 px: the picture shows 40 mm. A phone at 30 mm would make 10 % of 3 mm, a macro lens at 150 mm 2 %.
        ReferenceLength[] references = [Measured.Reference(100, 1500, 2100, 1500, 20)];
        var flat = Measured.One(references, new("t", new(500, 1500), new(1500, 1500)));
        var tall = Measured.One(references, new("t", new(500, 1500), new(1500, 1500), 3));
        var warning = Assert.Single(tall.Warnings);
        Assert.Equal("other-plane", warning.Code);
        Assert.StartsWith("This length stands 3 mm above what set the scale.", warning.Say, StringComparison.Ordinal);
        Assert.InRange(tall.LowMm, 8.6, 9.1);
        Assert.InRange(tall.HighMm, 9.75, 9.95);
        Assert.True(tall.UMm > 5 * flat.UMm);
    }

    [Fact]
    public void The_sum_of_two_halves_shares_the_scale()
    {
        // The scale's part is one and the same for both, so its relative share must equal that of the reference: sqrt(2)·3/200 px.
        var measured = Measured.All([Measured.Reference(1900, 1500, 2100, 1500, 10)], [new("a", new(1900, 1600), new(2000, 1600)), new("b", new(2000, 1600), new(2100, 1600))], click: 3);
        Assert.All(measured, target => Assert.InRange(target.Length.Value.ScaleShare, 0.0212, 0.0215));
    }

    [Fact]
    public void Two_equal_references_halve_the_scales_variance()
    {
        // GUM 4.2.3: the mean of n equal readings has variance s²/n.
        var target = new TargetLength("t", new(1000, 1500), new(3000, 1500));
        var one = Measured.One([Measured.Reference(1900, 1500, 2100, 1500, 10)], target, click: 5);
        var two = Measured.One([Measured.Reference(1900, 1500, 2100, 1500, 10), Measured.Reference(1900, 1510, 2100, 1510, 10)], target, click: 5);
        Assert.Equal(1 / Math.Sqrt(2), two.ScaleShare / one.ScaleShare, 0.015);
    }

    [Fact]
    public void One_length_says_nothing_of_a_slant_so_the_interval_far_from_it_holds_what_a_hand_does()
    {
        // A board leant by 4° under a phone at one long side: 2000 px to the right of a length, another of 10 mm there shows larger by
        // tan 4°·1/2 twice over, once for its distance and once along itself: some 7 % (geometry).
        var scene = new BenchScene(4, 90, 0, 1, 100, 0);
        var known = new ReferenceLength(scene.Show(-15, 2, 0), scene.Show(-5, 2, 0), 10);
        var far = Measured.One([known], new("t", scene.Show(5, 2, 0), scene.Show(15, 2, 0)));
        Assert.InRange(10, far.LowMm, far.HighMm);
        Assert.InRange(Math.Abs(far.ValueMm - 10), 0.5, 0.9);
    }

    [Theory]
    // A scale on the table beside a device 11 mm tall, 300 mm from the camera: 3.7 % (geometry); a chip of 1 mm there: 0.3 %.
    [InlineData(11, true)]
    [InlineData(1, false)]
    public void With_a_typed_distance_only_a_large_step_between_planes_is_worth_words(double height, bool warned)
    {
        var length = Measured.One([Measured.Reference(500, 1500, 3500, 1500, 60)], new("t", new(1500, 1500), new(2500, 1500), height), camera: 300);
        Assert.Equal(warned ? ["other-plane"] : [], length.Warnings.Select(warning => warning.Code));
        Assert.Equal(20 * (300 - height) / 300, length.ValueMm, 0.06);
    }
}
