using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>What whoever comes back to the bench must know first.</summary>
/// <param name="Cells">The cell of each specimen.</param>
/// <param name="Next">The next act that cannot be taken back; null where none is planned.</param>
/// <param name="Left">What was said when the bench was last left; null where nobody said anything.</param>
/// <param name="LeftAt">When, "2026-03-02 10:15" UTC; empty without.</param>
/// <param name="Since">How many steps were noted since.</param>
public sealed record ResumeView(ValueList<CellState> Cells, PlanRow? Next, BenchLeft? Left, string LeftAt, int Since);
