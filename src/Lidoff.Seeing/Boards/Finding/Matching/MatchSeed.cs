using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>A first guess of how a second picture lies on a first: an affine map, and how many marks of the first come near one of the second by it.</summary>
internal readonly record struct MatchSeed(double A, double B, double C, double D, double E, double F, int Near)
{
    public bool Mirrored => (A * E) - (B * D) < 0;

    public double Scale => Math.Sqrt(Math.Abs((A * E) - (B * D)));

    public PicturePoint Map(PicturePoint p) => new((A * p.X) + (B * p.Y) + C, (D * p.X) + (E * p.Y) + F);

    public Matrix3 Matrix => new(A, B, C, D, E, F, 0, 0, 1);

    /// <summary>The affine map of three points onto three; null where the first lie on a line.</summary>
    public static MatchSeed? Through(PicturePoint a, PicturePoint b, PicturePoint c, PicturePoint p, PicturePoint q, PicturePoint r)
    {
        var (ux, uy, vx, vy) = (b.X - a.X, b.Y - a.Y, c.X - a.X, c.Y - a.Y);
        var d = (ux * vy) - (uy * vx);
        if (Math.Abs(d) < 1e-9) return null;
        var (sx, sy, tx, ty) = (q.X - p.X, q.Y - p.Y, r.X - p.X, r.Y - p.Y);
        var (m11, m12) = (((sx * vy) - (tx * uy)) / d, ((tx * ux) - (sx * vx)) / d);
        var (m21, m22) = (((sy * vy) - (ty * uy)) / d, ((ty * ux) - (sy * vx)) / d);
        return new(m11, m12, p.X - (m11 * a.X) - (m12 * a.Y), m21, m22, p.Y - (m21 * a.X) - (m22 * a.Y), 0);
    }

    /// <summary>By how much the map stretches one direction more than another, 1 for none.</summary>
    public double Stretch
    {
        get
        {
            // Singular values from the sum of squares and the determinant.
            var (sum, d) = ((A * A) + (B * B) + (D * D) + (E * E), Math.Abs((A * E) - (B * D)));
            return d <= 0 ? double.PositiveInfinity : (Math.Sqrt(sum + (2 * d)) + Math.Sqrt(Math.Max(0, sum - (2 * d)))) / (Math.Sqrt(sum + (2 * d)) - Math.Sqrt(Math.Max(0, sum - (2 * d))));
        }
    }
}
