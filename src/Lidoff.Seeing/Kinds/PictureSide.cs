namespace Lidoff.Seeing.Kinds;

/// <summary>What a picture shows of the specimen.</summary>
public enum PictureSide
{
    /// <summary>Nothing was said.</summary>
    Unknown,

    /// <summary>The side that carries most parts, seen from above it.</summary>
    Top,

    /// <summary>The other side, seen from above it: left and right swap against the top.</summary>
    Bottom,

    /// <summary>The edge.</summary>
    Edge,

    /// <summary>Housing, strap, cell or anything else that is no board.</summary>
    Other,
}
