namespace Lidoff.Seeing.Pictures;

/// <summary>Colour space of a stored picture.</summary>
public enum PictureColour
{
    /// <summary>One channel of brightness.</summary>
    Grey,

    /// <summary>Red, green and blue.</summary>
    Rgb,

    /// <summary>Print colours: cyan, magenta, yellow and black.</summary>
    Cmyk,

    /// <summary>Anything else; shown as red, green and blue.</summary>
    Other,
}
