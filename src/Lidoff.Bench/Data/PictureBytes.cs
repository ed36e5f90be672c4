namespace Lidoff.Bench.Data;

/// <summary>An encoded picture of ours (JPEG, PNG or WebP) with its media type.</summary>
public sealed record PictureBytes(ReadOnlyMemory<byte> Bytes, string MediaType);
