namespace Lidoff.Seeing.Rendering;

/// <summary>Colour of a rendered part where its shape's own is not meant.</summary>
public enum PartTint
{
    /// <summary>The colour that belongs to the shape.</summary>
    Usual,

    /// <summary>Dark grey plastic.</summary>
    Black,

    /// <summary>White ceramic or paper.</summary>
    White,

    /// <summary>Foil.</summary>
    Silver,

    /// <summary>Polyimide.</summary>
    Amber,

    /// <summary>A green board.</summary>
    Green,

    /// <summary>A blue board.</summary>
    Blue,

    /// <summary>The dull grey of an unlit memory display.</summary>
    Glass,

    /// <summary>Red and warning-coloured.</summary>
    Orange,

    /// <summary>A dark gap.</summary>
    Gap,
}
