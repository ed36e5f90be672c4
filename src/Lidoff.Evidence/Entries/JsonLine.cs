using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>One line of an input of JSON lines.</summary>
/// <param name="Number">Its number, from 1; blank lines count but are not handed out.</param>
/// <param name="Json">The object on it, or the faults that keep it from being one.</param>
public sealed record JsonLine(int Number, Outcome<JsonElement> Json);
