using System.Security.Cryptography;
using System.Text;
using Lidoff.Catalogue.Tables;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Importing;

/// <summary>
/// Reads a user's parts: a separated table with a header, lines of JSON, or a symbol library, told apart by content. A file
/// comes in whole or not at all, and then with every fault that was found (<see cref="ImportLimits.Faults"/> at most).
/// </summary>
public static class ImportReader
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads one file from a stream; <paramref name="fileName"/> is only used in sentences and as the rows' table name.</summary>
    public static Outcome<ImportedRows> Read(Stream stream, string fileName, ImportOptions? options = null)
    {
        if (Bytes(stream) is not { } bytes) return CatalogueSentences.TooLarge(fileName, ImportLimits.Bytes);
        if (Text(bytes) is not { } text) return CatalogueSentences.NotText(fileName);
        var gathered = new Gathering(fileName);
        var start = text.AsSpan().TrimStart();
        if (start.Length > 0)
        {
            if (start[0] == '{') JsonRows.Read(text, gathered);
            else if (start[0] == '(') SymbolLibrary.Read(text, gathered);
            else TableRows.Read(text, gathered, options ?? new ImportOptions());
        }

        return gathered.Result(Convert.ToHexStringLower(SHA256.HashData(bytes)));
    }

    private static byte[]? Bytes(Stream stream)
    {
        var buffer = new MemoryStream();
        var piece = new byte[81_920];
        while (stream.Read(piece, 0, piece.Length) is var count and > 0)
        {
            if (buffer.Length + count > ImportLimits.Bytes) return null;
            buffer.Write(piece, 0, count);
        }

        return buffer.ToArray();
    }

    private static string? Text(byte[] bytes)
    {
        try
        {
            var text = Strict.GetString(bytes);
            if (text.Contains('\0', StringComparison.Ordinal)) return null;
            return text.Length > 0 && text[0] == '\uFEFF' ? text[1..] : text;
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
