using System.Text;
using System.Text.Json;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>Short ways to a measured length.</summary>
internal static class Measured
{
    public static readonly PictureFrame Frame = new(4000, 3000);

    public static ReferenceLength Reference(double x1, double y1, double x2, double y2, double mm, double u = 0, double height = 0) =>
        new(new(x1, y1), new(x2, y2), mm, u, height);

    public static MeasuredLength One(IReadOnlyList<ReferenceLength> references, TargetLength target, double click = 1, double? camera = null, PictureFrame? frame = null)
    {
        var measured = All(references, [target], click, camera, frame);
        Assert.True(measured[0].Length.Ok, measured[0].Length.Ok ? "" : measured[0].Length.Faults[0].Say);
        return measured[0].Length.Value;
    }

    public static IReadOnlyList<MeasuredTarget> All(
        IReadOnlyList<ReferenceLength> references, IReadOnlyList<TargetLength> targets, double click = 1, double? camera = null, PictureFrame? frame = null)
    {
        var job = new MeasureJob
        {
            Image = "x", References = references, Targets = [.. targets.Select(target => new AskedTarget(target.Id, target))], ClickPx = click, CameraDistanceMm = camera,
        };
        var run = Measurement.Run(job, frame ?? Frame);
        Assert.True(run.Ok, run.Ok ? "" : run.Faults[0].Say);
        return run.Value;
    }

    public static string Json(IReadOnlyList<MeasuredTarget> targets)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            MeasureWriter.Write(json, targets);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
