using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Tests.Reading.Lattices;

/// <summary>The slow truth beside every sum over paths: each path of a small lattice written out, collapsed by the rule, and added up.</summary>
internal sealed class EveryPath
{
    private EveryPath(Dictionary<string, double> texts) => Texts = texts;

    /// <summary>Every text that some path comes to, with its probability.</summary>
    public IReadOnlyDictionary<string, double> Texts { get; }

    public double this[string text] => Texts.GetValueOrDefault(text);

    public static EveryPath Of(double[] probabilities, ReadingAlphabet alphabet)
    {
        var (classes, texts) = (alphabet.Classes, new Dictionary<string, double>());
        var steps = probabilities.Length / classes;
        var path = new int[steps];
        for (var number = 0; number < Math.Pow(classes, steps) - 0.5; number++)
        {
            var (left, p) = (number, 1.0);
            for (var t = 0; t < steps; t++)
            {
                path[t] = left % classes;
                left /= classes;
                p *= probabilities[(t * classes) + path[t]];
            }

            var text = "";
            for (var t = 0; t < steps; t++)
            {
                if (path[t] != 0 && (t == 0 || path[t] != path[t - 1])) text += alphabet.Symbol(path[t]);
            }

            texts[text] = texts.GetValueOrDefault(text) + p;
        }

        return new(texts);
    }

    /// <summary>A lattice of made-up probabilities, some of them far apart.</summary>
    public static double[] Made(int seed, int steps, int classes)
    {
        var state = (uint)(seed * 2654435761u) | 1u;
        double Next()
        {
            state ^= state << 13;
            state ^= state >> 17;
            state ^= state << 5;
            return state / (double)uint.MaxValue;
        }

        var all = new double[steps * classes];
        for (var t = 0; t < steps; t++)
        {
            for (var c = 0; c < classes; c++) all[(t * classes) + c] = Math.Exp(6 * Next());
            var sum = all.Skip(t * classes).Take(classes).Sum();
            for (var c = 0; c < classes; c++) all[(t * classes) + c] /= sum;
        }

        return all;
    }
}
