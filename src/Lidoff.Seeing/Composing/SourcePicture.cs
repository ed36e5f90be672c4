using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Composing;

/// <summary>One picture that others are made of.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Name">Its name as people know it, for the sentences; hostile text.</param>
/// <param name="Sha256">Its content hash.</param>
/// <param name="Header">What its file says of itself.</param>
public sealed record SourcePicture(string Path, string Name, string Sha256, PictureHeader Header);
