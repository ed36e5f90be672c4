using System.Text;
using System.Text.Json;
using Lidoff.TestSupport;

namespace Lidoff.Tests.Commands;

/// <summary>Runs commands like a user, in one workspace of their own, and keeps what they said.</summary>
internal sealed class CommandRun : IDisposable
{
    private readonly TempFolder folder = new();

    /// <summary>The workspace.</summary>
    public string Workspace => folder["w"];

    /// <summary>A path beside the workspace.</summary>
    public string this[string name] => folder[name];

    /// <summary>Runs with <paramref name="input"/> as standard input.</summary>
    public async Task<(int Code, RecordedTalk Talk)> With(string input, params string[] arguments)
    {
        var talk = new RecordedTalk { Input = new MemoryStream(Encoding.UTF8.GetBytes(input)) };
        return (await LidoffProgram.Run([.. arguments, "--workspace", Workspace], Seats.Of(talk, folder.Path), TestContext.Current.CancellationToken), talk);
    }

    /// <summary>Runs with nothing on standard input.</summary>
    public Task<(int Code, RecordedTalk Talk)> Of(params string[] arguments) => With("", arguments);

    /// <summary>Notes lines in the dossier d.</summary>
    public Task<(int Code, RecordedTalk Talk)> Note(params string[] lines) => With(string.Join('\n', lines), "note", "d", "-", "--json");

    /// <summary>The keys of an object in the order in which they stand.</summary>
    public static IEnumerable<string> Keys(JsonElement element) => element.EnumerateObject().Select(each => each.Name);

    /// <summary>The one line of stdout.</summary>
    public static JsonElement Only(RecordedTalk talk) => JsonDocument.Parse(Assert.Single(talk.Out)).RootElement;

    /// <summary>The id of an acknowledged line.</summary>
    public static string Id(string line) => JsonDocument.Parse(line).RootElement.GetProperty("id").GetString()!;

    public void Dispose() => folder.Dispose();
}
