using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Networks;

/// <summary>What stands beside a network's file: what it is, the hash of the file it describes, and how its scores become probabilities.</summary>
/// <param name="Name">Name of the network.</param>
/// <param name="Version">Its version.</param>
/// <param name="Sha256">SHA-256 of the network's file, small hexadecimal digits.</param>
/// <param name="Alphabet">Symbols of a reader in the order of its classes behind the blank; empty for a finder.</param>
/// <param name="Temperature">What scores are divided by, set on a validation set; 1 where the card says nothing.</param>
/// <param name="LineTemperature">What logs of whole lines are divided by; 1 where the card says nothing.</param>
public sealed record ModelCard(string Name, string Version, string Sha256, string Alphabet, double Temperature, double LineTemperature)
{
    private static readonly NumberRange Temperatures = new(0.05, 20);

    /// <summary>Reads a card; keys it does not know (figures, data, seed) are for people.</summary>
    public static Outcome<ModelCard> Read(ReadOnlySpan<byte> utf8) => StrictJson.Parse(utf8).Then<ModelCard>(Of);

    private static Outcome<ModelCard> Of(JsonElement card)
    {
        var reader = new PayloadReader(card);
        var (name, version, hash) = (reader.Text("name", 100), reader.Text("version", 100), reader.Text("sha256", 64).ToLowerInvariant());
        if (hash.Length > 0 && (hash.Length != 64 || !hash.All(char.IsAsciiHexDigit))) reader.Fail("sha256", "64 hexadecimal digits");
        var alphabet = reader.OptionalText("alphabet", 200) ?? "";
        if (alphabet.Distinct().Count() != alphabet.Length) reader.Fail("alphabet", "each symbol once");
        var (glyph, line) = (reader.OptionalNumber("temperature", Temperatures) ?? 1, reader.OptionalNumber("line_temperature", Temperatures) ?? 1);
        return reader.Done(() => new ModelCard(name, version, hash, alphabet, glyph, line));
    }
}
