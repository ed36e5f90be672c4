namespace Lidoff.Seeing.Composing;

/// <summary>Turn, scale and shift of the plane: x' = A·x − B·y + X, y' = B·x + A·y + Y, px.</summary>
internal readonly record struct Similarity(double A, double B, double X, double Y)
{
    public static Similarity Identity { get; } = new(1, 0, 0, 0);

    /// <summary>Turn and scale by <paramref name="a"/> and <paramref name="b"/> that take one place to another.</summary>
    public static Similarity Taking(double a, double b, (double X, double Y) from, (double X, double Y) to) => new(a, b, to.X - (a * from.X) + (b * from.Y), to.Y - (b * from.X) - (a * from.Y));

    public double Scale => Math.Sqrt((A * A) + (B * B));

    public (double X, double Y) Apply(double x, double y) => ((A * x) - (B * y) + X, (B * x) + (A * y) + Y);

    /// <summary>First <paramref name="first"/>, then this.</summary>
    public Similarity After(Similarity first)
    {
        var (x, y) = Apply(first.X, first.Y);
        return new((A * first.A) - (B * first.B), (B * first.A) + (A * first.B), x, y);
    }

    public Similarity Inverse()
    {
        var square = (A * A) + (B * B);
        var (a, b) = (A / square, -B / square);
        return new(a, b, -((a * X) - (b * Y)), -((b * X) + (a * Y)));
    }

    /// <summary>The same map between sheets on which one px is <paramref name="times"/> px of these.</summary>
    public Similarity Finer(double times) => this with { X = X * times, Y = Y * times };
}
