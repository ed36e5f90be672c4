namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>The form of a distribution: its mean, its standard uncertainty, and how uniforms become draws of it.</summary>
internal abstract record Shape
{
    /// <summary>Mean, SI.</summary>
    public abstract double Mean { get; }

    /// <summary>Standard uncertainty, SI.</summary>
    public abstract double U { get; }

    /// <summary>True when <see cref="Draw"/> needs a second uniform for each draw.</summary>
    public virtual bool TakesTwo => false;

    /// <summary>The value below which a share <paramref name="p"/> (0 to 1, both ends excluded) of all draws lies.</summary>
    public abstract double Quantile(double p);

    /// <summary>Turns uniforms into draws; rising with <paramref name="first"/> unless <see cref="TakesTwo"/>.</summary>
    public virtual void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        for (var i = 0; i < into.Length; i++) into[i] = Quantile(first[i]);
    }
}
