namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>How two sides of a board lie before the person.</summary>
public enum BookWay
{
    /// <summary>Side by side, hinged at their common edge.</summary>
    Open,

    /// <summary>On each other as if the board were of glass, seen from the top.</summary>
    Through,
}
