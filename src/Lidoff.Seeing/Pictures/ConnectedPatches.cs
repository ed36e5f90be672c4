using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Pictures;

/// <summary>Cells of a grid that hang together, corners included.</summary>
public static class ConnectedPatches
{
    /// <summary>The patches in the order of their first cells, each its cells outwards from that one.</summary>
    /// <param name="on">Row after row, which cells count.</param>
    /// <param name="columns">Cells of a row.</param>
    public static List<List<int>> Of(bool[] on, int columns)
    {
        var rows = Guard.NotNull(on).Length / columns;
        var left = (bool[])on.Clone();
        var found = new List<List<int>>();
        for (var start = 0; start < left.Length; start++)
        {
            if (!left[start]) continue;
            left[start] = false;
            List<int> patch = [start];
            for (var next = 0; next < patch.Count; next++)
            {
                var (x, y) = (patch[next] % columns, patch[next] / columns);
                for (var ny = Math.Max(0, y - 1); ny <= Math.Min(rows - 1, y + 1); ny++)
                {
                    for (var nx = Math.Max(0, x - 1); nx <= Math.Min(columns - 1, x + 1); nx++)
                    {
                        var cell = (ny * columns) + nx;
                        if (!left[cell]) continue;
                        left[cell] = false;
                        patch.Add(cell);
                    }
                }
            }

            found.Add(patch);
        }

        return found;
    }
}
