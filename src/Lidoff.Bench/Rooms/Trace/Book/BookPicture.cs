namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>A picture that can lie in the book.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="Name">Name it came under; hostile text.</param>
/// <param name="Side">"top", "bottom" or empty where nobody said.</param>
/// <param name="Width">Upright width, px.</param>
/// <param name="Height">Upright height, px.</param>
/// <param name="Placed">How many spots and pads were pointed at in it.</param>
public sealed record BookPicture(string Sha256, string Name, string Side, int Width, int Height, int Placed);
