using CsCheck;
using Lidoff.Evidence.Pictures;
using Lidoff.Telling.Drawing.Labelling;

namespace Lidoff.Telling.Tests.Drawing.Labelling;

public sealed class LabelLayoutTests
{
    private static readonly int Iterations = Environment.GetEnvironmentVariable("LIDOFF_LONG") == "1" ? 20_000 : 400;

    // Points on a coarse grid as often as anywhere: ties, equal points and collinear ones are where such code breaks.
    private static readonly Gen<(double W, double H, double Gap, List<LabelWish> Wishes)> Cases =
        from w in Gen.Double[20, 3000]
        from h in Gen.Double[20, 3000]
        from gap in Gen.Double[1, 40]
        from coarse in Gen.Bool
        from wishes in (
            from x in Gen.Double[0, 1]
            from y in Gen.Double[0, 1]
            from width in Gen.Double[1, 300]
            from height in Gen.Double[1, 60]
            select (x, y, width, height)).List[0, 60]
        select (w, h, gap, wishes.Select((wish, i) => new LabelWish("U" + i, new(At(wish.x, coarse) * w, At(wish.y, coarse) * h), wish.width, wish.height)).ToList());

    [Fact]
    public void No_label_meets_another_or_the_picture_and_all_are_inside() => Cases.Sample(
        each =>
        {
            var layout = LabelLayout.Of(each.W, each.H, each.Wishes, each.Gap);
            Assert.True(layout.PictureY >= 0 && layout.PictureY + each.H <= layout.Height + 0.25);
            for (var i = 0; i < layout.Places.Count; i++)
            {
                var place = layout.Places[i];
                Assert.Equal(each.Wishes[i].Key, place.Key);
                Assert.True(place.X >= 0 && place.Y >= 0 && place.X + place.Width <= layout.Width && place.Y + place.Height <= layout.Height);
                Assert.True(place.Left ? place.X + place.Width < layout.PictureX : place.X > layout.PictureX + each.W);
                for (var j = 0; j < i; j++)
                {
                    var other = layout.Places[j];
                    Assert.True(
                        place.X + place.Width < other.X || other.X + other.Width < place.X || place.Y + place.Height < other.Y || other.Y + other.Height < place.Y,
                        $"{place} overlaps {other}");
                }
            }
        },
        iter: Iterations);

    [Fact]
    public void No_two_leaders_meet_but_where_both_point_at_one_place() => Cases.Sample(
        each =>
        {
            var places = LabelLayout.Of(each.W, each.H, each.Wishes, each.Gap).Places;
            for (var i = 0; i < places.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    var meet = Meet(places[i], places[j]);
                    Assert.False(meet, $"{places[i]} crosses {places[j]}");
                }
            }
        },
        iter: Iterations);

    [Fact]
    public void A_leader_ends_at_its_own_point_and_begins_at_its_own_label() => Cases.Sample(
        each =>
        {
            var layout = LabelLayout.Of(each.W, each.H, each.Wishes, each.Gap);
            for (var i = 0; i < layout.Places.Count; i++)
            {
                var (place, at) = (layout.Places[i], each.Wishes[i].At);
                Assert.InRange(new PicturePoint(layout.PictureX + at.X, layout.PictureY + at.Y).DistanceTo(place.Tip), 0, 0.1);
                Assert.InRange(place.Port.Y, place.Y, place.Y + place.Height);
                Assert.True(place.Left ? place.Port.X > place.X + place.Width : place.Port.X < place.X);
            }
        },
        iter: Iterations);

    [Fact]
    public void The_order_in_which_labels_come_changes_nothing() => Cases.Sample(
        each =>
        {
            var one = LabelLayout.Of(each.W, each.H, each.Wishes, each.Gap).Places.OrderBy(place => place.Key, StringComparer.Ordinal);
            var other = LabelLayout.Of(each.W, each.H, [.. each.Wishes.AsEnumerable().Reverse()], each.Gap).Places.OrderBy(place => place.Key, StringComparer.Ordinal);
            Assert.Equal(one, other);
        },
        iter: Iterations / 4);

    [Fact]
    public void Labels_stay_level_with_their_points_where_there_is_room()
    {
        var layout = LabelLayout.Of(1000, 800, [new("A", new(100, 100), 50, 20), new("B", new(200, 400), 50, 20), new("C", new(900, 300), 50, 20)], 10);
        Assert.Equal([100, 400, 300], layout.Places.Select(place => place.Port.Y));
        Assert.Equal([true, true, false], layout.Places.Select(place => place.Left));
    }

    [Fact]
    public void A_picture_without_labels_stays_as_large_as_it_is()
    {
        var layout = LabelLayout.Of(300, 200, [], 10);
        Assert.Equal((300, 200, 0, 0), (layout.Width, layout.Height, layout.PictureX, layout.PictureY));
    }

    [Fact]
    public void Forty_labels_in_a_low_picture_make_it_taller_instead_of_meeting()
    {
        var layout = LabelLayout.Of(600, 100, [.. Enumerable.Range(0, 40).Select(i => new LabelWish("R" + i, new(300, 50), 60, 20))], 4);
        Assert.True(layout.Height >= 20 * 20);
        Assert.Equal(20, layout.Places.Count(place => place.Left));
    }

    private static double At(double share, bool coarse) => coarse ? Math.Round(share * 4) / 4 : share;

    /// <summary>Do two segments have a point in common that is not a shared tip? Orientation test on whole eighths: exact.</summary>
    private static bool Meet(LabelPlace one, LabelPlace other)
    {
        var (a, b, c, d) = (Whole(one.Port), Whole(one.Tip), Whole(other.Port), Whole(other.Tip));
        var (abc, abd, cda, cdb) = (Turn(a, b, c), Turn(a, b, d), Turn(c, d, a), Turn(c, d, b));
        if (b == d) return abc == 0 && one.Left == other.Left;
        return (abc * abd < 0 && cda * cdb < 0) || (abc == 0 && On(a, b, c)) || (abd == 0 && On(a, b, d)) || (cda == 0 && On(c, d, a)) || (cdb == 0 && On(c, d, b));
    }

    private static (long X, long Y) Whole(PicturePoint point) => ((long)(point.X * 8), (long)(point.Y * 8));

    private static int Turn((long X, long Y) a, (long X, long Y) b, (long X, long Y) c) => Math.Sign(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));

    private static bool On((long X, long Y) a, (long X, long Y) b, (long X, long Y) c) =>
        c.X >= Math.Min(a.X, b.X) && c.X <= Math.Max(a.X, b.X) && c.Y >= Math.Min(a.Y, b.Y) && c.Y <= Math.Max(a.Y, b.Y);
}
