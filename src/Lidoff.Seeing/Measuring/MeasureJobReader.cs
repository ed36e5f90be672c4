using System.Globalization;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// Reads the job file of <c>lidoff measure</c>. Faults of the picture's name, the references and the settings refuse the whole job,
/// all at once; a fault of one target stays with that target.
/// </summary>
public static class MeasureJobReader
{
    private static readonly string[] JobKeys = ["format", "image", "reference", "click_u_px", "camera_distance_mm", "target"];
    private static readonly string[] ReferenceKeys = ["from", "to", "length_mm", "u_mm", "height_mm"];
    private static readonly string[] TargetKeys = ["id", "from", "to", "height_mm"];

    /// <summary>Reads a job.</summary>
    public static Outcome<MeasureJob> Read(ReadOnlySpan<byte> utf8)
    {
        var parsed = StrictJson.Parse(utf8);
        return parsed.Ok ? Read(parsed.Value) : Outcome<MeasureJob>.Failed(parsed.Faults);
    }

    private static Outcome<MeasureJob> Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            return new Fault("the job", "an object with image, reference and target", SeeingSentences.Wrong("The job", Found(root), "an object with image, reference and target"));
        }

        var faults = new List<Fault>();
        var unknown = new List<string>();
        var job = new JsonFields("", root, faults, unknown, JobKeys);
        var image = job.Text("image", "the picture's file name");
        var click = job.Number("click_u_px", "a number of zero or more, px", value => value >= 0, MeasureJob.DefaultClickPx);
        var camera = job.Optional("camera_distance_mm", "a number above zero, mm, or null", value => value > 0);
        var references = job.List("reference", "a list with at least one known length", least: 1)
            .Select((item, at) => Reference(new($"reference[{at}]", item, faults, unknown, ReferenceKeys))).ToList();
        var targets = job.List("target", "a list with at least one length to find", least: 1)
            .Select((item, at) => Target(item, at, unknown)).ToList();
        return faults.Count > 0
            ? Outcome<MeasureJob>.Failed(faults)
            : new MeasureJob
            {
                Image = image, References = references, Targets = targets, ClickPx = click, CameraDistanceMm = camera, UnknownKeys = unknown,
            };
    }

    private static ReferenceLength Reference(JsonFields fields) => new(
        fields.Point("from"),
        fields.Point("to"),
        fields.Number("length_mm", "a length above zero, mm", value => value > 0),
        fields.Number("u_mm", "a standard uncertainty of zero or more, mm", value => value >= 0, 0),
        fields.Number("height_mm", "a height above the board, mm", _ => true, 0));

    private static AskedTarget Target(JsonElement item, int at, List<string> unknown)
    {
        var faults = new List<Fault>();
        var fields = new JsonFields($"target[{at}]", item, faults, unknown, TargetKeys);
        var id = fields.Text("id", "a name, text");
        var target = new TargetLength(id, fields.Point("from"), fields.Point("to"), fields.Number("height_mm", "a height above the board, mm", _ => true, 0));
        var name = id.Length > 0 ? id : (at + 1).ToString(CultureInfo.InvariantCulture);
        return new(name, faults.Count > 0 ? Outcome<TargetLength>.Failed(faults) : target);
    }

    private static string Found(JsonElement element) => element.GetRawText();
}
