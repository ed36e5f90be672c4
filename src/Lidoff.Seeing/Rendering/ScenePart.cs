namespace Lidoff.Seeing.Rendering;

/// <summary>One part on an invented board.</summary>
/// <param name="Spot">Its designator.</param>
/// <param name="Shape">What it looks like.</param>
/// <param name="X">Middle, mm from the board's left edge.</param>
/// <param name="Y">Middle, mm from the board's upper edge.</param>
/// <param name="LengthMm">Side along x before it is turned, mm.</param>
/// <param name="WidthMm">Side along y before it is turned, mm.</param>
/// <param name="HeightMm">Height of its top above the board, mm.</param>
public sealed record ScenePart(string Spot, PartShape Shape, double X, double Y, double LengthMm, double WidthMm, double HeightMm)
{
    /// <summary>Clockwise turn on the board, degrees.</summary>
    public double TurnDegrees { get; init; }

    /// <summary>Mark, line by line.</summary>
    public IReadOnlyList<string> Marks { get; init; } = [];

    /// <summary>How far the mark is worn away from its right end, 0 (fresh) to 1 (gone).</summary>
    public double Wear { get; init; }

    /// <summary>Ways of a connector or cable, leads of a chip.</summary>
    public int Ways { get; init; }

    /// <summary>Pitch of the ways or leads, mm.</summary>
    public double PitchMm { get; init; }

    /// <summary>How far a chip's leads or fillets stand out beyond its body, mm; 0 for none.</summary>
    public double LeadMm { get; init; }

    /// <summary>On how many sides a chip has leads: 2 (upper and lower) or 4.</summary>
    public int LeadSides { get; init; } = 2;

    /// <summary>How many of a two-row chip's leads stand in the middle of each end instead, beside the rows; 0 or 1.</summary>
    public int EndLeads { get; init; }

    /// <summary>Radius of a box's corners, mm.</summary>
    public double RoundMm { get; init; }

    /// <summary>Its colour, where not the usual one of its shape.</summary>
    public PartTint Tint { get; init; }
}
