using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Lidoff.Talking;

/// <summary>Talks over the process's own streams: UTF-8 without mark, '\n' line ends, no culture.</summary>
public sealed class ConsoleTalk : ITalk, IDisposable
{
    private static readonly JsonWriterOptions Options = new()
    {
        // JSON on a terminal or a pipe, never inside HTML: µ, Ω and < stay readable; control characters are escaped all the same.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly Stream output = new BufferedStream(Console.OpenStandardOutput(), 1 << 16);
    private readonly Stream errors = Console.OpenStandardError();
    private Stream? input;

    /// <inheritdoc/>
    public Stream Input => input ??= Console.OpenStandardInput();

    /// <inheritdoc/>
    public void Say(string line)
    {
        errors.Write(Encoding.UTF8.GetBytes(SafeWords.Of(line) + "\n"));
        errors.Flush();
    }

    /// <inheritdoc/>
    public void Json(Action<Utf8JsonWriter> write)
    {
        using (var writer = new Utf8JsonWriter(output, Options))
        {
            writer.WriteStartObject();
            writer.WriteNumber("format", 1);
            write(writer);
            writer.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    /// <inheritdoc/>
    public void Line(string line)
    {
        output.Write(Encoding.UTF8.GetBytes(SafeWords.Of(line) + "\n"));
        output.Flush();
    }

    /// <summary>Writes what is still held back.</summary>
    public void Dispose() => output.Flush();
}
