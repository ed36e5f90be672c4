using Lidoff.Bench.Working;
using Lidoff.Reckoning.Bound;

namespace Lidoff.Bench.Rooms.Reckon.Binding;

/// <summary>What was typed into the fields of a calculation, as a binding and as a line.</summary>
public static class BoundText
{
    /// <summary>The binding that the texts come to.</summary>
    public static ReckonBinding Binding(string designator, string calculation, IEnumerable<(string Key, string Text)> typed, string says) => new(
        designator,
        calculation,
        [.. typed.Where(each => each.Text.Trim().Length > 0).Select(each => InputWords.Refers(each.Text) ? new BoundInput(each.Key, "", Plain(each.Text)) : new BoundInput(each.Key, each.Text.Trim(), ""))],
        says.Trim());

    /// <summary>The line that stores a binding.</summary>
    public static Line Line(ReckonBinding binding) => Working.Line.Of("reckon").Set("reckoning", binding.Reckoning).Set("calculation", binding.Calculation).With("inputs", json =>
    {
        json.WriteStartObject();
        foreach (var input in binding.Inputs)
        {
            json.WritePropertyName(input.Key);
            if (input.From.Length == 0)
            {
                json.WriteStringValue(input.Typed);
                continue;
            }

            json.WriteStartObject();
            json.WriteString("from", input.From);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }).Set("says", binding.Says);

    // One way of writing a reference to another number, so that a circle is seen whichever way it was typed.
    private static string Plain(string text) => text.Trim() is var trimmed && trimmed.StartsWith("reckoning:", StringComparison.Ordinal) ? trimmed["reckoning:".Length..] : trimmed;
}
