namespace Lidoff.Opening.Cautioning;

/// <summary>Sorts of acts that call for cautions of their own.</summary>
public enum StepAct
{
    /// <summary>None of the others.</summary>
    Other,

    /// <summary>Buying or taking in a unit.</summary>
    Buy,

    /// <summary>Looking and photographing, also under raking light or ultraviolet.</summary>
    Look,

    /// <summary>X-ray or tomography.</summary>
    XRay,

    /// <summary>Cutting, by blade or ultrasonic cutter.</summary>
    Cut,

    /// <summary>Prying, unscrewing, lifting parts out.</summary>
    Pry,

    /// <summary>Heating a seam or a joint.</summary>
    Heat,

    /// <summary>Handling or taking out the cell.</summary>
    Cell,

    /// <summary>Charging a cell.</summary>
    Charge,

    /// <summary>Feeding the device from a bench supply or its adapter.</summary>
    Supply,

    /// <summary>Cleaning with a solvent.</summary>
    Solvent,

    /// <summary>Removing a coating, potting or an encapsulation.</summary>
    Coating,

    /// <summary>Grinding or sanding.</summary>
    Grind,

    /// <summary>Soldering, also with hot air.</summary>
    Solder,

    /// <summary>Handling bare boards.</summary>
    Board,

    /// <summary>Touching points with a probe.</summary>
    Probe,

    /// <summary>Driving a line from outside.</summary>
    Drive,

    /// <summary>Looking through a thermal camera.</summary>
    Thermal,

    /// <summary>Reading a memory, firmware or data.</summary>
    Memory,

    /// <summary>Bending, dropping, pressing.</summary>
    Strain,

    /// <summary>Transmitting.</summary>
    Transmit,

    /// <summary>Trying something on a person.</summary>
    Person,

    /// <summary>Wearing or using the device after it was opened.</summary>
    Reuse,

    /// <summary>Publishing.</summary>
    Publish,

    /// <summary>Throwing away or sending.</summary>
    Dispose,
}
