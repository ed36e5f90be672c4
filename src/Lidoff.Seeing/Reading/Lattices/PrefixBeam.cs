using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>
/// The likeliest texts of a lattice: prefixes grow step by step, paths that come to the same prefix are added, and the best
/// <c>width</c> go on (prefix search with a beam). What is found is then summed exactly, so only what is not found is approximate.
/// </summary>
internal static class PrefixBeam
{
    // What is this much less likely than a step's best is not followed; it can cost no more than that share.
    private const double Least = 1e-6;

    /// <summary>Texts with the natural logs of their exact probabilities, likeliest first; equal ones in ordinal order. Never empty: the empty text is one.</summary>
    public static IReadOnlyList<(string Text, double LogP)> Search(CtcLattice lattice, int width)
    {
        Guard.That(width > 0, "a width above zero");
        var root = new Node(null, 0, 0);
        var made = 1;
        List<Node> beam = [root];
        root.Blank = 1;
        root.InBeam = true;
        for (var t = 0; t < lattice.Steps; t++)
        {
            var row = lattice.Scaled(t);
            var touched = new List<Node>(beam);
            foreach (var node in beam)
            {
                node.NextBlank += (node.Blank + node.Symbol) * row[0];
                if (node.Class > 0) node.NextSymbol += node.Symbol * row[node.Class];
                for (var c = 1; c < row.Length; c++)
                {
                    if (row[c] < Least) continue;
                    // The same symbol again is another one only behind a blank.
                    var reach = c == node.Class ? node.Blank : node.Blank + node.Symbol;
                    if (reach <= 0) continue;
                    var child = node.Child(c) ?? node.Grow(c, made++);
                    if (!child.Touched)
                    {
                        child.Touched = true;
                        if (!child.InBeam) touched.Add(child);
                    }

                    child.NextSymbol += reach * row[c];
                }
            }

            foreach (var node in beam) node.InBeam = false;
            foreach (var node in touched) node.Settle();
            beam = [.. touched.OrderByDescending(node => node.Sum).ThenBy(node => node.Number).Take(width)];
            foreach (var node in touched.Except(beam)) node.Drop();
            Rescale(beam);
            foreach (var node in beam) node.InBeam = true;
        }

        return [.. beam.Select(node => Text(node, lattice.Alphabet)).Select(text => (text, lattice.LogProbability(text))).OrderByDescending(each => each.Item2).ThenBy(each => each.text, StringComparer.Ordinal)];
    }

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
        private Dictionary<int, Node>? children;

        public Node? Parent { get; } = parent;

        public int Class { get; } = symbolClass;

        public int Number { get; } = number;

        public double Blank { get; set; }

        public double Symbol { get; set; }

        public double NextBlank { get; set; }

        public double NextSymbol { get; set; }

        public bool InBeam { get; set; }

        public bool Touched { get; set; }

        public double Sum => Blank + Symbol;

        public Node? Child(int symbolClass) => children?.GetValueOrDefault(symbolClass);

        public Node Grow(int symbolClass, int number) => (children ??= [])[symbolClass] = new(this, symbolClass, number);

        public void Settle()
        {
            (Blank, Symbol, NextBlank, NextSymbol, Touched) = (NextBlank, NextSymbol, 0, 0, false);
        }

        public void Drop() => (Blank, Symbol) = (0, 0);
    }
}
