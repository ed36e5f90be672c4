namespace Lidoff.Catalogue.Parts;

/// <summary>
/// What the catalogue knows of one part, joined over its rows. Every property may be unknown (null or empty): a missing fact
/// is no evidence against. Lengths in mm, voltages in V, currents in A. Text is hostile where it was imported.
/// </summary>
public sealed record Part
{
    /// <summary>The base part's name.</summary>
    public required string Name { get; init; }

    /// <summary>Orderable variants that share the facts, in ordinal order.</summary>
    public IReadOnlyList<string> OrderCodes { get; init; } = [];

    /// <summary>Maker, empty when unknown.</summary>
    public string Maker { get; init; } = "";

    /// <summary>What it is ("radio SoC"), empty when unknown.</summary>
    public string Class { get; init; } = "";

    /// <summary>Packages it comes in.</summary>
    public IReadOnlyList<PackageFact> Packages { get; init; } = [];

    /// <summary>Mark patterns: <c>?</c> one character, <c>*</c> any number, <c>/</c> between lines.</summary>
    public IReadOnlyList<MarkPattern> Marks { get; init; } = [];

    /// <summary>7-bit bus addresses it can answer at.</summary>
    public IReadOnlyList<int> BusAddresses { get; init; } = [];

    /// <summary>Identity registers with the values a part may return there.</summary>
    public IReadOnlyList<IdentityRegister> Identity { get; init; } = [];

    /// <summary>Interface words as the sources have them ("I2C", "SPI").</summary>
    public string Interface { get; init; } = "";

    /// <summary>Pin list, empty when unknown.</summary>
    public IReadOnlyList<Pin> Pins { get; init; } = [];

    /// <summary>Lowest supply, V.</summary>
    public double? SupplyLeast { get; init; }

    /// <summary>Highest supply, V.</summary>
    public double? SupplyMost { get; init; }

    /// <summary>Current at rest, A.</summary>
    public double? IdleCurrent { get; init; }

    /// <summary>Current at work, A.</summary>
    public double? ActiveCurrent { get; init; }

    /// <summary>Year it was introduced.</summary>
    public int? Introduced { get; init; }

    /// <summary>The best confidence among its rows.</summary>
    public Confidence Confidence { get; init; }

    /// <summary>Where the facts stand, in ordinal order.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];
}
