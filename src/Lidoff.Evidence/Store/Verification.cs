using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>What verifying found: how many entries and files are whole, how many payloads were erased by right, and every fault by its place.</summary>
public sealed record Verification(int Entries, int Files, int Erased, IReadOnlyList<Fault> Faults)
{
    /// <summary>True when nothing is at fault.</summary>
    public bool Ok => Faults.Count == 0;
}
