using System.Globalization;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Carrying;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// Reads the job file of <c>lidoff measure</c>. Faults of the picture's name, the references and the settings refuse the whole job,
/// all at once; a fault of one target stays with that target.
/// </summary>
public static class MeasureJobReader
{
    private static readonly string[] JobKeys = ["format", "image", "reference", "click_u_px", "camera_distance_mm", "target", "points", "ruler", "pattern", "calibration", "snap_edges"];
    private static readonly string[] PatternKeys = ["pitch_mm", "u_mm", "height_mm"];
    private static readonly string[] CalibrationKeys = ["image", .. PatternKeys];
    private static readonly string[] RulerKeys = ["from", "to", "tick_mm", "height_mm"];
    private static readonly string[] PointKeys = ["at", "mm", "u_mm"];
    private static readonly string[] ReferenceKeys = ["from", "to", "length_mm", "u_mm", "height_mm"];
    private static readonly string[] TargetKeys = ["id", "from", "to", "height_mm", "kind", "points", "box", "u_px"];

    private static readonly (string Word, string Value)[] Kinds = [("circle", "circle"), ("pitch", "pitch"), ("angle", "angle"), ("area", "area"), ("body", "body")];

    private const int MostPlaces = 500;

    /// <summary>Reads a job.</summary>
    public static Outcome<MeasureJob> Read(ReadOnlySpan<byte> utf8) => StrictJson.Parse(utf8).Then(Read);

    private static Outcome<MeasureJob> Read(JsonElement root)
    {
        var reader = new PayloadReader(root);
        var unknown = new List<string>();
        Unknown(root, "", JobKeys, unknown);
        var image = reader.Text("image");
        var click = reader.OptionalNumber("click_u_px", NumberRange.NotNegative) ?? MeasureJob.DefaultClickPx;
        var camera = reader.OptionalNumber("camera_distance_mm", NumberRange.Positive);
        var snap = reader.OptionalFlag("snap_edges") ?? false;
        var points = reader.Has("points") ? reader.Inners("points", least: 1, most: KnownPoints.Most).Select(Known).ToList() : [];
        if (reader.Raw("points") is { ValueKind: JsonValueKind.Array } places) UnknownIn(places, "points", PointKeys, unknown);
        var find = reader.Raw("ruler") is { ValueKind: JsonValueKind.String } word && word.ValueEquals("find");
        var rulers = reader.Raw("ruler") is { ValueKind: JsonValueKind.Array } ? reader.Inners("ruler", least: 1).Select(Ruler).ToList() : [];
        if (reader.Has("ruler") && !find && reader.Raw("ruler") is not { ValueKind: JsonValueKind.Array }) reader.Fail("ruler", "the word find or a list of rulers, each with from and to");
        if (reader.Raw("ruler") is { ValueKind: JsonValueKind.Array } rows) UnknownIn(rows, "ruler", RulerKeys, unknown);
        var pattern = reader.Inner("pattern") is { } asks ? Pattern(asks) : null;
        if (reader.Raw("pattern") is { } grid) Unknown(grid, "pattern.", PatternKeys, unknown);
        var calibration = reader.Inner("calibration") is { } other ? new AskedCalibration(other.Text("image"), Pattern(other)) : null;
        if (reader.Raw("calibration") is { } sheet) Unknown(sheet, "calibration.", CalibrationKeys, unknown);
        var references = reader.Has("reference") ? reader.Inners("reference", least: 1).Select(Reference).ToList() : [];
        if (!reader.Has("reference") && !reader.Has("points") && !reader.Has("ruler") && !reader.Has("pattern") && !reader.Has("calibration")) reader.Fail(SeeingSentences.NoKnownLength());
        if (reader.Raw("reference") is { ValueKind: JsonValueKind.Array } list) UnknownIn(list, "reference", ReferenceKeys, unknown);
        var targets = new List<AskedTarget>();
        if (reader.Raw("target") is { ValueKind: JsonValueKind.Array } asked && asked.GetArrayLength() > 0)
        {
            UnknownIn(asked, "target", TargetKeys, unknown);
            targets.AddRange(asked.EnumerateArray().Select(Target));
        }
        else
        {
            reader.Fail("target", "a list of at least one length to find");
        }

        return reader.Done(() => new MeasureJob
        {
            Image = image, References = references, KnownPoints = points, Rulers = rulers, FindRulers = find, Pattern = pattern, Calibration = calibration, Targets = targets, ClickPx = click, CameraDistanceMm = camera, SnapEdges = snap, UnknownKeys = unknown,
        });
    }

