using System.Globalization;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// Reads the keys of one payload and collects every fault on the way, each naming its key and what was expected. Getters
/// always hand back something usable, so that a kind reads straight through and asks once, in <see cref="Done{T}"/>,
/// whether all was well. A key that is null counts as missing; unknown keys are left alone.
/// </summary>
public sealed class PayloadReader
{
    /// <summary>The longest text a key takes unless it says otherwise, in UTF-16 units.</summary>
    public const int LongestText = 10_000;

    private readonly JsonElement payload;
    private readonly string path;
    private readonly List<Fault> faults;

    /// <summary>Starts reading <paramref name="payload"/>, which should be an object.</summary>
    public PayloadReader(JsonElement payload)
        : this(payload, "", [])
    {
        if (payload.ValueKind != JsonValueKind.Object) faults.Add(PayloadSentences.NoObject);
    }

    private PayloadReader(JsonElement payload, string path, List<Fault> faults)
    {
        this.payload = payload;
        this.path = path;
        this.faults = faults;
    }

    /// <summary>True when <paramref name="key"/> is there and not null.</summary>
    public bool Has(string key) => Find(key) is not null;

    /// <summary>A text that must be there and not be blank; empty when it was at fault.</summary>
    public string Text(string key, int longest = LongestText) => Required(key, PayloadSentences.Text(longest), e => AsText(e, longest)) ?? "";

    /// <summary>A text that may be missing.</summary>
    public string? OptionalText(string key, int longest = LongestText) => Optional(key, PayloadSentences.Text(longest), e => AsText(e, longest));

    /// <summary>A finite number that must be there; NaN when it was at fault.</summary>
    public double Number(string key, NumberRange? range = null) =>
        RequiredValue(key, PayloadSentences.Number(range ?? NumberRange.Any), e => AsNumber(e, range ?? NumberRange.Any)) ?? double.NaN;

    /// <summary>A finite number that may be missing.</summary>
    public double? OptionalNumber(string key, NumberRange? range = null) =>
        OptionalValue(key, PayloadSentences.Number(range ?? NumberRange.Any), e => AsNumber(e, range ?? NumberRange.Any));

    /// <summary>A whole number that must be there; <paramref name="least"/> when it was at fault.</summary>
    public long Whole(string key, long least, long most) =>
        RequiredValue(key, PayloadSentences.Whole(least, most), e => AsWhole(e, least, most)) ?? least;

    /// <summary>A whole number that may be missing.</summary>
    public long? OptionalWhole(string key, long least, long most) =>
        OptionalValue(key, PayloadSentences.Whole(least, most), e => AsWhole(e, least, most));

    /// <summary>True or false, must be there; false when it was at fault.</summary>
    public bool Flag(string key) => RequiredValue(key, PayloadSentences.Flag, AsFlag) ?? false;

    /// <summary>True or false, may be missing.</summary>
    public bool? OptionalFlag(string key) => OptionalValue(key, PayloadSentences.Flag, AsFlag);

    /// <summary>One of several words, must be there; the first word's value when it was at fault.</summary>
    public T OneOf<T>(string key, params ReadOnlySpan<(string Word, T Value)> words)
    {
        var given = words.ToArray();
        var at = RequiredValue(key, PayloadSentences.OneOf(given.Select(w => w.Word)), e => AsWord(e, given)) ?? 0;
        return given[at].Value;
    }

    /// <summary>One of several words; <paramref name="otherwise"/> when the key is missing.</summary>
    public T OptionalOneOf<T>(string key, T otherwise, params ReadOnlySpan<(string Word, T Value)> words)
    {
        var given = words.ToArray();
        return OptionalValue(key, PayloadSentences.OneOf(given.Select(w => w.Word)), e => AsWord(e, given)) is int at ? given[at].Value : otherwise;
    }

    /// <summary>A time with its offset from UTC, must be there; the default when it was at fault.</summary>
    public DateTimeOffset Time(string key) => RequiredValue(key, PayloadSentences.Time, AsTime) ?? default;

    /// <summary>A time with its offset from UTC, may be missing.</summary>
    public DateTimeOffset? OptionalTime(string key) => OptionalValue(key, PayloadSentences.Time, AsTime);

    /// <summary>Two numbers <c>[a, b]</c> that must be there; NaN when they were at fault.</summary>
    public (double A, double B) Pair(string key, NumberRange? range = null) =>
        RequiredValue(key, PayloadSentences.Pair(range ?? NumberRange.Any), e => AsPair(e, range ?? NumberRange.Any)) ?? (double.NaN, double.NaN);

