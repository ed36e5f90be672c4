using System.Globalization;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>What a person reads when a key of a line is missing or holds the wrong thing.</summary>
public static class PayloadSentences
{
    /// <summary>How much of a wrong value is shown back; marks and names can be thousands of letters.</summary>
    private const int ShownLetters = 40;

    /// <summary>A key that must be there is not.</summary>
    public static Fault Missing(string key, string expected) =>
        new(key, expected, $"\"{key}\" is missing; it should be {expected}.");

    /// <summary>A key holds something else than it should.</summary>
    public static Fault Wrong(string key, string expected, JsonElement found) =>
        new(key, expected, $"\"{key}\" should be {expected}, but here it is {Shown(found)}.");

    /// <summary>A check of the kind's own failed.</summary>
    public static Fault Own(string key, string expected) => new(key, expected, $"\"{key}\" should be {expected}.");

    /// <summary>The whole payload is something else than an object.</summary>
    public static Fault NoObject => new("", Object, $"A line should be {Object}.");

    internal static string Number(NumberRange range) => $"a number {range}".TrimEnd();

    internal static string Whole(long least, long most) => string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}");

    internal static string Text(int longest) => string.Create(CultureInfo.InvariantCulture, $"a text of 1 to {longest} characters");

    internal static string Flag => "true or false";

    internal static string Time => "a time such as \"2026-03-02T10:15:00Z\"";

    internal static string Object => "an object { … }";

    internal static string Pair(NumberRange range) => $"two numbers [a, b], each {Number(range)}";

    internal static string Point => "a point [x, y] of two numbers";

    internal static string OneOf(IEnumerable<string> words) => "one of " + string.Join(", ", words);

    internal static string List(string what, int least, int most) => (least, most) switch
    {
        (0, int.MaxValue) => $"a list of {what}",
        (_, int.MaxValue) => string.Create(CultureInfo.InvariantCulture, $"a list of at least {least} {what}"),
        _ when least == most => string.Create(CultureInfo.InvariantCulture, $"a list of {least} {what}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"a list of {least} to {most} {what}"),
    };

    private static string Shown(JsonElement found)
    {
        var raw = found.GetRawText();
        var oneLine = string.Concat(raw.Select(c => char.IsControl(c) ? ' ' : c));
        return oneLine.Length <= ShownLetters ? oneLine : string.Concat(oneLine.AsSpan(0, ShownLetters), "…");
    }
}
