namespace Lidoff.Bench.Rooms.See.Composing;

/// <summary>A picture to choose: hash, name (hostile text), size in px, and its scale in µm a px where it has one.</summary>
public sealed record ComposeRow(string Sha256, string Name, int Width, int Height, double? UmPerPx);
