namespace Lidoff.Naming.Dates;

/// <summary>Codes that cannot stand on one board: the smallest sets that fight, as written, and the sentence for it.</summary>
public sealed record DateQuarrel(IReadOnlyList<string> Codes, string Say);
