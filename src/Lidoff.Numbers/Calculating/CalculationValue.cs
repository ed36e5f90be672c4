using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Calculating;

/// <summary>A calculated value with everything a person needs to doubt it rightly. All SI.</summary>
public sealed record CalculationValue
{
    /// <summary>The formula at the best values of the inputs; NaN where the formula has none there.</summary>
    public required double Value { get; init; }

    /// <summary>Standard uncertainty by Monte Carlo; NaN when fewer than two draws were inside the formula's domain.</summary>
    public required double U { get; init; }

    /// <summary>Standard uncertainty by first order: √(gᵀCg) with the slopes g at the best values.</summary>
    public required double FirstOrderU { get; init; }

    /// <summary>Mean of the Monte Carlo draws.</summary>
    public required double Mean { get; init; }

    /// <summary>Half of the draws lie below it.</summary>
    public required double Median { get; init; }

    /// <summary>The middle 90 % of the draws (5 % on each side).</summary>
    public required Interval Interval90 { get; init; }

    /// <summary>Effective degrees of freedom of <see cref="FirstOrderU"/> (Welch and Satterthwaite, GUM G.4.1).</summary>
    public required double Dof { get; init; }

    /// <summary>One share for each input, in the order of the inputs; all zero when nothing is uncertain.</summary>
    public required IReadOnlyList<InputShare> Shares { get; init; }

    /// <summary>Partial derivative by each input at the best values, in the order of the inputs.</summary>
    public required IReadOnlyList<double> Slopes { get; init; }

    /// <summary>How many draws were made.</summary>
    public required int Samples { get; init; }

    /// <summary>How many draws were left out: an input outside its allowed range, or no finite value there.</summary>
    public required int Skipped { get; init; }

    /// <summary>
    /// True where first order and Monte Carlo part: their uncertainties differ by more than a tenth, the mean lies more
    /// than a quarter of an uncertainty beside the value, or either does not exist. Then Monte Carlo is the one to believe.
    /// </summary>
    public required bool Parted { get; init; }
}
