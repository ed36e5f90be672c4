namespace Lidoff.Numbers.Typed.Codes.Bands;

/// <summary>A colour of IEC 60062; the digit colours in the order of their digits.</summary>
public enum BandColour
{
    /// <summary>Digit 0.</summary>
    Black,

    /// <summary>Digit 1.</summary>
    Brown,

    /// <summary>Digit 2.</summary>
    Red,

    /// <summary>Digit 3.</summary>
    Orange,

    /// <summary>Digit 4.</summary>
    Yellow,

    /// <summary>Digit 5.</summary>
    Green,

    /// <summary>Digit 6.</summary>
    Blue,

    /// <summary>Digit 7.</summary>
    Violet,

    /// <summary>Digit 8.</summary>
    Grey,

    /// <summary>Digit 9.</summary>
    White,

    /// <summary>A tenth, or ± 5 %.</summary>
    Gold,

    /// <summary>A hundredth, or ± 10 %.</summary>
    Silver,

    /// <summary>A thousandth.</summary>
    Pink,
}
