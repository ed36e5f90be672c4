using System.Numerics;
using System.Runtime.InteropServices;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Calculating;

/// <summary>
/// Base of every calculation: <c>public sealed class OhmsLaw : Calculation&lt;OhmsLaw&gt;, IFormula</c>. It runs the one formula
/// as scalar, as lanes and as gradient.
/// </summary>
public abstract class Calculation<TSelf> : Calculation
    where TSelf : Calculation<TSelf>, IFormula
{
    /// <inheritdoc/>
    public sealed override double Nominal(ReadOnlySpan<double> inputs)
    {
        Guard.That(inputs.Length == Info.Inputs.Count, "one value for each input of " + Info.Name);
        return TSelf.Evaluate(MemoryMarshal.Cast<double, Scalar>(inputs)).Value;
    }

    /// <inheritdoc/>
    public sealed override double[] Slopes(ReadOnlySpan<double> inputs)
    {
        Guard.That(inputs.Length == Info.Inputs.Count, "one value for each input of " + Info.Name);
        var slopes = new double[inputs.Length];
        var x = new Gradient[inputs.Length];
        for (var from = 0; from < inputs.Length; from += Gradient.Width)
        {
            for (var i = 0; i < x.Length; i++)
                x[i] = i >= from && i < from + Gradient.Width ? Gradient.Input(inputs[i], i - from) : inputs[i];
            var partials = TSelf.Evaluate<Gradient>(x).Partials;
            for (var i = from; i < Math.Min(from + Gradient.Width, x.Length); i++) slopes[i] = partials[i - from];
        }

        return slopes;
    }

    internal sealed override void Evaluate(ReadOnlySpan<double> columns, Span<double> values)
    {
        var inputs = values.Length == 0 ? 0 : columns.Length / values.Length;
        Guard.That(values.Length % Vector<double>.Count == 0, "columns of whole vectors");
        Span<Lanes> x = stackalloc Lanes[inputs];
        for (var row = 0; row < values.Length; row += Vector<double>.Count)
        {
            for (var i = 0; i < x.Length; i++) x[i] = new(new Vector<double>(columns[((i * values.Length) + row)..]));
            TSelf.Evaluate<Lanes>(x).Value.CopyTo(values[row..]);
        }
    }
}
