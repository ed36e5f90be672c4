namespace Lidoff.Numbers.Typed;

/// <summary>What is known of the decimal mark of a typed number.</summary>
public enum DecimalMark
{
    /// <summary>Nothing: a form that can be read two ways (1.000, 1,000) is asked about. For what people type into a field.</summary>
    Ask,

    /// <summary>A point is the decimal mark, as in files and command lines; a comma that could part thousands is asked about.</summary>
    Machine,

    /// <summary>The person said: a point is the decimal mark, commas part thousands.</summary>
    Point,

    /// <summary>The person said: a comma is the decimal mark, points part thousands.</summary>
    Comma,
}
