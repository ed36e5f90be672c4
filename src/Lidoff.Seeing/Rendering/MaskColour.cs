namespace Lidoff.Seeing.Rendering;

/// <summary>Colour of a rendered board's solder mask.</summary>
public enum MaskColour
{
    /// <summary>Green.</summary>
    Green,

    /// <summary>Blue.</summary>
    Blue,

    /// <summary>No board at all: the scene lies on the desk.</summary>
    None,
}
