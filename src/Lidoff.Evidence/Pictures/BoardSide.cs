namespace Lidoff.Evidence.Pictures;

/// <summary>Which side of a board a picture shows.</summary>
public enum BoardSide
{
    /// <summary>The side the board frame is seen from.</summary>
    Front,

    /// <summary>The other one; its pictures show the board frame mirrored.</summary>
    Back,
}
