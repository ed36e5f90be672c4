namespace Lidoff.Weighing.Moves;

/// <summary>Something worth doing at the bench.</summary>
/// <param name="Question">The question it serves, in words.</param>
/// <param name="Move">What to do.</param>
/// <param name="Bits">How much it is expected to tell; null where that is not reckoned yet, which <paramref name="Why"/> then says.</param>
/// <param name="Minutes">How long it takes at a bench, min; common practice, not yet learned from logs.</param>
/// <param name="Risk">What it may cost.</param>
/// <param name="Why">Why it helps.</param>
/// <param name="About">A reference to what it is done to: spot:U3, picture:HASH, plan:P1, reckoning:R1 …; empty for none.</param>
public sealed record NextMove(string Question, string Move, double? Bits, double Minutes, MoveRisk Risk, string Why, string About)
{
    /// <summary>Bits a minute; null where not reckoned.</summary>
    public double? Worth => Bits / Minutes;
}
