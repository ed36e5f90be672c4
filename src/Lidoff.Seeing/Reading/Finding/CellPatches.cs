namespace Lidoff.Seeing.Reading.Finding;

/// <summary>Cells of a map above a threshold that hang together, corners included.</summary>
internal static class CellPatches
{
    /// <summary>The patches, each its cells, in the order of their first cell.</summary>
    public static List<List<int>> Of(double[] map, int columns, double threshold)
    {
        var rows = map.Length / columns;
        var seen = new bool[map.Length];
        var patches = new List<List<int>>();
        var stack = new Stack<int>();
        for (var start = 0; start < map.Length; start++)
        {
            if (seen[start] || map[start] < threshold) continue;
            var patch = new List<int>();
            seen[start] = true;
            stack.Push(start);
            while (stack.TryPop(out var cell))
            {
                patch.Add(cell);
                var (x, y) = (cell % columns, cell / columns);
                for (var ny = Math.Max(0, y - 1); ny <= Math.Min(rows - 1, y + 1); ny++)
                {
                    for (var nx = Math.Max(0, x - 1); nx <= Math.Min(columns - 1, x + 1); nx++)
                    {
                        var next = (ny * columns) + nx;
                        if (seen[next] || map[next] < threshold) continue;
                        seen[next] = true;
                        stack.Push(next);
                    }
                }
            }

            patch.Sort();
            patches.Add(patch);
        }

        return patches;
    }
}
