using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Talking;

/// <summary>
/// All talk with the outside: JSON lines for programs on stdout, words for people on stderr, and what is read from stdin.
/// </summary>
public interface ITalk
{
    /// <summary>Standard input as bytes, for a file argument of <c>-</c>.</summary>
    Stream Input { get; }

    /// <summary>Words for people (progress, warnings, remarks): one line on stderr.</summary>
    void Say(string line);

    /// <summary>One JSON object on a line of stdout; <c>"format":1</c> is written first, the rest by <paramref name="write"/>.</summary>
    void Json(Action<Utf8JsonWriter> write);

    /// <summary>A plain line on stdout: only for the one ready line of <c>bench</c> and for tables meant for people.</summary>
    void Line(string line);
}
