using System.Text;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Tests.Measuring.Shapes;

/// <summary>Circles, pitches, angles and areas, against plain geometry and photographed boards with known pose.</summary>
public sealed class ShapeTests
{
    private static readonly ReferenceLength Ruler = new(new(500, 1500), new(2500, 1500), 20, ClickPx: 1);

    [Fact]
    public void A_circle_of_4_mm_through_five_places_of_its_edge()
    {
        var shape = One(ShapeKind.Circle, [.. Round(1500, 1500, 200, 0, 70, 150, 200, 300)]);
        Assert.Equal(4, shape.Value, 0.004);
        // Through N places evenly round, the radius is their mean distance: u = click/√N, so the diameter's is 2·10 px/√5 = 8.94 px = 0.089 mm;
        // these five are nearly so, and scale and camera add a little.
        Assert.InRange(shape.U, 0.085, 0.12);
        Assert.InRange(4, shape.Low, shape.High);
    }

    [Fact]
    public void A_circle_through_scattered_places_is_the_one_of_least_distances()
    {
        // W. Gander, G. H. Golub and R. Strebel, Least-squares fitting of circles and ellipses, BIT 34 (1994), first example: of the six places the
        // circle of least squared distances has the radius 4.7142; the algebraic one, which draws arcs in, 3.0370. (The places from memory; both
        // circles found again by a search over centres.)
        (double X, double Y)[] places = [(1, 7), (2, 6), (5, 8), (7, 7), (9, 5), (3, 7)];
        Assert.Equal(2 * 4.7142, ShapeValue.Of(ShapeKind.Circle, places), 1e-4);
    }

    [Fact]
    public void A_short_arc_tells_little_and_says_so()
    {
        var arc = One(ShapeKind.Circle, [.. Round(1500, 1500, 200, 0, 8, 16)]);
        Assert.True(arc.U > 20 * One(ShapeKind.Circle, [.. Round(1500, 1500, 200, 0, 120, 240)]).U);
    }

    [Fact]
    public void Twelve_leads_of_half_a_millimetre_with_one_left_out_are_eleven_gaps()
    {
        var leads = Enumerable.Range(0, 12).Where(lead => lead != 4).Select(lead => new PicturePoint(1225 + (50 * lead) + (lead % 2 == 0 ? 1 : -1), 1500 + (lead % 3))).ToList();
        var shape = One(ShapeKind.Pitch, leads);
        Assert.Equal(11, shape.Gaps);
        Assert.Equal(0.5, shape.Value, 0.002);
        // Straight line through 11 places: u = click/√Σ(n − n̄)² = 10 px/√135.6 = 0.859 px = 8.6 µm (textbook formula of a slope).
        Assert.InRange(shape.U, 0.008, 0.011);
        Assert.Equal((0.5, "pitch"), (shape.Snap!.Mm, shape.Snap.Kind));
    }

    [Fact]
    public void An_angle_and_an_area_of_a_turned_rectangle()
    {
        // 3-4-5: corners of a 4 × 3 mm rectangle turned so that its sides have slopes 3/4 and −4/3.
        PicturePoint[] corners = [new(1500, 1260), new(1820, 1500), new(1640, 1740), new(1320, 1500)];
        Assert.Equal(90, One(ShapeKind.Angle, [corners[3], corners[0], corners[1]]).Value, 0.1);
        var area = One(ShapeKind.Area, corners);
        Assert.Equal(12, area.Value, 0.03);
        // A corner moves the area by half the diagonal across it, 2.5 mm, times its click of 0.1 mm: four of them make 0.5 mm².
        Assert.InRange(area.U, 0.45, 0.75);
    }

