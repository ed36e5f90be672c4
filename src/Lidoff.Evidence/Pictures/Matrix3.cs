namespace Lidoff.Evidence.Pictures;

/// <summary>Three by three, row by row: a plane's projective map in homogeneous coordinates.</summary>
public readonly record struct Matrix3(double A, double B, double C, double D, double E, double F, double G, double H, double I)
{
    /// <summary>Leaves every point where it is.</summary>
    public static Matrix3 One { get; } = new(1, 0, 0, 0, 1, 0, 0, 0, 1);

    /// <summary>Zero when the map flattens the plane and cannot be taken back.</summary>
    public double Determinant => (A * ((E * I) - (F * H))) - (B * ((D * I) - (F * G))) + (C * ((D * H) - (E * G)));

    /// <summary>Applied after <paramref name="m"/>.</summary>
    public Matrix3 After(Matrix3 m) => new(
        (A * m.A) + (B * m.D) + (C * m.G), (A * m.B) + (B * m.E) + (C * m.H), (A * m.C) + (B * m.F) + (C * m.I),
        (D * m.A) + (E * m.D) + (F * m.G), (D * m.B) + (E * m.E) + (F * m.H), (D * m.C) + (E * m.F) + (F * m.I),
        (G * m.A) + (H * m.D) + (I * m.G), (G * m.B) + (H * m.E) + (I * m.H), (G * m.C) + (H * m.F) + (I * m.I));

    /// <summary>The inverse by cofactors; the determinant must not be zero.</summary>
    public Matrix3 Inverse()
    {
        var d = Determinant;
        return new(
            ((E * I) - (F * H)) / d, ((C * H) - (B * I)) / d, ((B * F) - (C * E)) / d,
            ((F * G) - (D * I)) / d, ((A * I) - (C * G)) / d, ((C * D) - (A * F)) / d,
            ((D * H) - (E * G)) / d, ((B * G) - (A * H)) / d, ((A * E) - (B * D)) / d);
    }
}
