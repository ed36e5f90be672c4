namespace Lidoff.Catalogue.Parts;

/// <summary>One pin-out of a part: the package it belongs to as its source names it, the orderable variants, the pins. A missing pin number proves nothing.</summary>
public sealed record PinList(string Package, IReadOnlyList<string> OrderCodes, IReadOnlyList<Pin> Pins, string Source);
