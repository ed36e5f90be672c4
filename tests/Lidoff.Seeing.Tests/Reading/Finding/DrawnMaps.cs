using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Tests.Reading.Finding;

/// <summary>Maps as a good finder would answer, drawn from the truth: each thing a soft-edged shape, a little noise over all.</summary>
internal sealed class DrawnMaps(int columns, int rows, int? validColumns = null, int? validRows = null)
{
    private readonly List<PictureRegion> lines = [], logos = [], bodies = [];
    private readonly List<(PicturePoint At, double Radius)> dots = [];
    private readonly List<(PictureRegion Box, double Height)> bars = [];

    /// <summary>A text line: middle, length, height, direction in degrees clockwise.</summary>
    public DrawnMaps Line(double x, double y, double length, double height, double degrees = 0)
    {
        lines.Add(new(new(x, y), length, height, degrees * Math.PI / 180));
        return this;
    }

    public DrawnMaps Logo(double x, double y, double side)
    {
        logos.Add(new(new(x, y), side, side, 0));
        return this;
    }

    public DrawnMaps Dot(double x, double y, double radius)
    {
        dots.Add((new(x, y), radius));
        return this;
    }

    /// <summary>A bar that the core map takes for text while the map of lines does not.</summary>
    public DrawnMaps Bar(double x, double y, double length, double width, double toldHeight)
    {
        bars.Add((new(new(x, y), length, width, 0), toldHeight));
        return this;
    }

    public DrawnMaps Body(PictureRegion body)
    {
        bodies.Add(body);
        return this;
    }

    /// <param name="sure">Length of the directions: a network that is not sure of up and down answers with short ones.</param>
    public FinderMaps Draw(double sure = 1)
    {
        var maps = new float[FinderMaps.Count * columns * rows];
        for (var cell = 0; cell < columns * rows; cell++)
        {
            var at = new PicturePoint((cell % columns * 4) + 2, (cell / columns * 4) + 2);
            var near = lines.Count == 0 ? default : lines.MinBy(line => Outside(line, at));
            var bar = bars.Count == 0 ? default : bars.MinBy(each => Outside(each.Box, at));
            var byBar = bars.Count > 0 && (lines.Count == 0 || Outside(bar.Box, at) < Outside(near, at));
            Set(0, Math.Min(lines.Select(line => Outside(line with { Width = line.Width - (0.2 * line.Height), Height = Math.Max(4.2, 0.4 * line.Height) }, at)).DefaultIfEmpty(99).Min(), bars.Select(each => Outside(each.Box, at)).DefaultIfEmpty(99).Min()));
            Set(1, lines.Select(line => Outside(line, at)).DefaultIfEmpty(99).Min() - 1);
            var turn = byBar ? 0 : near.Turn;
            maps[(2 * columns * rows) + cell] = (float)(sure * Math.Cos(turn));
            maps[(3 * columns * rows) + cell] = (float)(sure * Math.Sin(turn));
            (maps[(8 * columns * rows) + cell], maps[(9 * columns * rows) + cell]) = ((float)Math.Cos(2 * turn), (float)Math.Sin(2 * turn));
            maps[(4 * columns * rows) + cell] = (float)Math.Log((byBar ? bar.Height : lines.Count > 0 ? near.Height : 16) / 16);
            Set(5, dots.Select(dot => at.DistanceTo(dot.At) - dot.Radius).DefaultIfEmpty(99).Min());
            Set(6, bodies.Select(body => Outside(body, at)).DefaultIfEmpty(99).Min());
            Set(7, logos.Select(logo => Outside(logo, at)).DefaultIfEmpty(99).Min());
            void Set(int map, double outside) => maps[(map * columns * rows) + cell] = (float)(Math.Clamp(-1.2 * outside, -8, 8) + (0.3 * Math.Sin(cell * 12.9898)));
        }

        return new(maps, columns, rows, validColumns ?? columns, validRows ?? rows);
    }

    /// <summary>How far outside of a rectangle a place lies, px; below zero inside.</summary>
    private static double Outside(PictureRegion box, PicturePoint at)
    {
        var (x, y) = box.Inside(at);
        return Math.Max(Math.Abs(x) - (box.Width / 2), Math.Abs(y) - (box.Height / 2));
    }
}
