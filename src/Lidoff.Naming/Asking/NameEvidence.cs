using Lidoff.Naming.Marks;

namespace Lidoff.Naming.Asking;

/// <summary>What is known about the part at one spot. Everything may be missing; a missing key says nothing for or against anything.</summary>
public sealed record NameEvidence
{
    /// <summary>Default standard uncertainty of a body side, mm, where none is given: a careful caliper or picture reading.</summary>
    public const double DefaultBodyU = 0.05;

    /// <summary>What stands on the body; null when nothing was read.</summary>
    public MarkLattice? Mark { get; init; }

    /// <summary>The two body sides in mm, in either order; null when not measured.</summary>
    public (double A, double B)? BodyMm { get; init; }

    /// <summary>The longer body side in mm where the other was not measured; null otherwise.</summary>
    public double? LongMm { get; init; }

    /// <summary>The shorter body side in mm where the other was not measured; null otherwise.</summary>
    public double? ShortMm { get; init; }

    /// <summary>Standard uncertainty of each side, mm.</summary>
    public double BodyU { get; init; } = DefaultBodyU;

    /// <summary>Height above the board, mm.</summary>
    public double? HeightMm { get; init; }

    /// <summary>Number of pins.</summary>
    public int? Pins { get; init; }

    /// <summary>Pin pitch, mm.</summary>
    public double? PitchMm { get; init; }

    /// <summary>Package family word in upper case as the contract has it; null when not said.</summary>
    public string? Package { get; init; }

    /// <summary>What was seen on a bus.</summary>
    public BusFact? Bus { get; init; }

    /// <summary>An identity register read back.</summary>
    public RegisterFact? Identity { get; init; }

    /// <summary>What stands around it, in a person's words.</summary>
    public string? Role { get; init; }

    /// <summary>What kind of part a person takes it for.</summary>
    public string? Class { get; init; }

    /// <summary>The supply it was seen at, V.</summary>
    public double? SupplyV { get; init; }

    /// <summary>Pins that were found on ground, as written ("13", "A4").</summary>
    public IReadOnlyList<string> GroundPins { get; init; } = [];

    /// <summary>The date code on its body as read.</summary>
    public string? DateCode { get; init; }

    /// <summary>True when nothing at all is known.</summary>
    public bool IsEmpty => (Mark is null || Mark.IsBlank) && BodyMm is null && LongMm is null && ShortMm is null && HeightMm is null && Pins is null && PitchMm is null && Package is null
        && Bus is null && Identity is null && Role is null && Class is null && SupplyV is null && GroundPins.Count == 0 && DateCode is null;
}
