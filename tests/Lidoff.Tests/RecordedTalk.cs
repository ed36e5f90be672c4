using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Talking;

namespace Lidoff.Tests;

/// <summary>Keeps what a command said, for tests that start one like the real thing.</summary>
internal sealed class RecordedTalk : ITalk
{
    public List<string> Said { get; } = [];

    public List<string> Out { get; } = [];

    public Stream Input { get; init; } = Stream.Null;

    public void Say(string line) => Said.Add(SafeWords.Of(line));

    public void Line(string line) => Out.Add(SafeWords.Of(line));

    public void Json(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", 1);
            write(json);
            json.WriteEndObject();
        }

        Out.Add(Encoding.UTF8.GetString(stream.ToArray()));
    }
}
