using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>
/// The likeliest texts of a lattice: prefixes grow step by step, paths that come to the same prefix are added, and the best
/// <c>width</c> go on (prefix search with a beam). What is found is then summed exactly, so only what is not found is approximate.
/// </summary>
internal static class PrefixBeam
{
    // What is this much less likely than a step's best symbol, or would make a prefix this much less likely than the best one, is not followed.
    private const double Least = 1e-5;

    /// <summary>Texts with the natural logs of their exact probabilities, likeliest first; equal ones in ordinal order. Never empty: the empty text is one.</summary>
    public static IReadOnlyList<(string Text, double LogP)> Search(CtcLattice lattice, int width)
    {
        Guard.That(width > 0, "a width above zero");
        var classes = lattice.Alphabet.Classes;
        var root = new Node(null, 0, 0) { Blank = 1 };
        var made = 1;
        List<Node> beam = [root], touched = [];
        for (var t = 0; t < lattice.Steps; t++)
        {
            var row = lattice.Scaled(t);
            var cut = Least * beam[0].Sum;
            touched.Clear();
            touched.AddRange(beam);
            foreach (var node in beam) node.Touched = true;
            foreach (var node in beam)
            {
                node.NextBlank += node.Sum * row[0];
                if (node.Class > 0) node.NextSymbol += node.Symbol * row[node.Class];
                for (var c = 1; c < classes; c++)
                {
                    if (row[c] < Least) continue;
                    // The same symbol again is another one only behind a blank.
                    var more = (c == node.Class ? node.Blank : node.Sum) * row[c];
                    if (more < cut || more == 0) continue;
                    var child = node.Child(c) ?? node.Grow(c, classes, made++);
                    if (!child.Touched)
                    {
                        child.Touched = true;
                        touched.Add(child);
                    }

                    child.NextSymbol += more;
                }
            }

            foreach (var node in touched) node.Settle();
            beam = Best(touched, width);
            // What is not among the best is forgotten, so that it brings nothing along when it is met again.
            foreach (var node in beam) node.Touched = true;
            foreach (var node in touched) if (!node.Touched) (node.Blank, node.Symbol) = (0, 0);
            foreach (var node in beam) node.Touched = false;
            Rescale(beam);
        }

        return [.. beam.Select(node => Text(node, lattice.Alphabet)).Select(text => (text, lattice.LogProbability(text))).OrderByDescending(each => each.Item2).ThenBy(each => each.text, StringComparer.Ordinal)];
    }

    /// <summary>The likeliest, best first; of equal ones the older.</summary>
    private static List<Node> Best(List<Node> nodes, int width)
    {
        var best = new List<Node>(width + 1);
        foreach (var node in nodes)
        {
            var at = best.Count;
            while (at > 0 && Before(node, best[at - 1])) at--;
            if (at >= width) continue;
            best.Insert(at, node);
            if (best.Count > width) best.RemoveAt(width);
        }

        return best;
    }

    private static bool Before(Node a, Node b) => a.Sum > b.Sum || (a.Sum == b.Sum && a.Number < b.Number);

    // Only ratios count for who goes on.
    private static void Rescale(List<Node> beam)
    {
        var most = beam[0].Sum;
        if (most is > 1e-100 or 0) return;
        foreach (var node in beam)
        {
            node.Blank /= most;
            node.Symbol /= most;
        }
    }

    private static string Text(Node node, ReadingAlphabet alphabet)
    {
        var symbols = new List<char>();
        for (var at = node; at.Parent is not null; at = at.Parent) symbols.Add(alphabet.Symbol(at.Class));
        symbols.Reverse();
        return new string([.. symbols]);
    }

    /// <summary>A prefix: its paths that end in a blank, and those that end in its last symbol.</summary>
    private sealed class Node(Node? parent, int symbolClass, int number)
    {
        private Node?[]? children;

        public Node? Parent { get; } = parent;

        public int Class { get; } = symbolClass;

        public int Number { get; } = number;

        public double Blank { get; set; }

        public double Symbol { get; set; }

        public double NextBlank { get; set; }

        public double NextSymbol { get; set; }

        public bool Touched { get; set; }

        public double Sum => Blank + Symbol;

        public Node? Child(int symbolClass) => children?[symbolClass];

        public Node Grow(int symbolClass, int classes, int number) => (children ??= new Node?[classes])[symbolClass] = new(this, symbolClass, number);

        public void Settle() => (Blank, Symbol, NextBlank, NextSymbol, Touched) = (NextBlank, NextSymbol, 0, 0, false);
    }
}
