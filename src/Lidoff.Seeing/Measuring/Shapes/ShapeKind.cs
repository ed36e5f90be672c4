namespace Lidoff.Seeing.Measuring.Shapes;

/// <summary>What is asked for over several places of a picture.</summary>
public enum ShapeKind
{
    /// <summary>Diameter of the circle through three or more places of its edge, mm.</summary>
    Circle,

    /// <summary>Distance from one lead, ball or way to the next, over three or more of them along a row, mm.</summary>
    Pitch,

    /// <summary>Angle at the second of three places, degrees.</summary>
    Angle,

    /// <summary>Area of the polygon with three or more corners, mm².</summary>
    Area,
}
