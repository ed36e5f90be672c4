namespace Lidoff.Bench.Data;

/// <summary>A file to be sent to the browser.</summary>
/// <param name="Open">Opens it for reading; the stream can seek. Called once a request.</param>
/// <param name="MediaType">As its recogniser says, never from its name.</param>
/// <param name="FileName">Name it came under; hostile text.</param>
public sealed record StoredFile(Func<Stream> Open, string MediaType, string FileName);