    /// <summary>Two numbers <c>[a, b]</c> that may be missing.</summary>
    public (double A, double B)? OptionalPair(string key, NumberRange? range = null) =>
        OptionalValue(key, PayloadSentences.Pair(range ?? NumberRange.Any), e => AsPair(e, range ?? NumberRange.Any));

    /// <summary>One point <c>[x, y]</c> that must be there; NaN when it was at fault.</summary>
    public (double X, double Y) Point(string key) =>
        RequiredValue(key, PayloadSentences.Point, e => AsPair(e, NumberRange.Any)) ?? (double.NaN, double.NaN);

    /// <summary>One point <c>[x, y]</c> that may be missing.</summary>
    public (double X, double Y)? OptionalPoint(string key) => OptionalValue(key, PayloadSentences.Point, e => AsPair(e, NumberRange.Any));

    /// <summary>A list of points <c>[[x, y], …]</c>; a missing key is a fault unless <paramref name="least"/> is 0.</summary>
    public ValueList<(double X, double Y)> Points(string key, int least = 0, int most = int.MaxValue) =>
        ListOf(key, PayloadSentences.Point, "points [x, y]", least, most, (JsonElement e, out (double, double) point) => Out(AsPair(e, NumberRange.Any), out point));

    /// <summary>A list of numbers; a missing key is a fault unless <paramref name="least"/> is 0.</summary>
    public ValueList<double> Numbers(string key, int least = 0, int most = int.MaxValue, NumberRange? range = null) =>
        ListOf(key, PayloadSentences.Number(range ?? NumberRange.Any), $"numbers {range ?? NumberRange.Any}".TrimEnd(), least, most, (JsonElement e, out double number) => Out(AsNumber(e, range ?? NumberRange.Any), out number));

    /// <summary>A list of whole numbers; a missing key is a fault unless <paramref name="least"/> is 0.</summary>
    public ValueList<long> Wholes(string key, long from, long to, int least = 0, int most = int.MaxValue) =>
        ListOf(key, PayloadSentences.Whole(from, to), string.Create(CultureInfo.InvariantCulture, $"whole numbers from {from} to {to}"), least, most, (JsonElement e, out long whole) => Out(AsWhole(e, from, to), out whole));

    /// <summary>A list of texts, none blank; a missing key is a fault unless <paramref name="least"/> is 0.</summary>
    public ValueList<string> Texts(string key, int least = 0, int most = int.MaxValue, int longest = LongestText) =>
        ListOf(key, PayloadSentences.Text(longest), "texts", least, most, (JsonElement e, out string text) => (text = AsText(e, longest)!) is not null);

    /// <summary>A nested object that may be missing; its faults join this one's, their places written <c>key.inner</c>.</summary>
    public PayloadReader? Inner(string key)
    {
        if (Find(key) is not { } found) return null;
        if (found.ValueKind == JsonValueKind.Object) return new PayloadReader(found, Place(key) + ".", faults);
        faults.Add(PayloadSentences.Wrong(Place(key), PayloadSentences.Object, found));
        return null;
    }

    /// <summary>A list of nested objects; places are written <c>key[0].inner</c>. A missing key is a fault unless <paramref name="least"/> is 0.</summary>
    public IReadOnlyList<PayloadReader> Inners(string key, int least = 0, int most = int.MaxValue)
    {
        var objects = ListOf(key, PayloadSentences.Object, "objects", least, most, (JsonElement e, out JsonElement inner) => (inner = e).ValueKind == JsonValueKind.Object);
        return objects.Select((e, i) => new PayloadReader(e, string.Create(CultureInfo.InvariantCulture, $"{Place(key)}[{i}]."), faults)).ToList();
    }

    /// <summary>The value of a key as it stands, for shapes that no getter knows; null when missing.</summary>
    public JsonElement? Raw(string key) => Find(key);

    /// <summary>Adds a fault of the kind's own, for what concerns several keys at once: <c>"key" should be …</c>.</summary>
    public void Fail(string key, string expected) => faults.Add(PayloadSentences.Own(Place(key), expected));

    /// <summary>Adds a fault with a sentence of the room's own, where <see cref="Fail(string, string)"/> has too few words.</summary>
    public void Fail(Fault fault) => faults.Add(fault);

