using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;
using Lidoff.Talking;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>A command's streams in memory; tells when the ready line comes.</summary>
internal sealed class BenchTalk(string input = "") : ITalk
{
    private const string ReadyAt = "Lidoff is ready at ";

    private readonly TaskCompletionSource<Uri> ready = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ConcurrentQueue<string> said = new();
    private readonly ConcurrentQueue<string> lines = new();

    public Task<Uri> Ready => ready.Task;

    public IReadOnlyList<string> Said => [.. said];

    public IReadOnlyList<string> Out => [.. lines];

    public Stream Input { get; } = new MemoryStream(Encoding.UTF8.GetBytes(input));

    public void Say(string line) => said.Enqueue(line);

    public void Json(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        lines.Enqueue(Encoding.UTF8.GetString(stream.ToArray()));
    }

    public void Line(string line)
    {
        lines.Enqueue(line);
        if (line.StartsWith(ReadyAt, StringComparison.Ordinal)) ready.TrySetResult(new(line[ReadyAt.Length..]));
    }
}
