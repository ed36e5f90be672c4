using CsCheck;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Evidence.Tests.Pictures;

public sealed class PictureMapsTests
{
    private static readonly Gen<double> Place = Gen.Double[-4000, 4000];

    private static readonly Gen<PicturePoint> Points = Gen.Select(Place, Place, (x, y) => new PicturePoint(x, y));

    private static readonly Gen<PictureTransform> Maps = Gen.OneOf<PictureTransform>(
        Points.Select(c => (PictureTransform)PictureMaps.Crop("f", "f", c)),
        Gen.Select(Gen.Double[0.01, 50], Gen.Double[0.01, 50], (x, y) => (PictureTransform)PictureMaps.Scaled("f", "f", x, y)),
        Gen.Select(Gen.Double[-720, 720], Points, (t, p) => (PictureTransform)PictureMaps.Turned("f", "f", t, p)),
        Place.Select(x => (PictureTransform)PictureMaps.Mirrored("f", "f", x)),
        Gen.Int[1, 8].Select(o => (PictureTransform)ExifOrientation.ToUpright("f", "f", o, new(4000, 3000))),
        Gen.Select(Gen.Double[-1e-5, 1e-5], Gen.Double[-1e-5, 1e-5], (g, h) => (PictureTransform)new Projective("f", "f", new(1, 0.1, 20, -0.1, 1, 5, g, h, 1))));

    [Fact]
    public void Every_map_and_every_chain_can_be_taken_back() => Gen.Select(Maps.Array[1, 4], Points).Sample(
        (maps, point) =>
        {
            var chain = maps.Aggregate((a, b) => a.Then(b));
            var there = chain.Map(point);
            // Where a chain of perspectives has carried the point towards a horizon, digits are gone for good.
            if (!(Math.Abs(chain.JacobianAt(point).Determinant) is > 1e-3 and < 1e6)) return true;
            return chain.Inverse().Map(there).DistanceTo(point) <= 1e-9 * Math.Max(1, Math.Max(Math.Abs(point.X), Math.Abs(point.Y)) * maps.Length);
        },
        iter: 500);

    [Fact]
    public void A_chain_does_what_its_parts_do_in_turn() => Gen.Select(Maps, Maps, Points).Sample(
        (first, second, point) =>
        {
            var (one, two) = (first.Then(second).Map(point), second.Map(first.Map(point)));
            return one.DistanceTo(two) <= 1e-9 * (1 + Math.Abs(two.X) + Math.Abs(two.Y));
        },
        iter: 500);

    [Fact]
    public void The_jacobian_is_what_small_steps_show() => Gen.Select(Maps, Maps, Points).Sample(
        (first, second, point) =>
        {
            const double Step = 1e-3;
            var map = first.Then(second);
            var j = map.JacobianAt(point);
            var (right, left) = (map.Map(point with { X = point.X + Step }), map.Map(point with { X = point.X - Step }));
            var (down, up) = (map.Map(point with { Y = point.Y + Step }), map.Map(point with { Y = point.Y - Step }));
            bool Close(double a, double b) => Math.Abs(a - b) <= 1e-5 * (1 + Math.Abs(a));
            return Close(j.XX, (right.X - left.X) / (2 * Step)) && Close(j.YX, (right.Y - left.Y) / (2 * Step))
                && Close(j.XY, (down.X - up.X) / (2 * Step)) && Close(j.YY, (down.Y - up.Y) / (2 * Step));
        },
        iter: 500);

    [Fact]
    public void The_centre_of_the_first_pixel_stays_a_centre_when_a_picture_is_halved()
    {
        // contracts.md: centres at (0.5, 0.5). Two by two pixels become one, whose centre is their common corner.
        var half = PictureMaps.Resampled("full", "half", new(4000, 3000), new(2000, 1500));
        Assert.Equal(new(0.5, 0.5), half.Map(new(1, 1)));
        Assert.Equal(new(2000, 1500), half.Map(new(4000, 3000)));
    }

    [Fact]
    public void A_quarter_turn_clockwise_brings_the_right_edge_down()
    {
        var turned = PictureMaps.Turned("a", "b", 90, new(2, 2));
        Assert.Equal(new(2, 4), turned.Map(new(4, 2)));
        Assert.Equal(turned.Map(new(1, 3)), PictureMaps.Turned("a", "b", -270, new(2, 2)).Map(new(1, 3)));
    }

    [Fact]
    public void Thirty_degrees_are_the_sides_of_half_a_triangle_of_equal_sides()
    {
        var to = PictureMaps.Turned("a", "b", 30, new(0, 0)).Map(new(2, 0));
        Assert.Equal(Math.Sqrt(3), to.X, 1e-12);
        Assert.Equal(1, to.Y, 1e-12);
    }

    [Fact]
    public void Frames_must_meet()
    {
        var crop = PictureMaps.Crop("upright", "crop", new(10, 20));
        var scale = PictureMaps.Scaled("upright", "small", 0.5, 0.5);
        Assert.Contains("a map from frame 'crop', got one from 'upright'", Assert.Throws<ArgumentException>(() => crop.Then(scale)).Message, StringComparison.Ordinal);
        var back = crop.Inverse().Then(scale);
        Assert.Equal(("crop", "small"), (back.From, back.To));
        Assert.Equal(new(5, 10), back.Map(new(0, 0)));
    }

    [Fact]
    public void A_click_spreads_as_the_scale_says_and_a_turn_carries_its_long_axis()
    {
        // 50 px per mm: a click good to 1 px is good to 0.02 mm.
        var scale = PictureMaps.Scaled("upright", "board", 0.02, 0.02);
        var spread = scale.Carry(new(7, 7), PictureSpread.Round(1));
        Assert.Equal(0.02, Math.Sqrt(spread.XX), 1e-15);
        Assert.Equal(0.02, Math.Sqrt(spread.YY), 1e-15);
        Assert.Equal(new(9, 0, 1), PictureMaps.Turned("a", "b", 90, new(0, 0)).Carry(new(0, 0), new(1, 0, 9)));
        var diagonal = PictureMaps.Turned("a", "b", 45, new(0, 0)).Carry(new(0, 0), new(4, 0, 0));
        Assert.Equal((2.0, 2.0, 2.0), (Math.Round(diagonal.XX, 12), Math.Round(diagonal.XY, 12), Math.Round(diagonal.YY, 12)));
    }
}