    [Fact]
    public void Under_a_slant_known_places_set_them_right()
    {
        var scene = new BenchScene(14, 35, 10, 1.2, 60, 0);
        var job = new MeasureJob
        {
            Image = "x",
            References = [],
            KnownPoints = [.. new[] { (-20.0, -15.0), (20, -15), (20, 15), (-20, 15), (0, 3) }.Select(at => new KnownPoint(scene.Show(at.Item1, at.Item2, 0), at.Item1, at.Item2))],
            Targets =
            [
                Asked("hole", ShapeKind.Circle, Enumerable.Range(0, 6).Select(k => scene.Show(12 + (2 * Math.Cos(k)), 8 + (2 * Math.Sin(k)), 0))),
                Asked("corner", ShapeKind.Angle, [scene.Show(-10, 0, 0), scene.Show(-10, 10, 0), scene.Show(0, 10, 0)]),
                Asked("cell", ShapeKind.Area, [scene.Show(0, 0, 0), scene.Show(10, 0, 0), scene.Show(10, 8, 0), scene.Show(0, 8, 0)]),
                Asked("row", ShapeKind.Pitch, Enumerable.Range(0, 9).Select(k => scene.Show(-18 + (1.27 * k), -10, 0))),
            ],
            ClickPx = 0.5,
        };
        var shapes = Measurement.Run(job, new(BenchScene.Width, BenchScene.Height)).Value.Select(target => target.Shape!).ToList();
        foreach (var (shape, truth) in shapes.Zip([4.0, 90, 80, 1.27]))
        {
            Assert.InRange(truth, shape.Low, shape.High);
            Assert.Equal(truth, shape.Value, 0.004 * truth);
        }
    }

    [Fact]
    public void The_output_names_units_in_its_keys()
    {
        var job = MeasureJobReader.Read(Encoding.UTF8.GetBytes("""
            {"image":"x","reference":[{"from":[500,1500],"to":[2500,1500],"length_mm":20}],
             "target":[{"id":"H1","kind":"circle","points":[[2200,1500],[2000,1700],[1800,1500]]},{"id":"a","kind":"angle","points":[[0,0],[100,0],[100,100]]},
              {"id":"c","kind":"area","points":[[0,0],[100,0],[100,100]]},{"id":"p","kind":"pitch","points":[[0,10],[100,10],[200,10]]},{"id":"w","kind":"circle","points":[[1,1],[2,2]]}]}
            """)).Value;
        var json = Measured.Json(Measurement.Run(job, Measured.Frame).Value);
        Assert.Matches("""\{"id":"H1","kind":"circle","value_mm":(3\.99|4)[.\d]*,"u_mm":[.\d]+,"interval90_mm":\[[.\d]+,[.\d]+\],"warnings":\[\]\}""", json);
        Assert.Contains("\"value_deg\":", json, StringComparison.Ordinal);
        Assert.Contains("\"interval90_mm2\":[", json, StringComparison.Ordinal);
        Assert.Contains("\"gaps\":2,\"snap\":", json, StringComparison.Ordinal);
        Assert.Contains("{\"format\":1,\"id\":\"w\",\"error\":{\"where\":\"points\"", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_on_a_line_have_no_circle()
    {
        var measured = Measurement.Run(Job(Asked("t", ShapeKind.Circle, [new(0, 0), new(100, 100), new(200, 200)])), Measured.Frame).Value[0];
        Assert.Equal("The places lie on one line: no circle goes through them.", measured.Length.Faults[0].Say);
    }

    private static IEnumerable<PicturePoint> Round(double x, double y, double r, params double[] degrees) =>
        degrees.Select(angle => new PicturePoint(x + (r * Math.Cos(angle * Math.PI / 180)), y + (r * Math.Sin(angle * Math.PI / 180))));

    private static MeasuredShape One(ShapeKind kind, IReadOnlyList<PicturePoint> points) => Measurement.Run(Job(Asked("t", kind, points)), Measured.Frame).Value[0].Shape!;

    private static MeasureJob Job(AskedTarget target) => new() { Image = "x", References = [Ruler], Targets = [target], ClickPx = 10 };

    private static AskedTarget Asked(string id, ShapeKind kind, IEnumerable<PicturePoint> points) => AskedTarget.Of(new(id, kind, [.. points]));
}
