namespace Lidoff.Catalogue.Parts;

/// <summary>A mark pattern and how it is known: <c>?</c> one character, <c>*</c> any number, <c>/</c> between lines.</summary>
public sealed record MarkPattern(string Pattern, Confidence Confidence, string Source)
{
    /// <summary>The orderable variants it stands on, in ordinal order; empty when no source says which.</summary>
    public IReadOnlyList<string> OrderCodes { get; init; } = [];
}
