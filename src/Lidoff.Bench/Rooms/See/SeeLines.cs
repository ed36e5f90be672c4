using System.Globalization;
using Lidoff.Bench.Rooms.See.Typed;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See;

/// <summary>What was stored, written again as lines, so that one thing of it can be put right in its place and the rest stays.</summary>
internal static class SeeLines
{
    /// <summary>A spot in the place of the one it was.</summary>
    public static IReadOnlyList<Line> Again(PointedRow row, SpotSighting now)
    {
        var line = Line.Of("spot").Set("specimen", row.Specimen).Set("spot", now.Spot).Set("role", now.Role).Set("why", now.Why).Set("class", now.Class).Set("picture", now.Picture);
        if (now.At is { } at) line.Set("point", at.X, at.Y);
        else if (now.Box is { } box) line.Set("box", [box.X, box.Y, box.Width, box.Height]);
        return Line.InPlaceOf(row.Entry.Hex, line);
    }

    /// <summary>What a handle ("spot:…", "scale:…:from", "length:…:to") becomes at another place; no lines where it is gone.</summary>
    public static (string Says, IReadOnlyList<Line> Lines) Moved(PictureView view, string id, PicturePoint to)
    {
        var parts = id.Split(':');
        if (parts is ["spot", _] && view.Spots.FirstOrDefault(each => each.Entry.Hex == parts[1]) is { } spot)
        {
            var value = spot.Value;
            var moved = value.Box is { } box ? value with { Box = box with { X = to.X - (box.Width / 2), Y = to.Y - (box.Height / 2) } } : value with { At = to };
            return ($"{value.Spot} moved", Again(spot, moved));
        }

        if (parts is ["scale", _, _] && view.Scales.FirstOrDefault(each => each.Entry.Hex == parts[1]) is { } scale)
        {
            var known = scale.Value.Reference;
            var (from, end) = parts[2] == "from" ? (to, known.To) : (known.From, to);
            var line = Line.Of("scale").Set("specimen", scale.Specimen).Set("picture", scale.Value.Picture).Set("from", from.X, from.Y).Set("to", end.X, end.Y)
                .Set("length_mm", known.LengthMm).Set("u_mm", known.UMm).Set("height_mm", known.HeightMm).Set("camera_distance_mm", scale.Value.CameraDistanceMm).Set("click_u_px", known.ClickPx).Set("carried_from", scale.Value.CarriedFrom).Set("package", scale.Value.Package);
            return ("end of the scale moved", Line.InPlaceOf(scale.Entry.Hex, line));
        }

        if (parts is ["length", _, _] && view.Lengths.FirstOrDefault(each => each.Entry.Hex == parts[1]) is { } length)
        {
            var clicked = length.Value.InPicture!;
            var (from, end) = parts[2] == "from" ? (to, clicked.To) : (clicked.From, to);
            var line = Line.Of("length").Set("specimen", length.Specimen).Set("spot", length.Value.Spot).Set("what", length.Value.What).Set("picture", clicked.Picture)
                .Set("from", from.X, from.Y).Set("to", end.X, end.Y).Set("height_mm", clicked.HeightMm).Set("click_u_px", clicked.ClickPx);
            return ($"end of {length.Value.What} of {length.Value.Spot} moved", Line.InPlaceOf(length.Entry.Hex, line));
        }

        if (parts is ["shape", _, _, _] && view.Shapes.FirstOrDefault(each => each.Entry.Hex == parts[1]) is { } shape
            && int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var side) && side < shape.Value.Points.Count)
        {
            var value = shape.Value;
            var at = (side + (parts[3] == "from" ? 0 : 1)) % value.Points.Count;
            var line = ShapeTyped.Of(value.Spot, value.What, value.Shape, value.Picture, [.. value.Points.Select((point, i) => i == at ? to : point)], value.HeightMm, value.ClickPx).Set("specimen", shape.Specimen);
            return ($"place of {value.What} of {value.Spot} moved", Line.InPlaceOf(shape.Entry.Hex, line));
        }

        if (parts is ["landmark", _] && view.Board.Landmarks.FirstOrDefault(each => each.Entry.Hex == parts[1]) is { } landmark)
        {
            var value = landmark.Value;
            var line = Line.Of("landmark").Set("specimen", landmark.Specimen).Set("landmark", value.Landmark).Set("picture", value.Picture).Set("point", to.X, to.Y).Set("u_px", value.UPx);
            if (value is { XMm: { } x, YMm: { } y }) line.Set("mm", x, y).Set("u_mm", value.UMm);
            return ($"landmark {value.Landmark} moved", Line.InPlaceOf(landmark.Entry.Hex, line));
        }

        return ("", []);
    }
}
