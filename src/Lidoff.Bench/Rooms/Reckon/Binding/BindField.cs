using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Failing;
using Microsoft.AspNetCore.Components;

namespace Lidoff.Bench.Rooms.Reckon.Binding;

/// <summary>One input of a calculation as it is being filled in.</summary>
public sealed class BindField(CalculationInput input)
{
    /// <summary>The input.</summary>
    public CalculationInput Input { get; } = Guard.NotNull(input);

    /// <summary>What is typed; empty leaves the input at its usual value.</summary>
    public string Text { get; set; } = "";

    /// <summary>Where it is typed on the page.</summary>
    public ElementReference At { get; set; }

    /// <summary>What is wrong with it; empty when nothing is.</summary>
    public IReadOnlyList<Fault> Faults { get; set; } = [];
}
