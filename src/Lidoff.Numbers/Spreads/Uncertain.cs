using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads.Shapes;

namespace Lidoff.Numbers.Spreads;

/// <summary>
/// A quantity we do not know exactly: best value, standard uncertainty, degrees of freedom, the shape its draws follow, and
/// where it came from. SI throughout. Inputs with the same non-empty <see cref="Source"/> share one draw: they rise and
/// fall together. Two inputs bound to the same undecided <see cref="Identity"/> take the same alternative in each draw.
/// </summary>
public sealed record Uncertain
{
    internal Uncertain(Shape shape, string source = "", double dof = double.PositiveInfinity, string identity = "")
    {
        Shape = shape;
        Source = Guard.NotNull(source);
        Identity = Guard.NotNull(identity);
        Guard.That(dof > 0, "degrees of freedom above zero");
        Dof = dof;
        Value = shape.Mean;
        U = shape.U;
    }

    /// <summary>Best value (the mean of the shape), SI.</summary>
    public double Value { get; }

    /// <summary>Standard uncertainty, SI, zero or more. For Student's t it is the scale, as in the GUM.</summary>
    public double U { get; }

    /// <summary>Degrees of freedom of <see cref="U"/>; infinite unless said.</summary>
    public double Dof { get; }

    /// <summary>Names what the value came from; empty: its own draw.</summary>
    public string Source { get; }

    /// <summary>Names the undecided identity of a mixture; empty for all other shapes.</summary>
    public string Identity { get; }

    internal Shape Shape { get; }

    /// <summary>A value without doubt (a count, a definition).</summary>
    public static Uncertain Exact(double value) => new(new ExactShape(Guard.Finite(value)));

    /// <summary>Normal with standard uncertainty <paramref name="u"/>; <paramref name="dof"/> only enters the effective degrees of freedom.</summary>
    public static Uncertain Normal(double value, double u, string source = "", double dof = double.PositiveInfinity) =>
        new(new NormalShape(Guard.Finite(value), Guard.NotNegative(u)), source, dof);

    /// <summary>Anywhere between the limits alike (JCGM 101 6.4.2).</summary>
    public static Uncertain Uniform(double low, double high, string source = "", double dof = double.PositiveInfinity)
    {
        InOrder(low, high);
        return new(new UniformShape(low, high), source, dof);
    }

    /// <summary>Triangular between the limits with its peak at <paramref name="mode"/> (low ≤ mode ≤ high).</summary>
    public static Uncertain Triangular(double low, double mode, double high, string source = "", double dof = double.PositiveInfinity)
    {
        InOrder(low, mode);
        InOrder(mode, high);
        return new(new TriangularShape(low, mode, high), source, dof);
    }

    /// <summary>A quantity that swings like a sine between the limits (JCGM 101 6.4.6).</summary>
    public static Uncertain Arcsine(double low, double high, string source = "", double dof = double.PositiveInfinity)
    {
        InOrder(low, high);
        return new(new ArcsineShape(low, high), source, dof);
    }

    /// <summary>Mean of few readings: Student's t with scale <paramref name="u"/> and <paramref name="dof"/> degrees of freedom (JCGM 101 6.4.9).</summary>
    public static Uncertain StudentT(double value, double u, double dof, string source = "")
    {
        Guard.Positive(dof);
        return new(new StudentShape(Guard.Finite(value), Guard.NotNegative(u), dof), source, dof);
    }

    /// <summary>
    /// Uniform whose limits are themselves only known to ± <paramref name="d"/> (JCGM 101 6.4.3, curvilinear trapezoid;
    /// d is at most half the width).
    /// </summary>
    public static Uncertain CurvilinearTrapezoid(double low, double high, double d, string source = "", double dof = double.PositiveInfinity)
    {
        InOrder(low, high);
        Guard.That(d >= 0 && d <= (high - low) / 2, "limits that do not cross: d from zero to half the width");
        return new(new CurvilinearTrapezoidShape(low, high, d), source, dof);
    }

    /// <summary>Drawn from the given values alike (a measured column); at least one, all finite. The values are copied.</summary>
    public static Uncertain Empirical(IReadOnlyList<double> values, string source = "")
    {
        Guard.NotNull(values);
        Guard.That(values.Count > 0, "at least one value");
        var copy = values.ToArray();
        foreach (var value in copy) Guard.Finite(value, nameof(values));
        return new(new EmpiricalShape(copy), source);
    }

    /// <summary>
    /// An undecided identity: with weight i the quantity is alternative i. The identity is drawn first, then the parameter;
    /// all inputs bound to the same <paramref name="identity"/> share the first draw and must give the same weights.
    /// Weights are zero or more and are scaled to sum one; the alternatives are not mixtures, and their own sources are not used.
    /// </summary>
    public static Uncertain Mixture(string identity, IReadOnlyList<double> weights, IReadOnlyList<Uncertain> alternatives, string source = "")
    {
        Guard.That(!string.IsNullOrEmpty(identity), "a name for the undecided identity");
        Guard.NotNull(weights);
        Guard.NotNull(alternatives);
        Guard.That(weights.Count == alternatives.Count && weights.Count > 0, "one weight for each alternative, at least one");
        foreach (var weight in weights) Guard.NotNegative(weight, nameof(weights));
        Guard.Positive(weights.Sum(), nameof(weights));
        Guard.That(alternatives.All(a => a.Shape is not MixtureShape), "alternatives that are not mixtures themselves");
        return new(new MixtureShape([.. weights], [.. alternatives.Select(a => a.Shape)]), source, identity: identity);
    }

    /// <summary>The same quantity, said to come from <paramref name="source"/>.</summary>
    public Uncertain From(string source) => new(Shape, source, Dof, Identity);

    private static void InOrder(double low, double high)
    {
        Guard.Finite(low);
        Guard.Finite(high);
        Guard.That(low <= high, "limits in rising order");
    }
}
