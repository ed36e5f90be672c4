using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>What two corners go around: nothing typed for the spot that is meant, else a spot as it is typed at a point (<c>U7</c>, <c>J flat cable</c>). Its mark is then read within the box.</summary>
/// <param name="Spot">The spot.</param>
/// <param name="Box">The box, px.</param>
public sealed record BoxTyped(SpotTyped Spot, PixelBox Box)
{
    /// <summary>The box of two corners across from one another; null for fewer or more places, or where they lie in one row or column.</summary>
    public static PixelBox? Of(IReadOnlyList<PicturePoint> corners)
    {
        if (Guard.NotNull(corners).Count != 2) return null;
        var (a, b) = (corners[0], corners[1]);
        var box = new PixelBox(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Round(Math.Abs(a.X - b.X), 2), Math.Round(Math.Abs(a.Y - b.Y), 2));
        return box.Width > 0 && box.Height > 0 ? box : null;
    }

    /// <summary>Whether a place lies in a box.</summary>
    public static bool Holds(PixelBox box, PicturePoint at) => at.X >= box.X && at.X <= box.X + box.Width && at.Y >= box.Y && at.Y <= box.Y + box.Height;

    /// <summary>The spot meant where none is typed: the selected one where it was pointed at in the box, else the one that was, else the selected one; empty for none.</summary>
    public static string Meant(PixelBox? box, string selected, IEnumerable<PointedRow> here)
    {
        var within = box is { } around ? Guard.NotNull(here).Where(spot => Holds(around, spot.At)).Select(spot => spot.Value.Spot).Distinct(StringComparer.Ordinal).ToList() : [];
        return within is [var one] && one != selected ? one : selected;
    }

    /// <summary>Reads the line; <paramref name="meant"/> is the spot where none is typed, empty for none.</summary>
    public static Outcome<BoxTyped> Read(string? text, string meant, IReadOnlyList<PicturePoint> corners, IReadOnlyCollection<string> taken)
    {
        if (Of(corners) is not { } box) return SeeSentences.NoBox;
        if (!string.IsNullOrWhiteSpace(text)) return new BoxTyped(SpotTyped.Read(text, "", taken), box);
        return Guard.NotNull(meant).Length > 0 ? new BoxTyped(new(meant, "", "", ""), box) : SeeSentences.WhichSpot;
    }

    /// <summary>The lines to store: where the spot was pointed at in the picture the box takes the place of that, and what was said of it stays.</summary>
    public IReadOnlyList<Line> Lines(string sha256, IEnumerable<PointedRow> here)
    {
        if (Guard.NotNull(here).LastOrDefault(row => row.Value.Spot == Spot.Spot) is not { } row)
        {
            return [Line.Of("spot").Set("spot", Spot.Spot).Set("role", Spot.Role).Set("why", Spot.Why).Set("class", Spot.Class).Set("picture", sha256).Set("box", [Box.X, Box.Y, Box.Width, Box.Height])];
        }

        static string Now(string typed, string before) => typed.Length > 0 ? typed : before;
        return SeeLines.Again(row, row.Value with { Role = Now(Spot.Role, row.Value.Role), Why = Now(Spot.Why, row.Value.Why), Class = Now(Spot.Class, row.Value.Class), At = null, Box = Box });
    }
}
