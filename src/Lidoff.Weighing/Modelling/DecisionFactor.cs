using Lidoff.Naming.Kinds;
using Lidoff.Numbers;
using Lidoff.Weighing.Beliefs;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// What a person settled about one spot, as a factor: strong, but capped, because people settle the wrong spot or swap digits too.
/// </summary>
internal sealed class DecisionFactor(string spot, int number, IdentityDecision decision, IReadOnlyList<string> parts) : ISharedFactor
{
    /// <summary>How often a person's word on an identity is a blunder. A judgement, no source.</summary>
    internal const double Blunder = 0.01;

    /// <summary>State of every listed part that is not among the candidates.</summary>
    internal const string Others = "another listed part";

    /// <summary>State of a part in no list.</summary>
    internal const string None = "not in any list";

    /// <inheritdoc/>
    public string Id { get; } = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"decision {spot} {number:0000}");

    /// <inheritdoc/>
    public IReadOnlyList<string> Variables { get; } = [spot];

    /// <inheritdoc/>
    public double LogLikelihood(IReadOnlyList<int> states)
    {
        var state = parts[states[0]];
        var meant = decision.Verdict == Verdict.NotListed ? None : decision.Part;
        var hit = string.Equals(state, meant, StringComparison.OrdinalIgnoreCase);
        if (decision.Verdict == Verdict.Reject) hit = !hit;
        return Elementary.Log(hit ? 1 - Blunder : Blunder);
    }
}
