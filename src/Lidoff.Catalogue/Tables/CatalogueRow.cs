using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Tables;

/// <summary>One row of a parts table, shipped or imported, read and checked but not yet joined. Null and empty mean unknown. Units as in <see cref="Part"/>.</summary>
public sealed record CatalogueRow
{
    /// <summary>Table and line.</summary>
    public required RowOrigin Origin { get; init; }

    /// <summary>Part name as written.</summary>
    public required string Part { get; init; }

    /// <summary>Maker.</summary>
    public string Maker { get; init; } = "";

    /// <summary>Class words.</summary>
    public string Class { get; init; } = "";

    /// <summary>Package name as written; several may be joined by "or".</summary>
    public string Package { get; init; } = "";

    /// <summary>Body length, mm.</summary>
    public double? LengthMm { get; init; }

    /// <summary>Body width, mm.</summary>
    public double? WidthMm { get; init; }

    /// <summary>Height, mm.</summary>
    public double? HeightMm { get; init; }

    /// <summary>Pitch, mm.</summary>
    public double? PitchMm { get; init; }

    /// <summary>Pins.</summary>
    public int? Pins { get; init; }

    /// <summary>Pin-out.</summary>
    public IReadOnlyList<Pin> Pinout { get; init; } = [];

    /// <summary>Interface words.</summary>
    public string Interface { get; init; } = "";

    /// <summary>7-bit addresses.</summary>
    public IReadOnlyList<int> Addresses { get; init; } = [];

    /// <summary>7-bit addresses that stood in an example only.</summary>
    public IReadOnlyList<int> ExampleAddresses { get; init; } = [];

    /// <summary>Identity register.</summary>
    public int? IdRegister { get; init; }

    /// <summary>Identity value.</summary>
    public long? IdValue { get; init; }

    /// <summary>Bits of the value that count.</summary>
    public long IdMask { get; init; } = -1;

    /// <summary>Mark patterns, one an alternative.</summary>
    public IReadOnlyList<string> Marks { get; init; } = [];

    /// <summary>Lowest supply, V.</summary>
    public double? SupplyLeast { get; init; }

    /// <summary>Highest supply, V.</summary>
    public double? SupplyMost { get; init; }

    /// <summary>Current at rest, A.</summary>
    public double? IdleCurrent { get; init; }

    /// <summary>Current at work, A.</summary>
    public double? ActiveCurrent { get; init; }

    /// <summary>Year of introduction.</summary>
    public int? Introduced { get; init; }

    /// <summary>Price words.</summary>
    public string Price { get; init; } = "";

    /// <summary>Second sources as written.</summary>
    public string SecondSources { get; init; } = "";

    /// <summary>Where it stands.</summary>
    public string Source { get; init; } = "";

    /// <summary>How it is known.</summary>
    public Confidence Confidence { get; init; }
}
