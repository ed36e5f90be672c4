namespace Lidoff.Bench.Components.Layout;

/// <summary>A number that says it answers a question of the board and is not tied to it yet.</summary>
/// <param name="Question">"Q1".</param>
/// <param name="Reckoning">"R1".</param>
public sealed record TieOffer(string Question, string Reckoning)
{
    /// <summary>What the question is tied to.</summary>
    public string Reference => "reckoning:" + Reckoning;
}
