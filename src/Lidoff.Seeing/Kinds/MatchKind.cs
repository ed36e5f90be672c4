using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>Landmarks that a machine found in two pictures. Stored once and never made again in silence; it lays nothing by itself.</summary>
public sealed class MatchKind : EvidenceKind<MatchSighting>
{
    /// <summary>Most landmarks proposed at once.</summary>
    public const int Most = 40;

    private const int LongestName = 255;

    /// <inheritdoc/>
    public override string Name => "match";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A machine found the same holes in two pictures: landmarks it proposes, which a person takes over or not.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("first", "text", true, "content hash of the first picture"),
        new("second", "text", true, "content hash of the second"),
        new("mirrored", "flag", true, "whether left and right swap between them"),
        new("landmarks", "texts", true, "names proposed, four at least"),
        new("first_points", "points", true, "where they show in the first, px, in that order"),
        new("second_points", "points", true, "where in the second, px"),
        new("u_px", "two numbers", true, "standard uncertainty of each coordinate in the first and in the second, px"),
        new("rests_px", "numbers", true, "how far each lies from where all together put it, px of the second"),
        new("agree", "whole number", true, "how many holes agreed"),
        new("of", "whole number", true, "how many could have"),
        new("by_chance", "number", true, "how many would by accident, on average"),
        new("log10_odds", "number", true, "decimal logarithm of how many matches as good accident gives among all tried"),
        new("settings", "text", true, "what it was found with"),
        new("program", "text", true, "version of the program that found it"),
        new("says", "texts", false, "what was said of it"),
    ];

    /// <inheritdoc/>
    public override Outcome<MatchSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var (first, second) = (reader.Text("first", LongestName), reader.Text("second", LongestName));
        if (first.Length > 0 && first == second) reader.Fail("second", "another picture than the first");
        var mirrored = reader.Flag("mirrored");
        var names = reader.Texts("landmarks", 4, Most, 40);
        if (names.Distinct(StringComparer.Ordinal).Count() != names.Count) reader.Fail("landmarks", "each name once");
        var (a, b) = (Places(reader, "first_points", names.Count), Places(reader, "second_points", names.Count));
        var (ua, ub) = reader.Pair("u_px", NumberRange.Positive);
        var rests = reader.Numbers("rests_px", names.Count, Math.Max(names.Count, 4), NumberRange.NotNegative);
        var (agree, of) = (reader.Whole("agree", 4, 100_000), reader.Whole("of", 4, 100_000));
        var (chance, odds) = (reader.Number("by_chance", NumberRange.NotNegative), reader.Number("log10_odds"));
        var (settings, program) = (reader.Text("settings"), reader.Text("program", LongestName));
        var says = reader.Texts("says", 0, 100);
        return reader.Done(() => new MatchSighting(first, second, mirrored, names, a, b, ua, ub, rests, (int)agree, (int)of, chance, odds, settings, program, says));
    }

    private static ValueList<PicturePoint> Places(PayloadReader reader, string key, int count) =>
        [.. reader.Points(key, count, Math.Max(count, 4)).Select(point => new PicturePoint(point.X, point.Y))];
}
