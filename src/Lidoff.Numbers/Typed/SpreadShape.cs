namespace Lidoff.Numbers.Typed;

/// <summary>What was typed about how far a value may be off.</summary>
public enum SpreadShape
{
    /// <summary>Nothing: <c>3.7</c>.</summary>
    Exact,

    /// <summary>A standard uncertainty: <c>3.7±0.1</c>, <c>3.7(1)</c>.</summary>
    Normal,

    /// <summary>Two ends, every value between equally likely: <c>3.5..4.2</c>.</summary>
    Uniform,

    /// <summary>Two ends and the most likely value: <c>3.5..3.7..4.2</c>.</summary>
    Triangular,
}
