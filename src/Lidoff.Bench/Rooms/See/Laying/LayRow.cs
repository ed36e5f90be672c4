namespace Lidoff.Bench.Rooms.See.Laying;

/// <summary>A picture that another can be laid on.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="Name">Its file's name; hostile text.</param>
/// <param name="Side">"top" or "bottom" where that was noted; else empty.</param>
/// <param name="Together">True where both lie on one board already.</param>
public sealed record LayRow(string Sha256, string Name, string Side, bool Together);
