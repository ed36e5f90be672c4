using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>
/// Finds places for labels in a column left and a column right of a picture, so that no two label boxes touch and no two leaders cross.
/// <para>
/// Why no leaders cross: the points of the left column are never right of those of the right one, so leaders of different columns have
/// only that border in common. Within a column the ports lie on one upright line. The topmost free port takes the point that a ray
/// from it, turned from straight up, meets first: every other point then lies below that ray's line, as every other port does, and a
/// straight leader between two things below a line stays below it. All of it is computed in whole eighths of a px, so the comparison
/// is exact.
/// </para>
/// </summary>
/// <param name="Width">Width of the whole drawing, px.</param>
/// <param name="Height">Height of the whole drawing, px: the picture's, or more where a column needs it.</param>
/// <param name="PictureX">Left edge of the picture in the drawing, px.</param>
/// <param name="PictureY">Upper edge of the picture in the drawing, px.</param>
/// <param name="Places">A place for every wish, in the order of the wishes.</param>
public sealed record LabelLayout(double Width, double Height, double PictureX, double PictureY, IReadOnlyList<LabelPlace> Places)
{
    // Whole units make the turning exact; up to 2^19 px a product of two differences stays far below 2^63.
    private const double Unit = 8;

    /// <summary>Lays out. Points must lie in the picture; <paramref name="gap"/> is the air between a label, its leader and the picture, px.</summary>
    public static LabelLayout Of(double width, double height, IReadOnlyList<LabelWish> wishes, double gap)
    {
        Guard.Positive(width);
        Guard.Positive(height);
        Guard.Positive(gap);
        foreach (var wish in wishes)
        {
            Guard.That(wish.At.X >= 0 && wish.At.X <= width && wish.At.Y >= 0 && wish.At.Y <= height, "a point in the picture");
            Guard.Positive(wish.Width);
            Guard.Positive(wish.Height);
        }

        var (w, h, air) = (Up(width), Up(height), Up(gap));
        var points = wishes.Select((wish, index) => new Point(index, wish.Key, Near(wish.At.X), Near(wish.At.Y), Up(wish.Width), Up(wish.Height)))
            .OrderBy(point => point.X).ThenBy(point => point.Y).ThenBy(point => point.Key, StringComparer.Ordinal).ThenBy(point => point.Index).ToList();
        var slot = (points.Count > 0 ? points.Max(point => point.Height) : 0) + (air / 2);
        var split = Split(points, w, h, slot);
        List<Point> left = points[..split], right = points[split..];
        var tall = Math.Max(h, Math.Max(left.Count, right.Count) * slot);
        var (leftWidth, rightWidth) = (Column(left, air), Column(right, air));
        var (pictureX, pictureY) = (leftWidth, (tall - h) / 2);
        var places = new LabelPlace[wishes.Count];
        foreach (var (point, centre) in Joined(left, false, leftWidth - air, pictureX, pictureY, slot, tall))
        {
            places[point.Index] = Place(point, true, leftWidth - air - (air / 2) - point.Width, centre, leftWidth - air, pictureX, pictureY);
        }

        var rightPort = pictureX + w + air;
        foreach (var (point, centre) in Joined(right, true, rightPort, pictureX, pictureY, slot, tall))
        {
            places[point.Index] = Place(point, false, rightPort + (air / 2), centre, rightPort, pictureX, pictureY);
        }

        return new((leftWidth + w + rightWidth) / Unit, tall / Unit, pictureX / Unit, pictureY / Unit, places);
    }

    private static long Column(List<Point> points, long air) => points.Count == 0 ? 0 : points.Max(point => point.Width) + (3 * air);

    private static LabelPlace Place(Point point, bool left, long x, long centre, long port, long pictureX, long pictureY) => new(
        point.Key, left, x / Unit, (centre - (point.Height / 2)) / Unit, point.Width / Unit, point.Height / Unit, new(port / Unit, centre / Unit), new((pictureX + point.X) / Unit, (pictureY + point.Y) / Unit));

    /// <summary>
    /// How many of the points, from the left, go to the left column: those left of the middle, unless a column would be fuller than
    /// the picture is high while the other has room.
    /// </summary>
    private static int Split(List<Point> points, long width, long height, long slot)
    {
        var middle = points.Count(point => point.X * 2 < width);
        var room = (int)Math.Max(1, height / Math.Max(1, slot));
        var (least, most) = (points.Count - room, room);
        if (least > most) return points.Count / 2;
        return Math.Clamp(middle, Math.Max(0, least), Math.Min(points.Count, most));
    }

    /// <summary>The points of one column with the height of their ports: heights near the points' own, then joined without a crossing.</summary>
    private static IEnumerable<(Point Point, long Centre)> Joined(List<Point> column, bool right, long port, long pictureX, long pictureY, long slot, long tall)
    {
        var free = column.ToList();
        foreach (var centre in Ports([.. column.Select(point => pictureY + point.Y).Order()], slot, tall))
        {
            Point? first = null;
            foreach (var point in free)
            {
                if (first is null || Earlier(point, first, centre)) first = point;
            }

            free.Remove(first!);
            yield return (first!, centre);
        }

        long Away(Point point) => right ? port - pictureX - point.X : pictureX + point.X - port;

        // The ray turns from straight up to straight down; of points on one ray the nearest is met first.
        bool Earlier(Point one, Point other, long centre)
        {
            var (oneY, otherY) = (pictureY + one.Y - centre, pictureY + other.Y - centre);
            var turn = (oneY * Away(other)) - (otherY * Away(one));
            return turn < 0 || (turn == 0 && Away(one) < Away(other));
        }
    }

    /// <summary>Centres of slots of one height, none overlapping, all inside, as near to the wanted ones as that allows (least squares).</summary>
    private static List<long> Ports(IReadOnlyList<long> wanted, long slot, long tall)
    {
        // Slots that would overlap are pooled into one block around their mean (pool adjacent violators).
        var blocks = new List<(int Count, long Sum, long Top)>();
        foreach (var centre in wanted)
        {
            var block = (Count: 1, Sum: centre, Top: Top(1, centre, slot, tall));
            while (blocks.Count > 0 && blocks[^1].Top + (blocks[^1].Count * slot) > block.Top)
            {
                var above = blocks[^1];
                blocks.RemoveAt(blocks.Count - 1);
                // The lower block's slots begin that much further down.
                var (count, sum) = (above.Count + block.Count, above.Sum + block.Sum - (block.Count * above.Count * slot));
                block = (count, sum, Top(count, sum, slot, tall));
            }

            blocks.Add(block);
        }

        return [.. blocks.SelectMany(block => Enumerable.Range(0, block.Count).Select(i => block.Top + (i * slot) + (slot / 2)))];
    }

    /// <summary>Upper edge of a block whose members wish, brought back to the first one's place, <paramref name="sum"/> in all.</summary>
    private static long Top(int count, long sum, long slot, long tall) => Math.Clamp((long)Math.Floor((double)sum / count) - (slot / 2), 0, Math.Max(0, tall - (count * slot)));

    private static long Near(double value) => (long)Math.Round(value * Unit);

    private static long Up(double value) => (long)Math.Ceiling(value * Unit);

    private sealed record Point(int Index, string Key, long X, long Y, long Width, long Height);
}
