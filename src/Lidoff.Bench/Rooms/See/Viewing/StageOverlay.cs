using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Telling.Drawing.Labelling;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>Everything drawn over a picture.</summary>
/// <param name="Spots">Letters on leader lines.</param>
/// <param name="Lines">Known and wanted lengths.</param>
/// <param name="Marks">Landmarks, and places carried over from other pictures.</param>
/// <param name="PxPerMm">Draws a scale bar of a round length; null draws none.</param>
/// <param name="Doubt">What stands beside the bar's length, " ± 3 %"; empty where the eye could not tell.</param>
public sealed record StageOverlay(ValueList<StageSpot> Spots, ValueList<StageLine> Lines, ValueList<StageMark> Marks, double? PxPerMm = null, string Doubt = "")
{
    /// <summary>Over a picture, with a spot selected (empty for none); lengths may be left away for a picture to show around.</summary>
    public static StageOverlay Of(PictureView view, string selected, bool withLines = true) => new(
        [
            .. view.Spots.Select(spot => Spot("spot:", spot, selected)),
            // What was outlined alone is no handle to move: its sides are.
            .. view.Outlined.Select(spot => Spot("outlined:", spot, selected)),
        ],
        withLines ? [.. view.Scales.Select(Scale), .. view.Lengths.Select(length => Length(length, selected)), .. view.Shapes.SelectMany(shape => Shape(shape, selected)),
            .. view.Spots.SelectMany(spot => Box(spot, selected)),
            // What was read on the spot that is looked at; all of them would hide what they stand on.
            .. view.Read.Where(read => read.Spot == selected).SelectMany((read, at) => read.Sides(at))] : [],
        withLines ? [.. view.Board.Landmarks.Select(Landmark), .. view.Board.Ghosts.Select(Ghost), .. view.Scales.SelectMany(FoundOver.Of)] : [],
        // Who looks on sees no clicked lengths, but should see how large it is.
        withLines ? null : view.Bar?.PxPerMm,
        !withLines && view.Bar is { Doubtful: true } scale ? " " + LabelledSentences.Doubt(scale.RelativeU) : "");

    private static StageSpot Spot(string kind, PointedRow spot, string selected) => new(kind + spot.Entry.Hex, Shown.Of(spot.Value.Spot), Shown.Of(spot.Value.Role), spot.At.X, spot.At.Y, spot.Value.Spot == selected);

    private static StageMark Landmark(LandmarkRow row) => new("landmark:" + row.Entry.Hex, Shown.Of(row.Value.Landmark), row.At.X, row.At.Y, row.Fits ? "landmark" : "misfit", 0);

    private static StageMark Ghost(GhostRow ghost) => new("ghost:" + ghost.Spot, Shown.Of(ghost.Spot) + "?", ghost.At.At.X, ghost.At.At.Y, "ghost", ghost.At.Reach);

    private static StageLine Scale(ScaleRow row)
    {
        var (from, to) = (row.Value.Reference.From, row.Value.Reference.To);
        // A target was found and not clicked: its ends are not for moving.
        return new((row.Value.Reference.Target is null ? "scale:" : "target:") + row.Entry.Hex, from.X, from.Y, to.X, to.Y, "scale", row.Says, false);
    }

    // From place to place, closed where it goes around something; the words stand at the first side.
    private static IEnumerable<StageLine> Shape(ShapeRow row, string selected)
    {
        var points = row.Value.Points;
        var sides = row.Value.Shape is ShapeKind.Circle or ShapeKind.Area ? points.Count : points.Count - 1;
        for (var i = 0; i < sides; i++)
        {
            var (from, to) = (points[i], points[(i + 1) % points.Count]);
            yield return new($"shape:{row.Entry.Hex}:{i}", from.X, from.Y, to.X, to.Y, "length", i == 0 ? row.Found.Value : "", row.Value.Spot == selected);
        }
    }

    private static IEnumerable<StageLine> Box(PointedRow row, string selected)
    {
        if (row.Value.Box is not { } box) return [];
        var (right, foot) = (box.X + box.Width, box.Y + box.Height);
        (double X, double Y)[] corners = [(box.X, box.Y), (right, box.Y), (right, foot), (box.X, foot)];
        return corners.Select((from, i) => new StageLine($"box:{row.Entry.Hex}:{i}", from.X, from.Y, corners[(i + 1) % 4].X, corners[(i + 1) % 4].Y, "box", "", row.Value.Spot == selected));
    }

    private static StageLine Length(LengthRow row, string selected)
    {
        var clicked = row.Value.InPicture!;
        return new("length:" + row.Entry.Hex, clicked.From.X, clicked.From.Y, clicked.To.X, clicked.To.Y, "length", row.Found.Value, row.Value.Spot == selected);
    }
}
