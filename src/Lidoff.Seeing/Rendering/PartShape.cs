namespace Lidoff.Seeing.Rendering;

/// <summary>What a rendered part looks like.</summary>
public enum PartShape
{
    /// <summary>A dark moulded body with a mark and a dot at pin 1.</summary>
    Chip,

    /// <summary>A ceramic or resistor body with bright ends.</summary>
    Passive,

    /// <summary>A metal can.</summary>
    Can,

    /// <summary>A pale connector with ways.</summary>
    Connector,

    /// <summary>A box with rounded corners: case, cell, display, antenna, stiffener.</summary>
    Box,

    /// <summary>A flat cable with ways along its length.</summary>
    Cable,

    /// <summary>A bare gold pad.</summary>
    Pad,

    /// <summary>A plated hole through the board.</summary>
    Hole,

    /// <summary>A drop of glue or a moulded lump, half clear.</summary>
    Blob,

    /// <summary>A glass scale with a line each half millimetre.</summary>
    Graticule,
}
