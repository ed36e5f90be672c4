using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Tests.Boards.Finding;

/// <summary>
/// Plated holes as photographs of boards show them at some 9 px/mm: a land, a wall that is lit from one side and dark glass below, so that what is darkest lies askew and is a third smaller
/// than the hole. Drawn here, area by area.
/// </summary>
public sealed class LitHoleTests(ITestOutputHelper output)
{
    private const int Rows = 6;
    private const int Apart = 26;

    [Fact]
    public void Holes_whose_wall_is_lit_from_one_side_are_found_at_every_size()
    {
        var (found, shown, off) = (0, 0, new List<double>());
        foreach (var (size, lit) in new[] { (0.8, 210), (0.9, 170), (1.0, 210), (1.1, 230), (1.25, 190) })
        {
            var marks = PictureMarks.Of(Holes(size, lit), new(Apart * Rows, Apart * Rows)).Marks;
            foreach (var (x, y) in Middles())
            {
                shown++;
                if (marks.Where(mark => mark.Sort != MarkSort.Bright).MinBy(mark => mark.At.DistanceTo(new(x, y))) is not { } near || near.At.DistanceTo(new(x, y)) > 2) continue;
                found++;
                off.Add(near.At.DistanceTo(new(x, y)));
            }
        }

        output.WriteLine($"{found} of {shown} found, {off.Order().ElementAt(off.Count / 2):0.00} px off in the middle one");
        Assert.InRange(found, 0.9 * shown, shown);
    }

    // Not on the grid of pixels.
    private static IEnumerable<(double X, double Y)> Middles() =>
        from row in Enumerable.Range(0, Rows)
        from column in Enumerable.Range(0, Rows)
        select (((column + 0.5) * Apart) + (0.17 * row), ((row + 0.5) * Apart) + (0.23 * column));

    private static GreyPicture Holes(double size, int lit)
    {
        const int side = Apart * Rows;
        const int fine = 4;
        var random = new Random(5);
        var values = new float[side * side];
        Array.Fill(values, 65f);
        foreach (var (cx, cy) in Middles())
        {
            for (var y = (int)cy - 13; y < (int)cy + 13; y++)
            {
                for (var x = (int)cx - 13; x < (int)cx + 13; x++)
                {
                    var sum = 0.0;
                    for (var k = 0; k < fine * fine; k++) sum += Shade(x + (((k % fine) + 0.5) / fine) - cx, y + (((k / fine) + 0.5) / fine) - cy, size, lit);
                    if (x >= 0 && y >= 0 && x < side && y < side) values[(y * side) + x] = (float)(sum / fine / fine);
                }
            }
        }

        for (var i = 0; i < values.Length; i++) values[i] += (float)(4 * (random.NextDouble() - 0.5));
        return new(side, side, values, 1);
    }

    private static double Shade(double x, double y, double size, int lit)
    {
        var r = Math.Sqrt((x * x) + (y * y)) / size;
        if (r > 8.7) return 65;
        if (r > 5.5) return 140;
        // The far end of the hole is seen askew through the near one.
        var (dx, dy) = ((x / size) - 0.7, (y / size) - 0.2);
        return Math.Sqrt((dx * dx) + (dy * dy)) < 4.1 ? 45 : x < 0 ? lit : 115;
    }
}
