namespace Lidoff.Bench.Working;

/// <summary>What is selected in this window; the drawer shows what it rests on.</summary>
public sealed class Selection
{
    /// <summary>Called when the selection changes, on the caller's thread.</summary>
    public event Action? Moved;

    /// <summary>
    /// A reference as claims use them ("part:U3", "length:U1:long side", "reckoning:R1", "claim:C1"), "spot:U3" for all that was seen at a
    /// spot, or "entry:" + id; null when nothing is selected.
    /// </summary>
    public string? Reference { get; private set; }

    /// <summary>The spot that is selected, by its part or by all that was seen there; empty for anything else.</summary>
    public string Spot => Reference is { } reference && (reference.StartsWith("part:", StringComparison.Ordinal) || reference.StartsWith("spot:", StringComparison.Ordinal)) ? reference[5..] : "";

    /// <summary>The question whose answer was asked for, by its name; empty where something else was selected.</summary>
    public string Asked { get; private set; } = "";

    /// <summary>Selects; <paramref name="asked"/> names the question that what is selected answers.</summary>
    public void Set(string? reference, string asked = "")
    {
        if (Reference == reference && Asked == asked) return;
        (Reference, Asked) = (reference, asked);
        Moved?.Invoke();
    }
}
