using System.Text.Json;
using System.Text.Json.Nodes;
using Lidoff.Evidence.Entries;

namespace Lidoff.TestSupport;

/// <summary>Lines of <c>note</c> put to an evidence kind.</summary>
public static class KindLines
{
    private static readonly string[] WrongValues = ["null", "true", "false", "0", "-1", "1e308", "\"\"", "\" \"", "\"x\"", "\"\\ud800\"", "[]", "[null]", "[[1,2]]", "{}", "{\"a\":1}", "\"" + new string('9', 20_000) + "\""];

    /// <summary>What the line says, which must be without fault.</summary>
    public static T Read<T>(EvidenceKind<T> kind, string line)
        where T : class
    {
        using var document = JsonDocument.Parse(line);
        return kind.Read(document.RootElement, kind.Version).Value;
    }

    /// <summary>The sentences of the line's faults, in order; empty when there is none.</summary>
    public static string[] Say(IEvidenceKind kind, string line)
    {
        using var document = JsonDocument.Parse(line);
        return [.. kind.ReadUntyped(document.RootElement, kind.Version).Faults.Select(fault => fault.Say)];
    }

    /// <summary>
    /// What is wrong with how a kind treats a good line of its own: a key it does not list, a required key that may be left out,
    /// a common key it chokes on, a wrong value that makes it throw. Empty when all is well.
    /// </summary>
    public static IReadOnlyList<string> Complaints(IEvidenceKind kind, string goodLine)
    {
        var complaints = new List<string>();
        var common = new JsonObject { ["kind"] = kind.Name, ["instrument"] = "eye", ["by"] = "N. N.", ["at"] = "2026-03-02T10:15:00Z", ["note"] = "hand shook", ["strange"] = 1 };
        var good = (JsonObject)JsonNode.Parse(goodLine)!;
        foreach (var key in good.Select(pair => pair.Key).Where(key => kind.Keys.All(listed => listed.Key != key))) complaints.Add($"{key} is not among its keys");
        foreach (var (key, value) in common) good[key] = value!.DeepClone();
        if (!good.ContainsKey("specimen")) good["specimen"] = "A";
        complaints.AddRange(Say(kind, good.ToJsonString()).Select(say => "the good line: " + say));
        foreach (var key in kind.Keys.Where(listed => listed.Required).Select(listed => listed.Key))
        {
            var without = (JsonObject)good.DeepClone();
            without.Remove(key);
            if (!Say(kind, without.ToJsonString()).Any(say => say.Contains($"\"{key}\" is missing", StringComparison.Ordinal) || say.StartsWith($"\"{key}\" should", StringComparison.Ordinal))) complaints.Add($"{key} may be left out");
        }

        foreach (var key in kind.Keys.Select(listed => listed.Key))
        {
            foreach (var wrong in WrongValues)
            {
                // Put together as text: half a surrogate pair is valid JSON that no writer writes.
                var rest = good.Where(pair => pair.Key != key).Select(pair => $"\"{pair.Key}\":{pair.Value?.ToJsonString() ?? "null"}");
                var changed = "{" + string.Join(',', rest.Append($"\"{key}\":{wrong}")) + "}";
                try
                {
                    Say(kind, changed);
                }
                catch (Exception e) when (e is not OutOfMemoryException)
                {
                    complaints.Add($"{key}: {wrong[..Math.Min(20, wrong.Length)]} throws {e.GetType().Name}");
                }
            }
        }

        return complaints;
    }
}
