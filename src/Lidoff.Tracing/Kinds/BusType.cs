namespace Lidoff.Tracing.Kinds;

/// <summary>Sorts of buses.</summary>
public enum BusType
{
    /// <summary>Two wires with 7-bit addresses.</summary>
    I2c,

    /// <summary>Clock, data both ways, a select line for each part.</summary>
    Spi,

    /// <summary>Asynchronous serial.</summary>
    Uart,

    /// <summary>One data line with 64-bit identities.</summary>
    OneWire,

    /// <summary>Digital sound.</summary>
    I2s,

    /// <summary>One-bit sound of a digital microphone.</summary>
    Pdm,

    /// <summary>Two-wire debug.</summary>
    Swd,

    /// <summary>Boundary scan.</summary>
    Jtag,

    /// <summary>USB.</summary>
    Usb,
}