    private static AskedPattern Pattern(PayloadReader reader) => new(reader.OptionalNumber("pitch_mm", NumberRange.Positive), reader.OptionalNumber("u_mm", NumberRange.NotNegative), reader.OptionalNumber("height_mm") ?? 0);

    private static ReferenceLength Reference(PayloadReader reader) => new(
        Point(reader, "from"),
        Point(reader, "to"),
        reader.Number("length_mm", NumberRange.Positive),
        reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? 0,
        reader.OptionalNumber("height_mm") ?? 0);

    private static AskedTarget Target(JsonElement item, int at)
    {
        var reader = new PayloadReader(item);
        var id = reader.Text("id");
        if (reader.Has("kind") || reader.Has("points") || reader.Has("box")) return Shape(reader, id, at);
        var target = new TargetLength(id, Point(reader, "from"), Point(reader, "to"), reader.OptionalNumber("height_mm") ?? 0);
        return new(id.Length > 0 ? id : (at + 1).ToString(CultureInfo.InvariantCulture), reader.Done(() => target));
    }

    private static AskedTarget Shape(PayloadReader reader, string id, int at)
    {
        var word = reader.OneOf("kind", Kinds);
        if (word == "body") return Body(reader, id, at);
        var kind = word switch { "pitch" => ShapeKind.Pitch, "angle" => ShapeKind.Angle, "area" => ShapeKind.Area, _ => ShapeKind.Circle };
        var points = reader.Points("points", least: 3, most: kind == ShapeKind.Angle ? 3 : MostPlaces).Select(point => new PicturePoint(point.X, point.Y)).ToList();
        var shape = new TargetShape(id, kind, points, reader.OptionalNumber("height_mm") ?? 0);
        var read = reader.Done(() => shape);
        var name = id.Length > 0 ? id : (at + 1).ToString(CultureInfo.InvariantCulture);
        return read.Ok ? AskedTarget.Of(shape) : new(name, Outcome<TargetLength>.Failed(read.Faults));
    }

    private static AskedTarget Body(PayloadReader reader, string id, int at)
    {
        var boxed = reader.Has("box");
        if (boxed && reader.Has("points")) reader.Fail("box", "alone: it stands in the place of points");
        var box = boxed ? reader.Numbers("box", least: 4, most: 4) : [];
        if (box.Count == 4 && (box[2] <= 0 || box[3] <= 0)) reader.Fail("box", "four numbers: left, top, width and height, the last two above 0");
        List<PicturePoint> corners = box.Count == 4
            ? [new(box[0], box[1]), new(box[0] + box[2], box[1]), new(box[0] + box[2], box[1] + box[3]), new(box[0], box[1] + box[3])]
            : boxed ? [] : [.. reader.Points("points", least: 3, most: 4).Select(point => new PicturePoint(point.X, point.Y))];
        var body = new TargetBody(id, corners, reader.OptionalNumber("height_mm") ?? 0, reader.OptionalNumber("u_px", NumberRange.NotNegative) ?? (boxed ? TargetBody.BoxPx : null), boxed);
        var read = reader.Done(() => body);
        return read.Ok ? AskedTarget.OfBody(body) : new(id.Length > 0 ? id : (at + 1).ToString(CultureInfo.InvariantCulture), Outcome<TargetLength>.Failed(read.Faults));
    }

    private static AskedRuler Ruler(PayloadReader reader) => new(
        Point(reader, "from"), Point(reader, "to"), reader.OptionalNumber("tick_mm", NumberRange.Positive), reader.OptionalNumber("height_mm") ?? 0);

    private static KnownPoint Known(PayloadReader reader)
    {
        var (x, y) = reader.Pair("mm");
        return new(Point(reader, "at"), x, y, reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? 0);
    }

    private static PicturePoint Point(PayloadReader reader, string key)
    {
        var (x, y) = reader.Point(key);
        return new(x, y);
    }

    private static void UnknownIn(JsonElement list, string place, string[] known, List<string> unknown)
    {
        var at = 0;
        foreach (var item in list.EnumerateArray()) Unknown(item, string.Create(CultureInfo.InvariantCulture, $"{place}[{at++}]."), known, unknown);
    }

    private static void Unknown(JsonElement item, string place, string[] known, List<string> unknown)
    {
        if (item.ValueKind != JsonValueKind.Object) return;
        unknown.AddRange(item.EnumerateObject().Where(property => !known.Contains(property.Name)).Select(property => place + property.Name));
    }
}
