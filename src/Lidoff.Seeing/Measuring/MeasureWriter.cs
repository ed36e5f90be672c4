using System.Text.Json;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Measuring;

/// <summary>Writes measured targets as docs/contracts.md lays them down: keys in fixed order, a bad target's error in its place.</summary>
public static class MeasureWriter
{
    /// <summary>Writes the <c>"targets"</c> list into the object that the caller has begun.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="targets">What was measured.</param>
    /// <param name="snapped">What was moved onto edges, one for each target; none where nothing was asked for.</param>
    public static void Write(Utf8JsonWriter json, IReadOnlyList<MeasuredTarget> targets, IReadOnlyList<SnappedTarget?>? snapped = null)
    {
        json.WriteStartArray("targets");
        for (var i = 0; i < targets.Count; i++)
        {
            var target = targets[i];
            json.WriteStartObject();
            if (target.Shape is { } shape) Shape(json, shape);
            else if (target.Body is { } body) Body(json, body);
            else if (target.Length.TryValue(out var length)) Length(json, length);
            else Faults(json, target.Id, target.Length.Faults);
            if (target.Ok && snapped is not null && i < snapped.Count && snapped[i] is { } moved) Edges(json, moved);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Length(Utf8JsonWriter json, MeasuredLength length)
    {
        json.WriteString("id", length.Id);
        Value(json, length);
        Warnings(json, length.Warnings);
    }

    private static void Body(Utf8JsonWriter json, MeasuredBody body)
    {
        json.WriteString("id", body.Id);
        json.WriteString("kind", "body");
        foreach (var (name, side) in new[] { ("length", body.Length), ("width", body.Width) })
        {
            json.WriteStartObject(name);
            Value(json, side);
            json.WriteEndObject();
        }

        Warnings(json, body.Warnings);
    }

    private static void Value(Utf8JsonWriter json, MeasuredLength length)
    {
        json.WriteNumber("value_mm", length.ValueMm);
        json.WriteNumber("u_mm", length.UMm);
        json.WriteStartArray("interval90_mm");
        json.WriteNumberValue(length.LowMm);
        json.WriteNumberValue(length.HighMm);
        json.WriteEndArray();
        Snap(json, length.Snap);
    }

    private static void Shape(Utf8JsonWriter json, MeasuredShape shape)
    {
        var unit = shape.Kind switch { ShapeKind.Angle => "deg", ShapeKind.Area => "mm2", _ => "mm" };
        json.WriteString("id", shape.Id);
        json.WriteString("kind", shape.Kind switch { ShapeKind.Circle => "circle", ShapeKind.Pitch => "pitch", ShapeKind.Angle => "angle", _ => "area" });
        json.WriteNumber("value_" + unit, shape.Value);
        json.WriteNumber("u_" + unit, shape.U);
        json.WriteStartArray("interval90_" + unit);
        json.WriteNumberValue(shape.Low);
        json.WriteNumberValue(shape.High);
        json.WriteEndArray();
        if (shape.Kind == ShapeKind.Pitch)
        {
            json.WriteNumber("gaps", shape.Gaps);
            Snap(json, shape.Snap);
        }

        Warnings(json, shape.Warnings);
    }

    private static void Edges(Utf8JsonWriter json, SnappedTarget moved)
    {
        json.WriteStartObject("edges");
        if (moved.Length is { } length)
        {
            End(json, "from", length.From);
            End(json, "to", length.To);
        }

        if (moved.Circle is { } circle)
        {
            json.WriteBoolean("found", circle.OnEdge);
            json.WriteNumber("moved_px", Math.Round(circle.ShiftPx, 3));
            json.WriteNumber("u_px", Math.Round(circle.URadiusPx, 3));
            if (!circle.OnEdge) json.WriteString("say", circle.Trouble);
        }

        if (moved.Body is { } body)
        {
            json.WriteStartArray("sides");
            foreach (var side in body.Sides)
            {
                json.WriteStartObject();
                json.WriteBoolean("found", side.OnEdge);
                json.WriteNumber("moved_px", Math.Round(side.OffsetPx, 3));
                json.WriteNumber("u_px", Math.Round(side.UPx, 3));
                if (!side.OnEdge) json.WriteString("say", side.Trouble);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("corners");
            foreach (var corner in body.Corners) At(json, corner);
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void At(Utf8JsonWriter json, PicturePoint at)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Math.Round(at.X, 3));
        json.WriteNumberValue(Math.Round(at.Y, 3));
        json.WriteEndArray();
    }

    private static void End(Utf8JsonWriter json, string name, FittedEnd end)
    {
        json.WriteStartObject(name);
        json.WriteBoolean("found", end.OnEdge);
        json.WritePropertyName("at");
        At(json, end.Point);
        json.WriteNumber("moved_px", Math.Round(end.ShiftPx, 3));
        json.WriteNumber("u_px", Math.Round(end.UPx, 3));
        if (!end.OnEdge) json.WriteString("say", end.Trouble);
        json.WriteEndObject();
    }

    private static void Snap(Utf8JsonWriter json, StandardSnap? snap)
    {
        if (snap is null)
        {
            json.WriteNull("snap");
            return;
        }

        json.WriteStartObject("snap");
        json.WriteNumber("mm", snap.Mm);
        json.WriteString("kind", snap.Kind);
        json.WriteNumber("likelihood_ratio", snap.LikelihoodRatio);
        json.WriteEndObject();
    }

    private static void Warnings(Utf8JsonWriter json, IReadOnlyList<MeasureWarning> warnings)
    {
        json.WriteStartArray("warnings");
        foreach (var warning in warnings)
        {
            json.WriteStartObject();
            json.WriteString("code", warning.Code);
            json.WriteString("say", warning.Say);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Faults(Utf8JsonWriter json, string id, IReadOnlyList<Fault> faults)
    {
        json.WriteNumber("format", 1);
        json.WriteString("id", id);
        json.WritePropertyName("error");
        One(json, faults[0]);
        if (faults.Count < 2) return;
        json.WriteStartArray("errors");
        foreach (var fault in faults) One(json, fault);
        json.WriteEndArray();
    }

    private static void One(Utf8JsonWriter json, Fault fault)
    {
        json.WriteStartObject();
        json.WriteString("where", fault.Where);
        json.WriteString("expected", fault.Expected);
        json.WriteString("say", fault.Say);
        json.WriteEndObject();
    }
}
