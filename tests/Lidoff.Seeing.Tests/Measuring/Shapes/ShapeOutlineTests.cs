using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Tests.Measuring.Shapes;

/// <summary>An area needs an outline that does not cross itself; what crosses is known here by winding numbers, which the code does not use.</summary>
public sealed class ShapeOutlineTests
{
    [Theory]
    // A bow tie; two squares that share the corner (100,100); a spike that goes back along itself; a corner that touches a far side; a pentagram.
    [InlineData("0,0 100,100 100,0 0,100", 1, 3)]
    [InlineData("0,0 100,0 100,100 200,100 200,200 100,200 100,100 0,100", 2, 6)]
    [InlineData("0,0 100,0 50,0 50,80", 1, 2)]
    [InlineData("0,0 100,0 100,100 50,0 0,100", 1, 3)]
    [InlineData("100,0 159,181 5,69 195,69 41,181", 1, 3)]
    public void An_outline_that_crosses_or_touches_itself_is_refused_by_its_sides(string corners, int one, int other) => Assert.Equal(
        $"The outline crosses or touches itself: its sides {one} and {other} meet. Give the corners in the order in which one walks round it; of two areas give each by itself.",
        Assert.Single(Faults(Places(corners))));

    [Fact]
    public void The_first_corner_given_again_at_the_end_is_told() => Assert.Equal(
        "The last corner is the first one again. An outline closes by itself: leave the last one out.", Assert.Single(Faults(Places("0,0 100,0 100,100 0,0"))));

    [Fact]
    public void A_circle_or_a_pitch_may_be_clicked_in_any_order() => Assert.All(
        [ShapeKind.Circle, ShapeKind.Pitch], kind => Assert.Empty(Faults(Places(kind == ShapeKind.Circle ? "0,50 100,50 50,0 50,100" : "0,50 100,50 50,51 150,50"), kind)));

    [Fact]
    public void Whatever_winds_round_a_place_twice_or_both_ways_is_found_and_no_star_seen_from_inside_is_accused()
    {
        var random = new Random(5);
        var (crossing, whole) = (0, 0);
        for (var i = 0; i < 400; i++)
        {
            PicturePoint[] corners = [.. Enumerable.Range(0, random.Next(4, 9)).Select(_ => new PicturePoint(random.Next(0, 999), random.Next(0, 999)))];
            // Around a crossing lie places wound round w, w + 1 and w + 2 times: three different numbers, or both signs.
            var windings = Enumerable.Range(0, 1600).Select(k => Winding(corners, (25 * (k % 40)) + 12.3, (25 * (k / 40)) + 12.7)).Distinct().ToList();
            if (windings.Max() > 1 || windings.Min() < -1 || (windings.Contains(1) && windings.Contains(-1)))
            {
                crossing++;
                Assert.NotNull(ShapeOutline.Meeting(corners));
            }

            // Corners in the order of their direction from a place inside, none half a turn from the next: a side never crosses another.
            var directions = Enumerable.Range(0, corners.Length).Select(k => (k + (0.8 * random.NextDouble())) * 2 * Math.PI / corners.Length);
            PicturePoint[] star = [.. directions.Select(angle => (angle, reach: 40 + (400 * random.NextDouble()))).Select(at => new PicturePoint(500 + (at.reach * Math.Cos(at.angle)), 500 + (at.reach * Math.Sin(at.angle))))];
            if (corners.Length < 5) continue;
            whole++;
            Assert.Null(ShapeOutline.Meeting(star));
            Assert.Null(ShapeOutline.Meeting([.. star.Reverse()]));
        }

        // Enough of both that neither half of this test is empty.
        Assert.True(crossing > 150 && whole > 150, $"{crossing} crossing, {whole} whole");
    }

    /// <summary>How often the outline goes round a place: the sum of the angles under which its sides are seen, in whole turns.</summary>
    private static int Winding(PicturePoint[] corners, double x, double y)
    {
        var sum = 0.0;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            sum += Math.IEEERemainder(Math.Atan2(b.Y - y, b.X - x) - Math.Atan2(a.Y - y, a.X - x), 2 * Math.PI);
        }

        return (int)Math.Round(sum / (2 * Math.PI));
    }

    private static PicturePoint[] Places(string corners) =>
        [.. corners.Split(' ').Select(each => each.Split(',')).Select(pair => new PicturePoint(double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)))];

    private static IEnumerable<string> Faults(PicturePoint[] places, ShapeKind kind = ShapeKind.Area)
    {
        var job = new MeasureJob { Image = "x", References = [Measured.Reference(500, 1500, 2500, 1500, 20)], Targets = [AskedTarget.Of(new("a", kind, places))] };
        var target = Measurement.Run(job, Measured.Frame).Value[0];
        return target.Shape is null ? target.Length.Faults.Select(fault => fault.Say) : [];
    }
}
