namespace Lidoff.Weighing.Moves;

/// <summary>Minutes of moves at a bench that is set up. Common practice, no source; a log of real minutes will replace them.</summary>
public static class MoveMinutes
{
    /// <summary>A calliper reading, noted.</summary>
    public const double Calliper = 2;

    /// <summary>Two clicks and a length in a picture.</summary>
    public const double Scale = 1;

    /// <summary>Something put on a scale that stands ready.</summary>
    public const double Weigh = 1;

    /// <summary>A part looked at under the microscope: mark, sides, pins.</summary>
    public const double Look = 5;

    /// <summary>A place pointed at in a picture that is there.</summary>
    public const double Point = 1;

    /// <summary>A current, a capacitance, a time: wires, range, several readings.</summary>
    public const double Measure = 10;

    /// <summary>A figure looked up in a data sheet, or typed.</summary>
    public const double LookUp = 5;

    /// <summary>A question tied, an entry taken back: done at the keyboard.</summary>
    public const double Keyboard = 1;

    /// <summary>Something photographed, weighed or tested before a step that destroys it.</summary>
    public const double Record = 5;
}
