using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;
using Lidoff.Numbers.Spreads.Shapes;

namespace Lidoff.Numbers.Calculating;

/// <summary>
/// Propagates distributions (JCGM 101) in blocks of 2,048 draws. Each block has a generator of its own and writes to a place
/// of its own, so the result does not depend on how many threads worked.
/// </summary>
internal static class MonteCarlo
{
    public const int Block = 2048;

    public static Draws Run(
        Calculation calculation, IReadOnlyList<Uncertain> inputs, ulong seed, int samples, CorrelationMatrix? correlations, int threads)
    {
        var plan = new DrawPlan(inputs, correlations);
        var blocks = (samples + Block - 1) / Block;
        var values = new double[blocks * Block];
        if (threads == 1)
        {
            One(0, 1);
        }
        else
        {
            Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, worker => One(worker, threads));
        }

        return Kept(values.AsSpan(0, samples));

        void One(int from, int step)
        {
            var scratch = plan.Scratch();
            for (var block = from; block < blocks; block += step)
            {
                plan.Draw(new EightLanes(seed, (ulong)block), scratch);
                var result = values.AsSpan(block * Block, Block);
                calculation.Evaluate(scratch.Columns, result);
                LeaveOut(calculation.Info.Inputs, scratch.Columns, result);
            }
        }
    }

    // A draw outside the allowed range of an input has no value, just as one without a finite result.
    private static void LeaveOut(IReadOnlyList<CalculationInput> inputs, ReadOnlySpan<double> columns, Span<double> result)
    {
        for (var i = 0; i < inputs.Count; i++)
        {
            double least = inputs[i].Least, most = inputs[i].Most;
            var column = columns.Slice(i * Block, Block);
            for (var row = 0; row < column.Length; row++)
                if (!(column[row] >= least && column[row] <= most)) result[row] = double.NaN;
        }
    }

    private static Draws Kept(ReadOnlySpan<double> values)
    {
        var kept = 0;
        foreach (var value in values)
            if (double.IsFinite(value)) kept++;
        var finite = new double[kept];
        var next = 0;
        foreach (var value in values)
            if (double.IsFinite(value)) finite[next++] = value;
        return new(finite, values.Length - kept);
    }
}