    /// <summary>The value when nothing was at fault, otherwise all faults. <paramref name="make"/> only runs without faults.</summary>
    public Outcome<T> Done<T>(Func<T> make) => faults.Count == 0 ? make() : Outcome<T>.Failed(faults);

    private string Place(string key) => path + key;

    private JsonElement? Find(string key) =>
        payload.ValueKind == JsonValueKind.Object && payload.TryGetProperty(key, out var found) && found.ValueKind != JsonValueKind.Null ? found : null;

    private T? Required<T>(string key, string expected, Func<JsonElement, T?> read)
        where T : class
    {
        if (Find(key) is null) faults.Add(PayloadSentences.Missing(Place(key), expected));
        return Optional(key, expected, read);
    }

    private T? RequiredValue<T>(string key, string expected, Func<JsonElement, T?> read)
        where T : struct
    {
        if (Find(key) is null) faults.Add(PayloadSentences.Missing(Place(key), expected));
        return OptionalValue(key, expected, read);
    }

    private T? Optional<T>(string key, string expected, Func<JsonElement, T?> read)
        where T : class
    {
        if (Find(key) is not { } found) return null;
        var value = read(found);
        if (value is null) faults.Add(PayloadSentences.Wrong(Place(key), expected, found));
        return value;
    }

    private T? OptionalValue<T>(string key, string expected, Func<JsonElement, T?> read)
        where T : struct
    {
        if (Find(key) is not { } found) return null;
        var value = read(found);
        if (value is null) faults.Add(PayloadSentences.Wrong(Place(key), expected, found));
        return value;
    }

    private delegate bool TryRead<T>(JsonElement element, out T value);

    private ValueList<T> ListOf<T>(string key, string each, string what, int least, int most, TryRead<T> read)
    {
        var expected = PayloadSentences.List(what, least, most);
        if (Find(key) is not { } found)
        {
            if (least > 0) faults.Add(PayloadSentences.Missing(Place(key), expected));
            return [];
        }

        var items = new List<T>();
        if (found.ValueKind == JsonValueKind.Array)
        {
            var i = 0;
            foreach (var element in found.EnumerateArray())
            {
                if (read(element, out var item)) items.Add(item);
                else faults.Add(PayloadSentences.Wrong(string.Create(CultureInfo.InvariantCulture, $"{Place(key)}[{i}]"), each, element));
                i++;
            }

            if (i >= least && i <= most) return items.ToValueList();
        }

        faults.Add(PayloadSentences.Wrong(Place(key), expected, found));
        return [];
    }

    private static bool Out<T>(T? found, out T value)
        where T : struct
    {
        value = found.GetValueOrDefault();
        return found is not null;
    }

    private static string? AsText(JsonElement e, int longest)
    {
        if (e.ValueKind != JsonValueKind.String) return null;
        string? text;
        try
        {
            text = e.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair written as an escape is valid JSON and no text.
            return null;
        }

        return string.IsNullOrWhiteSpace(text) || text.Length > longest ? null : text;
    }

    private static double? AsNumber(JsonElement e, NumberRange range) =>
        e.ValueKind == JsonValueKind.Number && e.TryGetDouble(out var number) && range.Holds(number) ? number : null;

    private static long? AsWhole(JsonElement e, long least, long most) =>
        e.ValueKind == JsonValueKind.Number && e.TryGetInt64(out var whole) && whole >= least && whole <= most ? whole : null;

    private static bool? AsFlag(JsonElement e) => e.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => null,
    };

    private static int? AsWord<T>(JsonElement e, (string Word, T Value)[] words)
    {
        var text = AsText(e, LongestText);
        var at = Array.FindIndex(words, w => string.Equals(w.Word, text, StringComparison.Ordinal));
        return at < 0 ? null : at;
    }

    private static DateTimeOffset? AsTime(JsonElement e) =>
        AsText(e, 40) is { } text && text.Length >= 17 && text[10] == 'T' && HasOffset(text)
        && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;

    private static bool HasOffset(string text) => text[^1] == 'Z' || text[^6] is '+' or '-';

    private static (double A, double B)? AsPair(JsonElement e, NumberRange range) =>
        e.ValueKind == JsonValueKind.Array && e.GetArrayLength() == 2
        && AsNumber(e[0], range) is { } a && AsNumber(e[1], range) is { } b ? (a, b) : null;
}
