using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

public sealed class WarningTests
{
    private static readonly TargetLength Along = new("t", new(1000, 1000), new(2000, 1000));
    private static readonly TargetLength Down = new("t", new(1000, 1000), new(1000, 2000));

    [Fact]
    public void Unequal_axes_are_told_and_each_direction_keeps_its_own_scale()
    {
        // 100 px/mm across, 96 px/mm down: 4 % as in a picture taken at a slant of 16°.
        ReferenceLength[] references = [Measured.Reference(500, 1500, 2500, 1500, 20), Measured.Reference(1500, 500, 1500, 2420, 20)];
        var along = Measured.One(references, Along);
        var down = Measured.One(references, Down);
        Assert.Equal("unequal-axes", Assert.Single(along.Warnings).Code);
        Assert.Contains("differs by 4", along.Warnings[0].Say, StringComparison.Ordinal);
        Assert.InRange(10, along.LowMm, along.HighMm);
        Assert.InRange(1000 / 96.0, down.LowMm, down.HighMm);
        // Whether the picture was taken square with unequal pixels (1000/96 = 10.417) or at a slant to either side, from near or from far, which would
        // change the scale from place to place too, two lengths cannot tell: the value lies among what all of these make of it.
        double[] ways = [1000 / 96.0, .. new[] { 0.7, 1.5, 4 }.SelectMany(far => new[] { Slanted(far, 16.26), Slanted(far, -16.26) })];
        Assert.InRange(down.ValueMm, ways.Min(), ways.Max());
    }

    /// <summary>
    /// What the target down the picture is long in mm under a camera that leans about the picture's level line, so many long sides (4000 px) away:
    /// y on the sensor is f·Y·cos t/(Z + Y·sin t), turned round for Y, and Z from the known 20 mm (geometry).
    /// </summary>
    private static double Slanted(double longSides, double degrees)
    {
        var (f, t) = (4000 * longSides, degrees * Math.PI / 180);
        double Place(double y) => y / ((f * Math.Cos(t)) - (y * Math.Sin(t)));
        return 20 * (Place(2000 - 1500) - Place(1000 - 1500)) / (Place(2420 - 1500) - Place(500 - 1500));
    }

    [Fact]
    public void A_mirrored_picture_is_told()
    {
        var length = Measured.One([Measured.Reference(500, 1500, 2500, 1500, 20)], Along, frame: new(4000, 3000, Mirrored: true));
        Assert.Equal(["mirrored"], length.Warnings.Select(warning => warning.Code));
    }

    [Fact]
    public void A_base_of_one_pitch_under_a_board_edge_is_too_short()
    {
        // The published case: 2.54 mm taken once made a board of 1.35 in read 1.42 in, 5 % off (esawdust.com). At 20 px/mm one
        // click pair on 50.8 px is 2.8 %, so the true 34.29 mm must lie within two standard uncertainties of the 36.07 mm.
        var length = Measured.One([Measured.Reference(100, 100, 150.8, 100, 2.54)], new("edge", new(100, 200), new(100 + (36.07 * 20), 200)));
        Assert.Equal(["short-reference"], length.Warnings.Select(warning => warning.Code));
        Assert.StartsWith("This length is 14.2 times as long as the longest reference", length.Warnings[0].Say, StringComparison.Ordinal);
        Assert.InRange(34.29, length.ValueMm - (2 * length.UMm), length.ValueMm);
    }

    [Fact]
    public void Two_directions_of_a_photograph_that_differ_by_a_few_per_cent_are_told_as_such_even_where_one_length_may_be_wrong()
    {
        // Eleven pitches of 0.50 mm across and down one LQFP-48 (JEDEC MS-026), clicked in a photograph that was taken at a slant: 38.9 and 37.2 px/mm.
        ReferenceLength[] rows = [Measured.Reference(1201, 1150, 1415, 1150, 5.5, 0.002), Measured.Reference(1150, 1212, 1150, 1416.6, 5.5, 0.002)];
        var length = Measured.One(rows, new("t", new(1175, 1300), new(1443, 1300)), click: 0.5);
        Assert.Contains("unequal-axes", length.Warnings.Select(warning => warning.Code));
        Assert.DoesNotContain("unequal-axes", Measured.One(rows[..1], new("t", new(1175, 1300), new(1443, 1300)), click: 0.5).Warnings.Select(warning => warning.Code));
    }

    [Fact]
    public void A_mistyped_reference_disagrees_and_widens_the_interval()
    {
        // Two parallel rows side by side: 1.27 mm pitch taken for 1.25 mm over 16 gaps.
        ReferenceLength[] references = [Measured.Reference(500, 1500, 2500, 1500, 20), Measured.Reference(500, 1600, 2532, 1600, 20)];
        var length = Measured.One(references, Along);
        Assert.Equal(["reference-disagrees"], length.Warnings.Select(warning => warning.Code));
        Assert.InRange(10.0, length.LowMm, length.HighMm);
        Assert.InRange(1000 / 101.6, length.LowMm, length.HighMm);
    }

