namespace Lidoff.Evidence.Entries;

/// <summary>A file that was put into the workspace.</summary>
/// <param name="Name">Its name where it came from, without folders; hostile text, never used as a path.</param>
/// <param name="Sha256">Hash of its content, 64 hex digits; the content lies under it.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Type">What it was recognised as by its content, such as <c>image/jpeg</c>; empty where nothing recognised it.</param>
/// <param name="From">How it came: <c>add</c>, <c>drop</c>, <c>watch</c>, <c>camera</c>, <c>pack</c>; empty where nobody said.</param>
public sealed record FileAdded(string Name, string Sha256, long Bytes, string Type, string From);
