using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Boards;

/// <summary>A picture drawn as the board would look from straight above: WebP, clear where the picture shows nothing, without any metadata.</summary>
public static class FlatPicture
{
    /// <summary>Draws it.</summary>
    /// <param name="path">The picture's file.</param>
    /// <param name="name">Its name as people know it; hostile text.</param>
    /// <param name="header">Its header.</param>
    /// <param name="toPicture">From the drawing's pixels to the picture's upright pixels.</param>
    /// <param name="width">Width of the drawing, px.</param>
    /// <param name="height">Height of the drawing, px.</param>
    public static Outcome<byte[]> Draw(string path, string name, PictureHeader header, Projective toPicture, int width, int height)
    {
        Guard.NotNull(header);
        Guard.NotNull(toPicture);
        Guard.That(width > 0 && height > 0, "a drawing with pixels");
        // A picture far finer than the drawing would flicker: it is reduced first, to between one and two of its pixels a pixel drawn.
        var finer = Finer(toPicture.JacobianAt(new(width / 2.0, height / 2.0)));
        var shrink = 1;
        while (finer / (shrink * 2) >= 1) shrink *= 2;
        return PictureFile.Whole<byte[]>(name, header, () =>
        {
            var decoded = header.Kind.MediaType == "image/jpeg" ? Math.Min(shrink, 8) : 1;
            using var stored = PictureFile.Stored(path, header, decoded);
            using var reduced = shrink > decoded ? stored.Shrink(shrink / (double)decoded, shrink / (double)decoded) : stored;
            // Turned when it is small: all of its rows fit into memory.
            using var small = PictureTurn.Upright(reduced.CopyMemory(), header.Orientation);
            using var clear = small.Bandjoin(255);
            var (sx, sy) = (small.Width / (double)header.Width, small.Height / (double)header.Height);
            // The library's pixels have their middles at whole numbers, ours at halves.
            var m = new Matrix3(sx, 0, -0.5, 0, sy, -0.5, 0, 0, 1).After(toPicture.Matrix).After(new(1, 0, 0.5, 0, 1, 0.5, 0, 0, 1));
            using var at = Image.Xyz(width, height);
            using var x = at.ExtractBand(0);
            using var y = at.ExtractBand(1);
            using var w = Line(x, y, m.G, m.H, m.I);
            using var px = Line(x, y, m.A, m.B, m.C).Divide(w);
            using var py = Line(x, y, m.D, m.E, m.F).Divide(w);
            using var index = px.Bandjoin(py);
            using var bilinear = Interpolate.NewFromName("bilinear");
            using var flat = clear.Mapim(index, interpolate: bilinear);
            using var bytes = flat.Cast(Enums.BandFormat.Uchar);
            return bytes.WebpsaveBuffer(q: 85, effort: 1, keep: Enums.ForeignKeep.None);
        });
    }

    private static Image Line(Image x, Image y, double a, double b, double c) => x.Linear([a], [c]) + y.Linear([b], [0.0]);

    // Pixels of the picture a pixel of the drawing, in the direction in which there are fewest.
    private static double Finer(Jacobian at)
    {
        var (a, b) = (Math.Sqrt((at.XX * at.XX) + (at.YX * at.YX)), Math.Sqrt((at.XY * at.XY) + (at.YY * at.YY)));
        return Math.Min(a, b);
    }
}
