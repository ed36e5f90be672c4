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
}
