namespace Lidoff.Evidence.Registering;

/// <summary>What a recogniser sees of a file: its first bytes and its name, which anyone may have chosen.</summary>
/// <param name="Bytes">The first <see cref="Length"/> bytes, or the whole file when it is shorter.</param>
/// <param name="Whole">True when <paramref name="Bytes"/> is all there is.</param>
/// <param name="FileName">Name without folders; hostile text, possibly empty.</param>
public sealed record FileHead(ReadOnlyMemory<byte> Bytes, bool Whole, string FileName)
{
    /// <summary>How many first bytes are looked at: a PDF may hold up to 1,024 bytes before its mark, a table needs some lines.</summary>
    public const int Length = 4096;

    /// <summary>Looks at a whole file held in memory.</summary>
    public static FileHead Of(ReadOnlyMemory<byte> file, string fileName) =>
        new(file.Length > Length ? file[..Length] : file, file.Length <= Length, fileName);

    internal bool StartsWith(ReadOnlySpan<byte> mark, int at = 0) => Bytes.Length >= at + mark.Length && Bytes.Span.Slice(at, mark.Length).SequenceEqual(mark);

    internal bool NameEndsWith(string ending) => FileName.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}
