namespace Lidoff.Tracing.Kinds;

/// <summary>The side of the board on which a pad can be touched.</summary>
public enum PadSide
{
    /// <summary>Nothing was said.</summary>
    Unknown,

    /// <summary>The side that carries most parts.</summary>
    Top,

    /// <summary>The other side.</summary>
    Bottom,
}
