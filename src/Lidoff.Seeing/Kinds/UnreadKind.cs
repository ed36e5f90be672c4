using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>A machine could not read a mark. It says nothing of the part; it keeps the same pictures from being looked through again and again.</summary>
public sealed class UnreadKind : EvidenceKind<UnreadSighting>
{
    private const int LongestName = 255;
    private const int MostSays = 20;

    /// <summary>The kind's name.</summary>
    public const string Word = "unread";

    /// <inheritdoc/>
    public override string Name => Word;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.MachineSighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A machine looked for a mark and could not read it; it is not tried again in the same places by the same networks unless that is asked for.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what the mark stands on"),
        new("places", "list", true, "where it was looked for, each {\"picture\":HASH,\"at\":[x,y]}, or with the four numbers of a box or the five of an outlined body"),
        new("networks", "texts", true, "content hashes of the networks that tried"),
        new("program", "text", true, "version of the program that tried"),
        new("says", "texts", true, "why it could not be read"),
    ];

    /// <summary>Writes the keys of one.</summary>
    public static void WriteKeys(Utf8JsonWriter json, UnreadSighting unread)
    {
        Guard.NotNull(json);
        json.WriteString("spot", Guard.NotNull(unread).Spot);
        json.WriteStartArray("places");
        foreach (var place in unread.Places)
        {
            json.WriteStartObject();
            json.WriteString("picture", place.Picture);
            json.WriteStartArray("at");
            foreach (var number in place.At) json.WriteNumberValue(number);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Texts(json, "networks", unread.Networks);
        json.WriteString("program", unread.Program);
        Texts(json, "says", [.. unread.Says.Take(MostSays)]);
    }

    /// <inheritdoc/>
    public override Outcome<UnreadSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var places = new List<UnreadPlace>();
        foreach (var place in reader.Inners("places", 1, ReadingKind.MostPictures))
        {
            var (picture, at) = (place.Text("picture", LongestName), place.Numbers("at", 2, 5));
            if (at.Count == 3) place.Fail("at", "two numbers of a place, four of a box or five of an outline");
            places.Add(new(picture, at));
        }

        var (networks, program, says) = (reader.Texts("networks", 1, 4, LongestName), reader.Text("program", LongestName), reader.Texts("says", 1, MostSays));
        return reader.Done(() => new UnreadSighting(spot, [.. places], networks, program, says));
    }

    private static void Texts(Utf8JsonWriter json, string key, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(key);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
