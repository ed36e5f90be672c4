using Lidoff.Naming.Kinds;
using Lidoff.Naming.Knowing;
using Lidoff.Numbers;
using Lidoff.Weighing.Beliefs;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// What a person settled about one spot, as a factor: strong, but capped, because people settle the wrong spot or swap digits too.
/// An accepted family bears its listed members alike and the share of unlisted ones; which of them it is, the other evidence says.
/// </summary>
internal sealed class DecisionFactor(string spot, int number, IdentityDecision decision, IReadOnlyList<IdentityState> states) : ISharedFactor
{
    /// <summary>How often a person's word on an identity is a blunder. A judgement, no source.</summary>
    internal const double Blunder = 0.01;

    /// <inheritdoc/>
    public string Id { get; } = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"decision {spot} {number:0000}");

    /// <inheritdoc/>
    public IReadOnlyList<string> Variables { get; } = [spot];

    /// <inheritdoc/>
    public double LogLikelihood(IReadOnlyList<int> chosen)
    {
        var state = states[chosen[0]];
        var hit = decision.Verdict switch
        {
            Verdict.Accept => Is(state),
            Verdict.Reject => !Is(state),
            Verdict.Family => InFamily(state, decision.Part),
            _ => state.Kind is IdentityState.Sort.None or IdentityState.Sort.Unlisted,
        };
        return Elementary.Log(hit ? 1 - Blunder : Blunder);
    }

    /// <summary>True when what a state stands for belongs to a family.</summary>
    internal static bool InFamily(IdentityState state, string family) => state.Kind switch
    {
        IdentityState.Sort.Part => PartFamily.Holds(family, state.Name),
        IdentityState.Sort.Unlisted => PartFamily.Covers(family, state.Name),
        _ => false,
    };

    private bool Is(IdentityState state) => state.Kind == IdentityState.Sort.Part && string.Equals(state.Name, decision.Part, StringComparison.OrdinalIgnoreCase);
}