    [Fact]
    public void Two_known_lengths_three_doubts_apart_make_the_scale_no_better_known()
    {
        // Clicked in a photograph of a real board: four pins in 2.54 mm pitch, and four leads in the 1.27 mm pitch of their package's
        // standard, farther from the camera. The leads' own 3.81 mm must lie in what is measured along them.
        var pins = Measured.Reference(2484.6, 714.1, 2490.4, 1045.2, 7.62, 0.1);
        var leads = Measured.Reference(1869.4, 1485.1, 1878, 1639.9, 3.81, 0.05);
        var again = new TargetLength("t", new(1869.4, 1485.1), new(1878, 1639.9));
        var both = Measured.One([pins, leads], again, click: 1.4);
        Assert.InRange(3.81, both.LowMm, both.HighMm);
        // They differ by 6.8 %. If the truth lies anywhere between them that is 0.068/√12 (GUM 4.3.7); if it is one of them and nobody knows which,
        // half of it. Less would be certainty out of contradiction, more would throw both away.
        Assert.InRange(both.UMm / both.ValueMm, 0.068 / Math.Sqrt(12), 0.068 / 2);
    }

    [Fact]
    public void Two_directions_that_differ_by_a_tenth_are_a_wrong_height_or_length_and_not_a_slant()
    {
        // A row of leads on the board across, and a pin header's tips 9 mm higher down: no camera is held at 25°.
        ReferenceLength[] references = [Measured.Reference(1200, 1150, 1415, 1150, 5.5), Measured.Reference(388, 545, 388, 2612, 48.26)];
        var length = Measured.One(references, Down);
        Assert.Equal(["reference-disagrees"], length.Warnings.Select(warning => warning.Code));
        Assert.InRange(1000 / 39.09, length.LowMm, length.HighMm);
        Assert.InRange(1000 / 42.83, length.LowMm, length.HighMm);
    }

    [Fact]
    public void A_scale_that_grows_steadily_across_the_picture_is_a_tilt()
    {
        // A plane under x = X/(1 − gX): local scale 100(1 + 2gX) along x and 100(1 + gX) across it; four rows of 5 mm.
        ReferenceLength[] references =
        [
            .. new[] { -15.0, -5, 5, 15 }.Select(at => Measured.Reference(2000 + Px(at - 2.5), 1500, 2000 + Px(at + 2.5), 1500, 5)),
            .. new[] { -15.0, 15 }.Select(at => Measured.Reference(2000 + Px(at), 1500 - Across(at, 2.5), 2000 + Px(at), 1500 + Across(at, 2.5), 5)),
        ];
        var far = Measured.One(references, new("t", new(2000 + Px(10), 1600), new(2000 + Px(18), 1600)));
        Assert.Equal(["tilt"], far.Warnings.Select(warning => warning.Code));
        Assert.InRange(8, far.LowMm, far.HighMm);

        static double Px(double mm) => 100 * mm / (1 - (0.003 * mm));
        static double Across(double atMm, double mm) => 100 * mm / (1 - (0.003 * atMm));
    }

    [Fact]
    public void A_barrel_lens_is_told_and_allowed_for()
    {
        // x' = X(1 − 0.03 r²), r in half long sides: five rows of 4 mm along the middle line, 100 px/mm there.
        ReferenceLength[] references =
        [
            .. new[] { -17.0, -9, 0, 9, 17 }.Select(at => Measured.Reference(2000 + Px(at - 2), 1500, 2000 + Px(at + 2), 1500, 4)),
        ];
        var edge = Measured.One(references, new("t", new(2000 + Px(12), 1500), new(2000 + Px(19), 1500)));
        Assert.Equal(["lens"], edge.Warnings.Select(warning => warning.Code));
        Assert.InRange(7, edge.LowMm, edge.HighMm);

        static double Px(double mm) => 100 * mm * (1 - (0.03 * mm * mm / 400));
    }

    [Fact]
    public void Clean_pictures_bring_no_warning_with_one_two_or_six_references()
    {
        ReferenceLength[] references =
        [
            Measured.Reference(500, 1500, 2500, 1500, 20, 0.02), Measured.Reference(1500, 400, 1500, 2400, 20, 0.02),
            Measured.Reference(100, 100, 3900, 100, 38, 0.02), Measured.Reference(100, 100, 100, 2900, 28, 0.02),
            Measured.Reference(3900, 100, 3900, 2900, 28, 0.02), Measured.Reference(100, 2900, 3900, 2900, 38, 0.02),
        ];
        foreach (var count in new[] { 1, 2, 6 }) Assert.Empty(Measured.One(references[..count], Along).Warnings);
    }
}
