using Lidoff.Evidence.Entries;
using Lidoff.Opening.Resuming;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>What whoever comes back to the bench must know first.</summary>
/// <param name="Cells">The cell of each specimen.</param>
/// <param name="Card">The card: next irreversible act, what was in hand.</param>
/// <param name="At">When that was noted, "2026-03-02 10:15" UTC; empty where nothing was.</param>
public sealed record ResumeView(ValueList<CellState> Cells, ResumeCard Card, string At);
