using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>A map that keeps straight lines straight: shift, scale, turn, mirror, shear, perspective, and all of these in a row.</summary>
public sealed class Projective : PictureTransform
{
    private readonly Matrix3 inverse;

    /// <summary>A map by its matrix, which must be finite and invertible.</summary>
    public Projective(string from, string to, Matrix3 matrix)
        : base(from, to)
    {
        Guard.That(double.IsFinite(matrix.Determinant) && matrix.Determinant != 0, "an invertible matrix");
        Matrix = matrix;
        inverse = matrix.Inverse();
    }

    private Projective(string from, string to, Matrix3 matrix, Matrix3 inverse)
        : base(from, to) => (Matrix, this.inverse) = (matrix, inverse);

    /// <summary>The matrix in homogeneous coordinates.</summary>
    public Matrix3 Matrix { get; }

    /// <summary>True when parallel lines stay parallel.</summary>
    public bool IsAffine => Matrix.G == 0 && Matrix.H == 0;

    /// <inheritdoc/>
    public override PicturePoint Map(PicturePoint point)
    {
        var m = Matrix;
        var w = (m.G * point.X) + (m.H * point.Y) + m.I;
        if (w == 0) return new(double.NaN, double.NaN);
        return new(((m.A * point.X) + (m.B * point.Y) + m.C) / w, ((m.D * point.X) + (m.E * point.Y) + m.F) / w);
    }

    /// <inheritdoc/>
    public override Jacobian JacobianAt(PicturePoint point)
    {
        var m = Matrix;
        var w = (m.G * point.X) + (m.H * point.Y) + m.I;
        var to = Map(point);
        return new((m.A - (to.X * m.G)) / w, (m.B - (to.X * m.H)) / w, (m.D - (to.Y * m.G)) / w, (m.E - (to.Y * m.H)) / w);
    }

    /// <inheritdoc/>
    public override PictureTransform Inverse() => new Projective(To, From, inverse, Matrix);

    internal Projective Joined(Projective next) => new(From, next.To, next.Matrix.After(Matrix), inverse.After(next.inverse));
}
