namespace Lidoff.Naming.Asking;

/// <summary>One line of <c>name</c>: its id, what is known, and remarks for people (unknown keys that were left out).</summary>
public sealed record EvidenceLine(string Id, NameEvidence Evidence, IReadOnlyList<string> Remarks);
