namespace Lidoff.Opening.Kinds;

/// <summary>One physical unit: what it is, where it came from, how it may be used.</summary>
/// <param name="Specimen">Its short name, such as A.</param>
/// <param name="Says">What it is, in words; empty when not said.</param>
/// <param name="From">Where it was bought; empty when not said.</param>
/// <param name="Bought">Day it was bought; bounds its making from above.</param>
/// <param name="Revision">Revision, region or colour; empty when not said.</param>
/// <param name="MayDestroy">Whether it may be destroyed; null when not settled.</param>
/// <param name="MassG">Mass of the whole, g.</param>
/// <param name="UG">Its standard uncertainty, g.</param>
public sealed record SpecimenSighting(
    string Specimen, string Says, string From, DateOnly? Bought, string Revision, bool? MayDestroy, double? MassG, double UG);
