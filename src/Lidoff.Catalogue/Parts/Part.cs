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

    /// <summary>Other makers that a row names for it, in ordinal order: second sources, former owners, other spellings.</summary>
    public IReadOnlyList<string> OtherMakers { get; init; } = [];

    /// <summary>All class words its rows use, <see cref="Class"/> among them, in ordinal order.</summary>
    public IReadOnlyList<string> Classes { get; init; } = [];

    /// <summary>The coarse class that priors go by ("radio SoC", "charger"), empty when no word tells.</summary>
    public string Kind { get; init; } = "";

    /// <summary>Packages it comes in. Facts that disagree stay side by side.</summary>
    public IReadOnlyList<PackageFact> Packages { get; init; } = [];

    /// <summary>Mark patterns: <c>?</c> one character, <c>*</c> any number, <c>/</c> between lines.</summary>
    public IReadOnlyList<MarkPattern> Marks { get; init; } = [];

    /// <summary>7-bit bus addresses it can answer at, ascending. Addresses that only an example shows are not here.</summary>
    public IReadOnlyList<int> BusAddresses { get; init; } = [];

    /// <summary>7-bit bus addresses that stood only in an example: possible, not usual. Ascending, without those in <see cref="BusAddresses"/>.</summary>
    public IReadOnlyList<int> ExampleAddresses { get; init; } = [];

    /// <summary>Identity registers with the values a part may return there.</summary>
    public IReadOnlyList<IdentityRegister> Identity { get; init; } = [];

    /// <summary>Interface words as the sources have them ("I2C", "SPI").</summary>
    public string Interface { get; init; } = "";

    /// <summary>The first of <see cref="PinLists"/>, empty when unknown.</summary>
    public IReadOnlyList<Pin> Pins => PinLists.Count > 0 ? PinLists[0].Pins : [];

    /// <summary>Every pin-out its rows give, one a package.</summary>
    public IReadOnlyList<PinList> PinLists { get; init; } = [];

    /// <summary>Lowest supply, V.</summary>
    public double? SupplyLeast { get; init; }

    /// <summary>Highest supply, V.</summary>
    public double? SupplyMost { get; init; }

    /// <summary>Current at rest, A.</summary>
    public double? IdleCurrent { get; init; }

    /// <summary>Current at work, A.</summary>
    public double? ActiveCurrent { get; init; }

    /// <summary>Price words as the user's source has them, empty when unknown; Lidoff ships none.</summary>
    public string Price { get; init; } = "";

    /// <summary>Year it was introduced.</summary>
    public int? Introduced { get; init; }

    /// <summary>The best confidence among its rows.</summary>
    public Confidence Confidence { get; init; }

    /// <summary>Where the facts stand, in ordinal order.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>The rows it was joined from, in table order.</summary>
    public IReadOnlyList<RowOrigin> Rows { get; init; } = [];
}
