using System.Security.Cryptography;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Networks;

/// <summary>A network's file with its card, read whole and held against its hash, so that what was checked is what runs.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Card">Its card.</param>
internal sealed record ModelFile(byte[] Bytes, ModelCard Card)
{
    /// <summary>Reads <c>NAME.onnx</c> and <c>NAME.json</c> of a folder.</summary>
    public static Outcome<ModelFile> Read(string folder, string name)
    {
        var (file, card) = (name + ".onnx", name + ".json");
        if (!File.Exists(Path.Combine(folder, file))) return ReadingSentences.NetworkMissing(file, folder);
        if (!File.Exists(Path.Combine(folder, card))) return ReadingSentences.NetworkMissing(card, folder);
        try
        {
            var read = ModelCard.Read(File.ReadAllBytes(Path.Combine(folder, card)));
            if (!read.TryValue(out var told)) return ReadingSentences.CardUnread(card, read.Faults[0].Say);
            var bytes = File.ReadAllBytes(Path.Combine(folder, file));
            var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
            return hash == told.Sha256 ? new ModelFile(bytes, told) : ReadingSentences.NetworkAltered(file, hash, told.Sha256);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return ReadingSentences.NetworkUnread(file, failure.Message);
        }
    }
}
