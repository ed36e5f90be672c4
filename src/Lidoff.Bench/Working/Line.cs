using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Working;

/// <summary>
/// One line for the dossier, put together key by key, as <c>lidoff note</c> would be given it: <c>Line.Of("spot").Set("spot", "U3")</c>.
/// What is empty or null is left out. Nothing is checked here: the reader of lines does that, for pages and files alike.
/// </summary>
public sealed class Line
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly List<(string Key, Action<Utf8JsonWriter> Write)> keys = [];

    private Line(string kind) => Set("kind", kind);

    /// <summary>A line of a kind.</summary>
    public static Line Of(string kind) => new(Guard.NotNull(kind));

    /// <summary>Two lines: one, and one that puts it in the place of an entry when they are the first of their input.</summary>
    public static IReadOnlyList<Line> InPlaceOf(string entry, Line line) => [line, Of("supersede").Set("target", entry).Set("by_line", 1L)];

    /// <summary>A text; nothing when it is empty.</summary>
    public Line Set(string key, string? value) => string.IsNullOrEmpty(value) ? this : With(key, json => json.WriteStringValue(value));

    /// <summary>A number; nothing when it is null.</summary>
    public Line Set(string key, double? value) => value is { } number ? With(key, json => json.WriteNumberValue(number)) : this;

    /// <summary>A whole number; nothing when it is null.</summary>
    public Line Set(string key, long? value) => value is { } number ? With(key, json => json.WriteNumberValue(number)) : this;

    /// <summary>A flag; nothing when it is null.</summary>
    public Line Set(string key, bool? value) => value is { } flag ? With(key, json => json.WriteBooleanValue(flag)) : this;

    /// <summary>A point in a picture, px from the top left corner.</summary>
    public Line Set(string key, double x, double y) => Set(key, [x, y]);

    /// <summary>A list of numbers; nothing when it is empty.</summary>
    public Line Set(string key, IReadOnlyList<double> values) => values.Count == 0 ? this : With(key, json =>
    {
        json.WriteStartArray();
        foreach (var value in values) json.WriteNumberValue(value);
        json.WriteEndArray();
    });

    /// <summary>Places in a picture, px; nothing when there are none.</summary>
    public Line Places(string key, IReadOnlyList<PicturePoint> points) => points.Count == 0 ? this : With(key, json =>
    {
        json.WriteStartArray();
        foreach (var point in points)
        {
            json.WriteStartArray();
            json.WriteNumberValue(point.X);
            json.WriteNumberValue(point.Y);
            json.WriteEndArray();
        }

        json.WriteEndArray();
    });

    /// <summary>A list of texts; nothing when it is empty.</summary>
    public Line Set(string key, IReadOnlyList<string> values) => values.Count == 0 ? this : With(key, json =>
    {
        json.WriteStartArray();
        foreach (var value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    });

    /// <summary>Anything else, written by <paramref name="write"/> as one JSON value.</summary>
    public Line With(string key, Action<Utf8JsonWriter> write)
    {
        keys.Add((Guard.NotNull(key), Guard.NotNull(write)));
        return this;
    }

    /// <summary>Lines as <c>note</c> reads them: a JSON object each.</summary>
    internal static ReadOnlyMemory<byte> Written(IEnumerable<Line> lines)
    {
        var buffer = new ArrayBufferWriter<byte>();
        foreach (var line in lines)
        {
            using (var json = new Utf8JsonWriter(buffer, Options))
            {
                json.WriteStartObject();
                foreach (var (key, write) in line.keys)
                {
                    json.WritePropertyName(key);
                    write(json);
                }

                json.WriteEndObject();
            }

            buffer.Write("\n"u8);
        }

        return buffer.WrittenMemory;
    }
}
