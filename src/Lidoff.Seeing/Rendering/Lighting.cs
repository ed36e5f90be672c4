namespace Lidoff.Seeing.Rendering;

/// <summary>Where the light of a rendered picture comes from.</summary>
public enum Lighting
{
    /// <summary>From all sides: marks show by their colour.</summary>
    Flat,

    /// <summary>Low from the left: upright strokes of a mark show as relief, parts throw shadows to the right.</summary>
    RakingLeft,

    /// <summary>Low from above in the picture: level strokes show as relief, shadows fall downwards.</summary>
    RakingTop,
}
