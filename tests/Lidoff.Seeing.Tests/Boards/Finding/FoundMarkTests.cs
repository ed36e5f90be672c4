using Lidoff.Seeing.Boards.Finding;

namespace Lidoff.Seeing.Tests.Boards.Finding;

/// <summary>Where holes and vias are found, against where the scene has them.</summary>
public sealed class FoundMarkTests(ITestOutputHelper output)
{
    // Six pictures in every run, for time; more by LIDOFF_BOARDS.
    private static int Boards { get; } = int.TryParse(Environment.GetEnvironmentVariable("LIDOFF_BOARDS"), out var many) ? many : 6;

    [Fact]
    public void Ninety_per_cent_of_the_middles_lie_where_ninety_per_cent_should()
    {
        var (shown, rests) = (0, new List<(double Z, double Px, bool Large)>());
        for (var seed = 1; seed <= Boards; seed++)
        {
            var board = new HoleBoard(seed + 600);
            var shot = board.Take(seed % 2 == 0);
            var marks = shot.Marks().Marks;
            foreach (var hole in board.Holes)
            {
                var (at, radius) = (shot.Show(hole.X, hole.Y), hole.LengthMm / 2 * shot.Scene.PxPerMm);
                if (at.X < 20 || at.Y < 20 || at.X > 1780 || at.Y > 1330) continue;
                shown++;
                // Nearer than half its radius is that hole; a part may lie over it, or beside it and round as well.
                if (marks.Where(mark => mark.At.DistanceTo(at) < 0.5 * radius).MinBy(mark => mark.At.DistanceTo(at)) is not { } found) continue;
                var large = hole.LengthMm > 0.5;
                rests.Add(((found.At.X - at.X) / found.UPx, found.At.X - at.X, large));
                rests.Add(((found.At.Y - at.Y) / found.UPx, found.At.Y - at.Y, large));
            }
        }

        foreach (var (large, least, most) in new[] { (true, 0.87, 1.0), (false, 0.84, 0.94) })
        {
            var these = rests.Where(rest => rest.Large == large).ToList();
            var held = these.Count(rest => Math.Abs(rest.Z) <= 1.6448536269514722) / (double)these.Count;
            output.WriteLine($"{(large ? "holes" : "vias")}: {these.Count / 2} found, rms {Math.Sqrt(these.Average(rest => rest.Px * rest.Px)):0.000} px, mean {these.Average(rest => rest.Px):0.000} px, 90 % held {held:0.000}");
            // Measured on 24 pictures: 0.98 and 0.88. Plated holes are surer than they say; the smaller vias stay a little less sure.
            Assert.InRange(held, least, most);
        }

        output.WriteLine($"{rests.Count / 2} of {shown} found");
        Assert.InRange(rests.Count / 2.0, 0.75 * shown, shown);
    }
}
