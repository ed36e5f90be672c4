using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Asking;

/// <summary>A line as read: its id even where the rest was refused (the line number where there was none), and the line or its faults.</summary>
public sealed record EvidenceItem(string Id, Outcome<EvidenceLine> Line);
